package limbway.model.graph;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.union.UnaryUnionOp;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Obstacle;

/** The ground that can be walked on, by the same rules that decide the walks of the graph. */
public final class OpenGround {

    private OpenGround() {}

    /**
     * The parts of the ground between which nobody walks: the outline without obstacles, low barriers, panels and wire.
     * Where a door is, whenever it opens, the ground on both sides is one part.
     *
     * @param enclosure what stands there
     * @return areas of the plan; empty if nothing of the ground is open
     */
    public static List<Polygon> parts(Enclosure enclosure) {
        List<Geometry> closed = new ArrayList<>(new GroundClosures(enclosure).holes());
        for (Obstacle obstacle : enclosure.ground().obstacles()) {
            closed.add(obstacle.outline().toPolygon());
        }
        Geometry open = enclosure.ground().outline().toPolygon();
        if (!closed.isEmpty()) {
            open = open.difference(UnaryUnionOp.union(closed));
        }
        List<Polygon> parts = new ArrayList<>();
        for (int g = 0; g < open.getNumGeometries(); g++) {
            // a difference may leave lines beside its areas
            if (open.getGeometryN(g) instanceof Polygon polygon && !polygon.isEmpty()) {
                parts.add(polygon);
            }
        }
        return parts;
    }
}
