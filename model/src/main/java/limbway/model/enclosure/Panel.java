package limbway.model.enclosure;

import java.util.List;
import java.util.OptionalDouble;

import limbway.model.geometry.Facet;
import limbway.model.geometry.Point;

/**
 * A flat climbable panel: a wall or roof of mesh, or a net. An animal climbs on either side of it in any direction, hangs
 * below it where it lies flat, and cannot pass through it.
 *
 * @param id name, unique within the enclosure
 * @param kind mesh or net
 * @param facet its shape in space
 * @param openingM clear width of one opening of the mesh [m], above 0
 * @param strandDiameterM thickness of the wire or rope that is gripped [m], above 0
 * @param stiffnessNPerM force for each metre that it gives [N/m], above 0; empty for a rigid one
 */
public record Panel(
        String id,
        PanelKind kind,
        Facet facet,
        double openingM,
        double strandDiameterM,
        OptionalDouble stiffnessNPerM) {

    /**
     * Checks the measures.
     *
     * @throws IllegalArgumentException naming the panel and the measure
     */
    public Panel {
        if (!(openingM > 0 && strandDiameterM > 0)) {
            throw new IllegalArgumentException("panel \"" + id + "\": openingM = " + openingM + ", strandDiameterM = "
                    + strandDiameterM + ", allowed above 0");
        }
        if (stiffnessNPerM.isPresent() && !(stiffnessNPerM.getAsDouble() > 0)) {
            throw new IllegalArgumentException(
                    "panel \"" + id + "\": stiffnessNPerM = " + stiffnessNPerM.getAsDouble() + ", allowed above 0");
        }
    }

    /**
     * The corners of the panel, in order.
     *
     * @return three or more points of one plane
     */
    public List<Point> corners() {
        return facet.corners();
    }
}
