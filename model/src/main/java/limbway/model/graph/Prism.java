package limbway.model.graph;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.prep.PreparedGeometry;
import org.locationtech.jts.geom.prep.PreparedGeometryFactory;

import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;

/** An upright block of space; its surface does not belong to it. */
final class Prism {

    private static final double SKIN_M = 1e-6;

    private final GeometryFactory factory = new GeometryFactory();
    private final PreparedGeometry within;
    private final Envelope box;
    private final double baseZM;
    private final double topZM;

    private Prism(Geometry footprint, double baseZM, double topZM) {
        Geometry inner = footprint.buffer(-SKIN_M, 2);
        this.within = PreparedGeometryFactory.prepare(inner);
        this.box = inner.getEnvelopeInternal();
        this.baseZM = baseZM + SKIN_M;
        this.topZM = topZM - SKIN_M;
    }

    static Prism of(Outline footprint, double baseZM, double topZM) {
        return new Prism(footprint.toPolygon(), baseZM, topZM);
    }

    /** The block with everything nearer to it than a distance; square at its upper and lower rim. */
    static Prism around(Outline footprint, double baseZM, double topZM, double clearanceM) {
        return new Prism(footprint.toPolygon().buffer(clearanceM), baseZM - clearanceM, topZM + clearanceM);
    }

    /** The part of a straight way that lies between base and top and over the box of the footprint; null for none. */
    Segment partAtItsHeight(Point a, Point b) {
        if (Math.min(a.zM(), b.zM()) >= topZM
                || Math.max(a.zM(), b.zM()) <= baseZM
                || !box.intersects(new Coordinate(a.xM(), a.yM()), new Coordinate(b.xM(), b.yM()))) {
            return null;
        }
        double riseM = b.zM() - a.zM();
        if (riseM == 0) {
            return new Segment(a, b);
        }
        double atBase = (baseZM - a.zM()) / riseM;
        double atTop = (topZM - a.zM()) / riseM;
        double first = Math.max(0, Math.min(atBase, atTop));
        double last = Math.min(1, Math.max(atBase, atTop));
        Segment whole = new Segment(a, b);
        return new Segment(whole.at(first), whole.at(last));
    }

    boolean meets(Point a, Point b) {
        Segment part = partAtItsHeight(a, b);
        return part != null && within.intersects(plan(part));
    }

    /** What of a way at its height lies over the footprint, seen from above. */
    Geometry inside(Segment part) {
        return within.getGeometry().intersection(plan(part));
    }

    private Geometry plan(Segment part) {
        Coordinate from = new Coordinate(part.a().xM(), part.a().yM());
        Coordinate to = new Coordinate(part.b().xM(), part.b().yM());
        return from.equals2D(to) ? factory.createPoint(from) : factory.createLineString(new Coordinate[] {from, to});
    }
}
