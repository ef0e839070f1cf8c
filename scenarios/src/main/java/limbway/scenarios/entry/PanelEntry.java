package limbway.scenarios.entry;

import java.util.List;
import java.util.OptionalDouble;

import limbway.model.enclosure.PanelKind;
import limbway.model.geometry.Corner;
import limbway.model.geometry.Point;
import limbway.scenarios.problem.Place;

/**
 * A climbable panel, as declared.
 *
 * @param id name
 * @param what kind and name, for messages
 * @param place where it is declared
 * @param kind mesh or net
 * @param shapePlace where its shape is declared
 * @param shape where it is in space
 * @param openingM clear width of an opening [m]
 * @param strandM thickness of wire or rope [m]
 * @param stiffnessNPerM force for each metre that it gives [N/m]; empty for a rigid one
 */
public record PanelEntry(
        String id,
        String what,
        Place place,
        PanelKind kind,
        Place shapePlace,
        Shape shape,
        double openingM,
        double strandM,
        OptionalDouble stiffnessNPerM)
        implements Entry {

    /** Where a panel is in space. */
    public sealed interface Shape {}

    /**
     * A panel with stated corners.
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
     * An upright rectangle.
     *
     * @param from one end, in plan
     * @param to other end, in plan
     * @param bottomM height of its lower edge [m]; empty for the lowest ground below it
     * @param topM height of its upper edge [m]
     */
    public record Upright(Corner from, Corner to, OptionalDouble bottomM, double topM) implements Shape {}
}
