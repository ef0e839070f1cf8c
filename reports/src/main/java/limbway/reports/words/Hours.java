package limbway.reports.words;

import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.format.DateTimeFormatter;
import java.util.Locale;

/** Stretches of time and days as they are printed for people. */
public final class Hours {

    private static final int HOUR_MIN = 60;
    private static final DateTimeFormatter DAY = DateTimeFormatter.ofPattern("d MMMM", Locale.ENGLISH);
    private static final DateTimeFormatter MOMENT = DateTimeFormatter.ofPattern("d MMMM, HH:mm", Locale.ENGLISH);

    private Hours() {}

    /**
     * A stretch of time.
     *
     * @param minutes whole minutes, 0 or more
     * @return for example {@code 45 min}, {@code 3 h} or {@code 1 204 h 30 min}
     */
    public static String text(int minutes) {
        if (minutes < HOUR_MIN) {
            return minutes + " min";
        }
        int hours = minutes / HOUR_MIN;
        int rest = minutes % HOUR_MIN;
        return Figures.decimals(hours, 0) + " h" + (rest == 0 ? "" : " " + rest + " min");
    }

    /**
     * A stretch of time in little room: minutes up to an hour and a half, then hours rounded.
     *
     * @param minutes whole minutes, 0 or more
     * @return for example {@code 45 min} or {@code 12 h}
     */
    public static String brief(int minutes) {
        return 2 * minutes < 3 * HOUR_MIN ? minutes + " min" : Figures.decimals((double) minutes / HOUR_MIN, 0) + " h";
    }

    /**
     * A day of a known year.
     *
     * @param date the day
     * @return for example {@code 24 March}
     */
    public static String day(LocalDate date) {
        return DAY.format(date);
    }

    /**
     * A moment of a known year.
     *
     * @param moment the moment
     * @return for example {@code 24 March, 11:45}
     */
    public static String moment(LocalDateTime moment) {
        return MOMENT.format(moment);
    }
}
