package limbway.scenarios.layout;

import java.util.List;
import java.util.Optional;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;

import limbway.model.enclosure.Barrier;
import limbway.model.enclosure.Panel;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;
import limbway.scenarios.problem.Wording;

/** What a door opens: a panel or a wall, and whether a door lies in it. */
sealed interface Leaf {

    /** How far a door may lie from the plane or beyond the edge [m]: five centimetres, as built. */
    double WITHIN_M = 0.05;

    /** A panel. */
    record OfPanel(Panel panel) implements Leaf {

        /** The vertical part of the normal of a panel that still counts as upright: 6 degrees. */
        private static final double UPRIGHT = 0.1;

        @Override
        public String what() {
            return panel.kind().word() + " " + Wording.quote(panel.id());
        }

        @Override
        public double lowestM() {
            return panel.corners().stream().mapToDouble(Point::zM).min().orElse(0);
        }

        @Override
        public Optional<String> outside(Segment sill, double heightM) {
            if (Math.abs(panel.facet().normal().zM()) > UPRIGHT) {
                return Optional.of("a panel that does not stand upright");
            }
            List<Point> corners = List.of(sill.a(), sill.b(), above(sill.b(), heightM), above(sill.a(), heightM));
            PanelPlane plane = PanelPlane.of(panel.facet());
            double offM = corners.stream().mapToDouble(plane::offM).max().orElse(0);
            return offM > WITHIN_M
                    ? Optional.of(metres(offM) + " from its plane")
                    : beyond(plane.polygon(panel.corners()), plane.polygon(corners));
        }
    }

    /** A wall or pane. */
    record OfBarrier(Barrier barrier) implements Leaf {

        @Override
        public String what() {
            return barrier.kind().word() + " " + Wording.quote(barrier.id());
        }

        @Override
        public double lowestM() {
            return barrier.baseZM();
        }

        @Override
        public Optional<String> outside(Segment sill, double heightM) {
            double lowM = barrier.baseZM() - sill.a().zM();
            double highM = sill.a().zM() + heightM - barrier.topZM();
            if (Math.max(lowM, highM) > WITHIN_M) {
                return Optional.of(metres(Math.max(lowM, highM)) + (lowM > highM ? " below" : " above") + " its edge");
            }
            Geometry line = new GeometryFactory().createLineString(new Coordinate[] {
                new Coordinate(sill.a().xM(), sill.a().yM()),
                new Coordinate(sill.b().xM(), sill.b().yM())
            });
            return beyond(barrier.footprint().toPolygon(), line);
        }
    }

    static Leaf of(Panel panel) {
        return new OfPanel(panel);
    }

    static Leaf of(Barrier barrier) {
        return new OfBarrier(barrier);
    }

    /** Kind and name, for messages. */
    String what();

    /** Height of its lowest point [m]. */
    double lowestM();

    /** How a door lies outside, in words; empty for one that lies within. */
    Optional<String> outside(Segment sill, double heightM);

    private static Point above(Point point, double heightM) {
        return point.atHeight(point.zM() + heightM);
    }

    private static Optional<String> beyond(Geometry edge, Geometry door) {
        double farthestM = 0;
        for (Coordinate corner : door.getCoordinates()) {
            farthestM = Math.max(farthestM, edge.distance(new GeometryFactory().createPoint(corner)));
        }
        if (farthestM > WITHIN_M) {
            return Optional.of(metres(farthestM) + " beyond its edge");
        }
        return edge.buffer(2 * WITHIN_M).covers(door) ? Optional.empty() : Optional.of("across its edge");
    }

    private static String metres(double m) {
        return Wording.measure(Math.rint(m * 100) / 100, "m");
    }
}
