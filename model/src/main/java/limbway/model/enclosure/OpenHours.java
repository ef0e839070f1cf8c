package limbway.model.enclosure;

import java.time.LocalTime;

/**
 * A stretch of the day in which a door is open; one that ends before it begins runs over midnight, and one that ends when
 * it begins lasts all day.
 *
 * @param from when the door opens
 * @param to when it shuts
 */
public record OpenHours(LocalTime from, LocalTime to) {

    boolean cover(int secondOfDay) {
        int start = from.toSecondOfDay();
        int end = to.toSecondOfDay();
        return start < end ? secondOfDay >= start && secondOfDay < end : secondOfDay >= start || secondOfDay < end;
    }
}
