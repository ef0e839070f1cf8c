package limbway.model.containment;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

import limbway.model.enclosure.HotWire;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;

/** The space that live wire keeps free: nearer to a strand or to planting than its clearance. */
public final class LiveSpace {

    private record Block(Polygon footprint, double baseZM, double topZM, double clearanceM) {}

    private final GeometryFactory factory = new GeometryFactory();
    private final List<HotWire.Strand> strands = new ArrayList<>();
    private final List<Block> plantings = new ArrayList<>();

    /**
     * The space round some wires.
     *
     * @param wires strands and plantings
     */
    public LiveSpace(List<HotWire> wires) {
        for (HotWire wire : wires) {
            if (wire instanceof HotWire.Strand strand) {
                strands.add(strand);
            } else if (wire instanceof HotWire.Planting planting) {
                plantings.add(new Block(
                        planting.footprint().toPolygon(), planting.baseZM(), planting.topZM(), planting.clearanceM()));
            }
        }
    }

    /**
     * Whether a place lies in it.
     *
     * @param place any place
     * @return true nearer than the clearance of a wire
     */
    public boolean holds(Point place) {
        for (HotWire.Strand strand : strands) {
            for (Segment piece : strand.line().pieces()) {
                if (piece.distanceM(place) < strand.clearanceM()) {
                    return true;
                }
            }
        }
        for (Block planting : plantings) {
            boolean atItsHeight = place.zM() > planting.baseZM - planting.clearanceM
                    && place.zM() < planting.topZM + planting.clearanceM;
            if (atItsHeight
                    && planting.footprint.distance(factory.createPoint(new Coordinate(place.xM(), place.yM())))
                            < planting.clearanceM) {
                return true;
            }
        }
        return false;
    }
}
