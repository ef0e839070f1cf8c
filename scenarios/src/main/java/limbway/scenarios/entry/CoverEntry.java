package limbway.scenarios.entry;

import java.util.List;

import limbway.model.enclosure.CoverKind;
import limbway.model.geometry.Point;
import limbway.scenarios.format.ScalarNode;
import limbway.scenarios.problem.Place;

/**
 * A roof or sail, as declared.
 *
 * @param id name
 * @param what kind and name, for messages
 * @param place where it is declared
 * @param kind roof or sail
 * @param shapePlace where its shape is declared
 * @param shape where it is in space
 * @param transmittance share of the direct sunlight that passes through it, 0 to below 1
 */
public record CoverEntry(
        String id, String what, Place place, CoverKind kind, Place shapePlace, Shape shape, double transmittance)
        implements Entry {

    /** Where a cover is in space. */
    public sealed interface Shape {}

    /**
     * A cover with stated corners.
     *
     * @param corners three or more in one plane, in order
     */
    public record ByCorners(List<Point> corners) implements Shape {

        /** Keeps a copy of the list. */
        public ByCorners {
            corners = List.copyOf(corners);
        }
    }

    /**
     * A level rectangle above a deck, turned like the deck.
     *
     * @param deck name of the deck or hammock, with where it is written
     * @param eastM side from west to east before the turn [m]
     * @param northM side from south to north before the turn [m]
     * @param riseM height above the deck [m]
     * @param shiftEastM how far its middle lies east of that of the deck [m]
     * @param shiftNorthM how far its middle lies north of that of the deck [m]
     */
    public record OverDeck(
            ScalarNode deck, double eastM, double northM, double riseM, double shiftEastM, double shiftNorthM)
            implements Shape {}
}
