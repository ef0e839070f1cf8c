package limbway.reports;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.BitSet;
import java.util.List;

import limbway.model.shade.ShadeCalendar;
import limbway.model.shade.ShadeRule;
import limbway.model.shade.ShadeYear;

/**
 * A year of shade made by hand, in steps of half an hour: sun from 8 to 16 every day; the first platform is shaded before noon,
 * the second always but on 24 March from 10 to 12, the third never.
 */
public final class ShadedYear {

    /** Minutes with sun: 8 hours on 365 days. */
    public static final int SUN_MINUTES = 365 * 8 * 60;

    /** Too few in shade: every afternoon, and on 24 March 2 hours more. */
    public static final int BREACH_MINUTES = 365 * 4 * 60 + 2 * 60;

    private ShadedYear() {}

    /** Asked for two of three. */
    public static ShadeYear broken() {
        return year(2);
    }

    /** Asked for one of three: there always is one. */
    public static ShadeYear kept() {
        return year(1);
    }

    private static ShadeYear year(int atLeast) {
        ShadeCalendar calendar = new ShadeCalendar(2026, 30, ZoneOffset.ofHours(8));
        int slip = LocalDate.of(2026, 3, 24).getDayOfYear() - 1;
        BitSet up = new BitSet();
        BitSet morning = new BitSet();
        BitSet always = new BitSet();
        for (int day = 0; day < calendar.days(); day++) {
            int first = day * calendar.slots();
            up.set(first + 16, first + 32);
            morning.set(first + 16, first + 24);
            always.set(first + 16, first + 32);
            if (day == slip) {
                always.clear(first + 20, first + 24);
            }
        }
        return new ShadeYear(
                calendar,
                new ShadeRule(atLeast, 0.75, 0.3, 5),
                List.of("east deck", "den roof", "open deck"),
                up,
                List.of(morning, always, new BitSet()));
    }
}
