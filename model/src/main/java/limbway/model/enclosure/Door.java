package limbway.model.enclosure;

import java.util.List;

import limbway.model.geometry.Segment;

/**
 * An upright opening in a panel or a barrier that is shut at some hours.
 *
 * @param id name, unique within the enclosure
 * @param in id of the panel or barrier that it opens
 * @param sill its lower edge, level
 * @param heightM its height [m], above 0
 * @param open when it is open, in the order of the day; empty for a door that stays shut
 */
public record Door(String id, String in, Segment sill, double heightM, List<OpenHours> open) {

    /**
     * Checks the height and keeps a copy of the hours.
     *
     * @throws IllegalArgumentException naming the door
     */
    public Door {
        open = List.copyOf(open);
        if (!(heightM > 0)) {
            throw new IllegalArgumentException("door \"" + id + "\": heightM = " + heightM + ", allowed above 0");
        }
    }

    /**
     * Whether it is open at a time of day.
     *
     * @param secondOfDay seconds after midnight, 0 to 86,399
     * @return true from the first to before the last second of its hours
     */
    public boolean isOpenAt(int secondOfDay) {
        return open.stream().anyMatch(hours -> hours.cover(secondOfDay));
    }
}
