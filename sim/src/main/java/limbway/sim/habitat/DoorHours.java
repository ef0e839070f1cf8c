package limbway.sim.habitat;

import java.util.ArrayList;
import java.util.List;
import java.util.TreeSet;

import limbway.model.enclosure.Door;
import limbway.model.enclosure.OpenHours;

/** The stretches of a day between which some door opens or shuts, numbered in the order of the day. */
public final class DoorHours {

    private static final int SECONDS_PER_DAY = 86_400;

    private final List<Integer> startS = new ArrayList<>();

    /**
     * Divides the day.
     *
     * @param doors doors with their hours; none gives one stretch, the whole day
     */
    public DoorHours(List<Door> doors) {
        TreeSet<Integer> changes = new TreeSet<>(List.of(0));
        for (Door door : doors) {
            for (OpenHours hours : door.open()) {
                changes.add(hours.from().toSecondOfDay());
                changes.add(hours.to().toSecondOfDay());
            }
        }
        startS.addAll(changes);
    }

    /**
     * Number of stretches.
     *
     * @return 1 or more
     */
    public int count() {
        return startS.size();
    }

    /**
     * When a stretch begins.
     *
     * @param stretch number of a stretch
     * @return seconds after midnight; doors stay as they are then until the next begins
     */
    public int startS(int stretch) {
        return startS.get(stretch);
    }

    /**
     * The stretch at a time.
     *
     * @param ms milliseconds after midnight of any day, 0 or more
     * @return number of a stretch
     */
    public int at(long ms) {
        long second = ms / 1000 % SECONDS_PER_DAY;
        int stretch = 0;
        while (stretch + 1 < startS.size() && startS.get(stretch + 1) <= second) {
            stretch++;
        }
        return stretch;
    }
}
