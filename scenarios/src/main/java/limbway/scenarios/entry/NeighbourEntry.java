package limbway.scenarios.entry;

import java.util.OptionalDouble;

import limbway.model.geometry.Outline;
import limbway.scenarios.entry.SupportEntry.CrownSize;
import limbway.scenarios.problem.Place;

/** Something that stands there for its shade alone, as declared; it may stand outside the ground. */
public sealed interface NeighbourEntry extends Entry {

    /**
     * A solid block.
     *
     * @param id name
     * @param what kind and name, for messages
     * @param place where it is declared
     * @param outline what it covers, in plan
     * @param bottomM height of its lower end [m]; empty for the lowest ground at its corners
     * @param topM height of its top [m]
     */
    record Block(String id, String what, Place place, Outline outline, OptionalDouble bottomM, double topM)
            implements NeighbourEntry {}

    /**
     * A tree.
     *
     * @param id name
     * @param what kind and name, for messages
     * @param place where it is declared
     * @param foot where it stands
     * @param heightM height of the top above the foot [m]
     * @param crown its branches and leaves
     */
    record Tree(String id, String what, Place place, PlaceWords.Coordinates foot, double heightM, CrownSize crown)
            implements NeighbourEntry {}
}
