package limbway.model.shade;

import java.time.LocalDate;
import java.util.List;

/** Which moments of a year somebody looks at. */
enum SamplingScheme {
    MARCH_HOURLY("21 March, hourly", 60),
    FOUR_DAYS_HOURLY("equinoxes and solstices, hourly", 60),
    MONTHLY_HOURLY("21st of each month, hourly", 60),
    MONTHLY_FIVE("21st of each month, 5 min", 5),
    DAILY_HOURLY("all days, hourly", 60),
    DAILY_THIRTY("all days, 30 min", 30),
    DAILY_FIFTEEN("all days, 15 min", 15);

    private static final List<Integer> EQUINOX_OR_SOLSTICE = List.of(3, 6, 9, 12);

    private final String words;
    private final int stepMin;

    SamplingScheme(String words, int stepMin) {
        this.words = words;
        this.stepMin = stepMin;
    }

    String words() {
        return words;
    }

    /** Whether it finds no breach in a year that was looked at more often. */
    boolean passes(ShadeYear year) {
        ShadeCalendar calendar = year.calendar();
        for (int day = 0; day < calendar.days(); day++) {
            if (!looksAt(calendar.date(day))) {
                continue;
            }
            for (int slot = 0; slot < calendar.slots(); slot += stepMin / calendar.stepMin()) {
                if (year.isBreach(day, slot)) {
                    return false;
                }
            }
        }
        return true;
    }

    private boolean looksAt(LocalDate date) {
        return switch (this) {
            case MARCH_HOURLY -> date.getMonthValue() == 3 && date.getDayOfMonth() == 21;
            case FOUR_DAYS_HOURLY -> EQUINOX_OR_SOLSTICE.contains(date.getMonthValue()) && date.getDayOfMonth() == 21;
            case MONTHLY_HOURLY, MONTHLY_FIVE -> date.getDayOfMonth() == 21;
            case DAILY_HOURLY, DAILY_THIRTY, DAILY_FIFTEEN -> true;
        };
    }
}
