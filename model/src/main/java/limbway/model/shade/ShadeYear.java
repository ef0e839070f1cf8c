package limbway.model.shade;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/**
 * Which rest platforms lay in shade at each moment of a year, and when there were too few of them.
 *
 * <p>A moment stands for one step of the calendar: its minutes are those of the step.
 */
public final class ShadeYear {

    private final ShadeCalendar calendar;
    private final ShadeRule rule;
    private final List<String> platforms;
    private final BitSet up;
    private final List<BitSet> shaded;

    /**
     * A year that was looked at. A moment has the number {@code day * slots + slot}.
     *
     * @param calendar its moments
     * @param rule what counts as shaded, and how many must be
     * @param platforms names of the rest platforms
     * @param up the moments at which the sun stands high enough for the rule
     * @param shaded for each platform the moments at which it is shaded, all of them in {@code up}
     */
    public ShadeYear(ShadeCalendar calendar, ShadeRule rule, List<String> platforms, BitSet up, List<BitSet> shaded) {
        this.calendar = calendar;
        this.rule = rule;
        this.platforms = List.copyOf(platforms);
        this.up = (BitSet) up.clone();
        this.shaded = shaded.stream().map(moments -> (BitSet) moments.clone()).toList();
    }

    /**
     * The moments that were looked at.
     *
     * @return the calendar
     */
    public ShadeCalendar calendar() {
        return calendar;
    }

    /**
     * What was asked.
     *
     * @return the rule
     */
    public ShadeRule rule() {
        return rule;
    }

    /**
     * The rest platforms.
     *
     * @return their names, in the order of the layout
     */
    public List<String> platforms() {
        return platforms;
    }

    /**
     * Whether the rule asks for shade at a moment.
     *
     * @param day 0 for the first of January
     * @param slot 0 for midnight
     * @return true if the sun stands high enough
     */
    public boolean isSunUp(int day, int slot) {
        return up.get(number(day, slot));
    }

    /**
     * Whether a platform is shaded; only to be asked when the sun is up.
     *
     * @param platform place in {@link #platforms()}
     * @param day 0 for the first of January
     * @param slot 0 for midnight
     * @return true if enough of its points lie in shade
     */
    public boolean isShaded(int platform, int day, int slot) {
        return shaded.get(platform).get(number(day, slot));
    }

    /**
     * Shaded platforms at one moment.
     *
     * @param day 0 for the first of January
     * @param slot 0 for midnight
     * @return 0 or more
     */
    public int shadedCount(int day, int slot) {
        int number = number(day, slot);
        int count = 0;
        for (BitSet moments : shaded) {
            count += moments.get(number) ? 1 : 0;
        }
        return count;
    }

    /**
     * Whether too few platforms are shaded.
     *
     * @param day 0 for the first of January
     * @param slot 0 for midnight
     * @return true if the sun is up and the rule is broken
     */
    public boolean isBreach(int day, int slot) {
        return isSunUp(day, slot) && shadedCount(day, slot) < rule.atLeast();
    }

    /**
     * Fewest shaded platforms at any moment with sun.
     *
     * @return 0 or more; the number of platforms where the sun never stands high enough
     */
    public int fewestShaded() {
        int fewest = platforms.size();
        for (int number = up.nextSetBit(0); number >= 0; number = up.nextSetBit(number + 1)) {
            fewest = Math.min(fewest, shadedCount(number / calendar.slots(), number % calendar.slots()));
        }
        return fewest;
    }

    /**
     * Time with sun in the whole year.
     *
     * @return minutes
     */
    public int sunMinutes() {
        return up.cardinality() * calendar.stepMin();
    }

    /**
     * Time in breach on one day.
     *
     * @param day 0 for the first of January
     * @return minutes
     */
    public int breachMinutes(int day) {
        int moments = 0;
        for (int slot = 0; slot < calendar.slots(); slot++) {
            moments += isBreach(day, slot) ? 1 : 0;
        }
        return moments * calendar.stepMin();
    }

    /**
     * Time in breach in the whole year.
     *
     * @return minutes; 0 if the rule is kept
     */
    public int breachMinutes() {
        int minutes = 0;
        for (int day = 0; day < calendar.days(); day++) {
            minutes += breachMinutes(day);
        }
        return minutes;
    }

    /**
     * Time in breach by month and hour.
     *
     * @return minutes, twelve rows from January, of 24 hours from midnight
     */
    public int[][] breachMinutesByMonthAndHour() {
        int[][] minutes = new int[12][24];
        for (int day = 0; day < calendar.days(); day++) {
            int month = calendar.date(day).getMonthValue() - 1;
            for (int slot = 0; slot < calendar.slots(); slot++) {
                if (isBreach(day, slot)) {
                    minutes[month][slot * calendar.stepMin() / 60] += calendar.stepMin();
                }
            }
        }
        return minutes;
    }

    /**
     * The first breach of the year.
     *
     * @return standard time of the site; empty if the rule is kept
     */
    public Optional<LocalDateTime> firstBreach() {
        for (int day = 0; day < calendar.days(); day++) {
            for (int slot = 0; slot < calendar.slots(); slot++) {
                if (isBreach(day, slot)) {
                    return Optional.of(calendar.date(day).atStartOfDay().plusMinutes((long) slot * calendar.stepMin()));
                }
            }
        }
        return Optional.empty();
    }

    /**
     * The day with the longest breach, the first of them if there are several.
     *
     * @return a date; empty if the rule is kept
     */
    public Optional<LocalDate> worstDay() {
        int worst = -1;
        int most = 0;
        for (int day = 0; day < calendar.days(); day++) {
            int minutes = breachMinutes(day);
            if (minutes > most) {
                most = minutes;
                worst = day;
            }
        }
        return worst < 0 ? Optional.empty() : Optional.of(calendar.date(worst));
    }

    /**
     * Time that a platform is shaded while the sun is up, by month.
     *
     * @param platform place in {@link #platforms()}
     * @return minutes, twelve from January
     */
    public int[] shadedMinutesByMonth(int platform) {
        return byMonth(shaded.get(platform));
    }

    /**
     * Time with sun, by month.
     *
     * @return minutes, twelve from January
     */
    public int[] sunMinutesByMonth() {
        return byMonth(up);
    }

    private int[] byMonth(BitSet moments) {
        int[] minutes = new int[12];
        for (int number = moments.nextSetBit(0); number >= 0; number = moments.nextSetBit(number + 1)) {
            minutes[calendar.date(number / calendar.slots()).getMonthValue() - 1] += calendar.stepMin();
        }
        return minutes;
    }

    private int number(int day, int slot) {
        return day * calendar.slots() + slot;
    }
}
