package limbway.reports.scene;

import java.util.Optional;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

import limbway.model.enclosure.Barrier;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;

/** How thick a door is drawn: through all of the barrier that it opens, and a little more, so that it can be seen. */
final class DoorLeaf {

    private static final double HALF_LEAF_M = 0.03;

    /** A door does not lead through a barrier thicker than this. */
    private static final double THICKEST_M = 3;

    private DoorLeaf() {}

    static Polygon footprint(Segment sill, Optional<Barrier> in) {
        Point along = Vectors.unit(sill.b().minus(sill.a()));
        Point across = new Point(-along.yM(), along.xM(), 0);
        double leftM = 0;
        double rightM = 0;
        if (in.isPresent()) {
            Geometry strip = strip(sill, across, -THICKEST_M, THICKEST_M);
            Geometry through = in.get().footprint().toPolygon().intersection(strip);
            Geometry line = strip(sill, across, -HALF_LEAF_M, HALF_LEAF_M);
            for (int i = 0; i < through.getNumGeometries(); i++) {
                if (through.getGeometryN(i).intersects(line)) {
                    for (Coordinate corner : through.getGeometryN(i).getCoordinates()) {
                        double offM = new Point(corner.x, corner.y, 0)
                                .minus(sill.a().atHeight(0))
                                .dot(across);
                        leftM = Math.min(leftM, offM);
                        rightM = Math.max(rightM, offM);
                    }
                }
            }
        }
        return strip(sill, across, leftM - HALF_LEAF_M, rightM + HALF_LEAF_M);
    }

    private static Polygon strip(Segment sill, Point across, double fromM, double toM) {
        Point a = sill.a();
        Point b = sill.b();
        Coordinate first = corner(a, across, fromM);
        return new GeometryFactory().createPolygon(new Coordinate[] {
            first, corner(b, across, fromM), corner(b, across, toM), corner(a, across, toM), first.copy()
        });
    }

    private static Coordinate corner(Point end, Point across, double offM) {
        Point corner = end.plus(across.times(offM));
        return new Coordinate(corner.xM(), corner.yM());
    }
}
