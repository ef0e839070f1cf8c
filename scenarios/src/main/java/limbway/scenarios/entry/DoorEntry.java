package limbway.scenarios.entry;

import java.util.List;
import java.util.OptionalDouble;

import limbway.model.enclosure.OpenHours;
import limbway.model.geometry.Corner;
import limbway.scenarios.format.ScalarNode;
import limbway.scenarios.problem.Place;

/**
 * A door, as declared.
 *
 * @param id name
 * @param what kind and name, for messages
 * @param place where it is declared
 * @param in name of what it opens, with where it is written
 * @param from one side, in plan
 * @param to other side, in plan
 * @param sillM height of its lower edge [m]; empty for that of what it opens
 * @param heightM its height [m]
 * @param open when it is open; empty if it stays shut
 */
public record DoorEntry(
        String id,
        String what,
        Place place,
        ScalarNode in,
        Corner from,
        Corner to,
        OptionalDouble sillM,
        double heightM,
        List<OpenHours> open)
        implements Entry {

    /** Keeps a copy of the list. */
    public DoorEntry {
        open = List.copyOf(open);
    }
}
