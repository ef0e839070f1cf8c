package limbway.scenarios.entry;

import java.time.LocalTime;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads clock times. */
final class Clock {

    private static final Pattern CLOCK = Pattern.compile("(\\d{1,2}):(\\d{2})(?::00)?");

    private Clock() {}

    /** The time that words such as {@code 8:30} say, or empty if they say none. */
    static Optional<LocalTime> time(String text) {
        Matcher clock = CLOCK.matcher(text);
        if (clock.matches()) {
            int hour = Integer.parseInt(clock.group(1));
            int minute = Integer.parseInt(clock.group(2));
            if (hour < 24 && minute < 60) {
                return Optional.of(LocalTime.of(hour, minute));
            }
        }
        return Optional.empty();
    }
}
