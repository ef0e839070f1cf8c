package limbway.reports.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;

import limbway.model.enclosure.Door;
import limbway.sim.habitat.DoorHours;
import limbway.sim.habitat.Habitat;

/** Which doors are open when: hours in which the same doors are open are one state. */
final class DoorStates {

    private final DoorHours hours;
    private final List<OptionalInt> stateOfStretch = new ArrayList<>();

    DoorStates(Habitat habitat) {
        hours = habitat.doorHours();
        List<Door> doors = habitat.layout().enclosure().bounds().doors();
        List<List<Boolean>> known = new ArrayList<>();
        List<Boolean> all = doors.stream().map(door -> !door.open().isEmpty()).toList();
        for (int stretch = 0; stretch < hours.count(); stretch++) {
            int second = hours.startS(stretch);
            List<Boolean> open =
                    doors.stream().map(door -> door.isOpenAt(second)).toList();
            int same = known.indexOf(open);
            known.add(open);
            stateOfStretch.add(
                    open.equals(all) ? OptionalInt.empty() : OptionalInt.of(hours.startS(same < 0 ? stretch : same)));
        }
    }

    /** A second of the day at which doors are as they are at a time [ms]; empty where all are open that ever are. */
    OptionalInt at(long ms) {
        return stateOfStretch.get(hours.at(ms));
    }
}
