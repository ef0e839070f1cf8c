package limbway.model.volume;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.operation.overlayng.OverlayNG;
import org.locationtech.jts.operation.overlayng.OverlayNGRobust;
import org.locationtech.jts.triangulate.VoronoiDiagramBuilder;

import limbway.model.geometry.Facet;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;

/**
 * A flat surface in space, or one side of it: a panel, a piece of sloping ground.
 *
 * <p>What lies within reach of it is a slab over its area and tubes along its rim; of one side, the half of them in front.
 * Its area is described by two of the three coordinates: that which the plane is most nearly at right angles to is left out.
 */
final class Sheet implements Shape {

    private static final double FLAT = 1e-9;

    /** A body on one side is so far in front of it, and twice as far within the rim, so that it sees no other side. */
    private static final double HAND_M = 0.02;

    private final Point normal;
    private final double offsetM;
    private final Axes axes;
    private final PlanArea area;
    private final List<Bar> rim;
    private final Side side;
    private final Point middle;
    /** Used again for each column. */
    private final double[] crossings;

    /** Which side counts. */
    enum Side {
        /** That to which the normal points. */
        FRONT(1),
        /** The other. */
        BACK(-1),
        /** Both. */
        BOTH(0);

        private final int sign;

        Side(int sign) {
            this.sign = sign;
        }
    }

    /** Which coordinate is left out. */
    private enum Axes {
        YZ,
        XZ,
        XY
    }

    /**
     * Takes a flat polygon.
     *
     * @param facet its plane and edge
     * @param side which side counts
     */
    Sheet(Facet facet, Side side) {
        this(facet, flat(facet), side);
    }

    private Sheet(Facet plane, Geometry flat, Side side) {
        this.normal = plane.normal();
        this.offsetM = normal.dot(plane.corners().get(0));
        this.axes = axesOf(normal);
        this.area = new PlanArea(flat);
        this.rim = area.edges().stream()
                .map(edge -> new Bar(new Segment(inSpace(edge.a()), inSpace(edge.b())), 0))
                .toList();
        this.side = side;
        Coordinate centre = flat.getCentroid().getCoordinate();
        this.middle = inSpace(new Point(centre.x, centre.y, 0));
        this.crossings = new double[rim.size()];
    }

    /**
     * What is left of one side of a panel if only some of its holds can be come to: the places that are nearer to one of
     * those than to any other.
     *
     * @param facet plane and edge
     * @param side which side counts
     * @param lost holds that nobody comes to
     * @param kept the other holds, one or more
     */
    static Sheet around(Facet facet, Side side, List<Point> lost, List<Point> kept) {
        Axes axes = axesOf(facet.normal());
        List<Coordinate> lostAt = coordinates(axes, lost);
        List<Coordinate> sites = new ArrayList<>(lostAt);
        sites.addAll(coordinates(axes, kept));
        VoronoiDiagramBuilder builder = new VoronoiDiagramBuilder();
        builder.setSites(sites);
        Geometry whole = flat(facet);
        List<Geometry> gone = new ArrayList<>();
        for (Object cell : builder.getSubdivision().getVoronoiCellPolygons(whole.getFactory())) {
            if (cell instanceof Polygon polygon && lostAt.contains((Coordinate) polygon.getUserData())) {
                gone.add(polygon);
            }
        }
        return new Sheet(
                facet, OverlayNGRobust.overlay(whole, OverlayNGRobust.union(gone), OverlayNG.DIFFERENCE), side);
    }

    private static List<Coordinate> coordinates(Axes axes, List<Point> places) {
        return places.stream()
                .map(p -> new Coordinate(first(axes, p), second(axes, p)))
                .toList();
    }

    /**
     * The parts of a slope that lie over an area of the plan.
     *
     * @param slope plane and edge; must not stand upright
     * @param plan what to keep, in plan
     * @return sheets with both sides, one for each part
     */
    static List<Sheet> over(Facet slope, Geometry plan) {
        Geometry common = planOf(slope).intersection(plan);
        List<Sheet> parts = new ArrayList<>();
        for (int g = 0; g < common.getNumGeometries(); g++) {
            if (common.getGeometryN(g) instanceof Polygon part && part.getArea() > FLAT) {
                parts.add(new Sheet(slope, flatten(slope, part), Side.BOTH));
            }
        }
        return parts;
    }

    private static Axes axesOf(Point normal) {
        double x = Math.abs(normal.xM());
        double y = Math.abs(normal.yM());
        double z = Math.abs(normal.zM());
        return z >= x && z >= y ? Axes.XY : y >= x ? Axes.XZ : Axes.YZ;
    }

    private static double first(Axes axes, Point p) {
        return axes == Axes.YZ ? p.yM() : p.xM();
    }

    private static double second(Axes axes, Point p) {
        return axes == Axes.XY ? p.yM() : p.zM();
    }

    static Polygon planOf(Facet facet) {
        return polygon(coordinates(Axes.XY, facet.corners()));
    }

    private static Polygon polygon(List<Coordinate> ring) {
        List<Coordinate> closed = new ArrayList<>(ring);
        closed.add(ring.get(0).copy());
        return new GeometryFactory().createPolygon(closed.toArray(Coordinate[]::new));
    }

    private static Polygon flat(Facet facet) {
        Axes axes = axesOf(facet.normal());
        return polygon(coordinates(axes, facet.corners()));
    }

    /** An area of the plan, moved to the coordinates in which a slope over it is described. */
    private static Geometry flatten(Facet slope, Polygon part) {
        Point normal = slope.normal();
        double offsetM = normal.dot(slope.corners().get(0));
        Axes axes = axesOf(normal);
        Geometry moved = part.copy();
        moved.apply((Coordinate c) -> {
            double zM = (offsetM - normal.xM() * c.x - normal.yM() * c.y) / normal.zM();
            Point p = new Point(c.x, c.y, zM);
            c.setX(first(axes, p));
            c.setY(second(axes, p));
        });
        moved.geometryChanged();
        return moved;
    }

    private Point inSpace(Point flat) {
        double a = flat.xM();
        double b = flat.yM();
        return switch (axes) {
            case YZ -> new Point((offsetM - normal.yM() * a - normal.zM() * b) / normal.xM(), a, b);
            case XZ -> new Point(a, (offsetM - normal.xM() * a - normal.zM() * b) / normal.yM(), b);
            case XY -> new Point(a, b, (offsetM - normal.xM() * a - normal.yM() * b) / normal.zM());
        };
    }

    /** Area that it covers, seen from above [m²]. */
    double planM2() {
        double projectedUp = Math.abs(normal.zM());
        double projected =
                switch (axes) {
                    case YZ -> Math.abs(normal.xM());
                    case XZ -> Math.abs(normal.yM());
                    case XY -> projectedUp;
                };
        return area.areaM2() * projectedUp / projected;
    }

    /** Its centroid. */
    Point middle() {
        return middle;
    }

    /** Distance in front of the plane [m], negative behind it. */
    double frontM(Point p) {
        return normal.dot(p) - offsetM;
    }

    /** Whether the place of the plane nearest to a point lies on the sheet. */
    boolean isOver(Point p) {
        Point foot = p.plus(normal.times(-frontM(p)));
        return area.covers(first(axes, foot), second(axes, foot));
    }

    @Override
    public void addReached(double xM, double yM, double reachM, Spans spans) {
        double atZero = normal.xM() * xM + normal.yM() * yM - offsetM;
        double slope = normal.zM();
        if (Math.abs(slope) < FLAT) {
            if (Math.abs(atZero) <= reachM && side.sign * atZero >= 0) {
                addSlab(xM, yM, atZero, Double.NEGATIVE_INFINITY, Double.POSITIVE_INFINITY, spans);
                rim.forEach(edge -> edge.addReached(xM, yM, reachM, spans));
            }
            return;
        }
        double behind = side == Side.FRONT ? 0 : -reachM;
        double before = side == Side.BACK ? 0 : reachM;
        double low = Math.min((behind - atZero) / slope, (before - atZero) / slope);
        double high = Math.max((behind - atZero) / slope, (before - atZero) / slope);
        addSlab(xM, yM, atZero, low, high, spans);
        if (side != Side.BOTH) {
            boolean upwards = side.sign * slope > 0;
            double inPlaneM = -atZero / slope;
            spans.narrow(upwards ? inPlaneM : Double.NEGATIVE_INFINITY, upwards ? Double.POSITIVE_INFINITY : inPlaneM);
        }
        rim.forEach(edge -> edge.addReached(xM, yM, reachM, spans));
        spans.widen();
    }

    /** As the height grows, the nearest place of the plane runs along a line; it counts while that lies on the sheet. */
    private void addSlab(double xM, double yM, double atZero, double low, double high, Spans spans) {
        Point start = new Point(xM, yM, 0).plus(normal.times(-atZero));
        Point way = new Point(0, 0, 1).plus(normal.times(-normal.zM()));
        double a0 = first(axes, start);
        double b0 = second(axes, start);
        double a = first(axes, way);
        double b = second(axes, way);
        if (a * a + b * b < FLAT * FLAT) {
            if (area.covers(a0, b0)) {
                spans.add(low, high);
            }
            return;
        }
        int found = area.crossings(a0, b0, a, b, crossings);
        Arrays.sort(crossings, 0, found);
        for (int i = 0; i + 1 < found; i += 2) {
            spans.add(Math.max(low, crossings[i]), Math.min(high, crossings[i + 1]));
        }
    }

    /** Of one side, a hand's thickness in front of it and within its rim. */
    @Override
    public Point nearestTo(Point place) {
        Point foot = place.plus(normal.times(-frontM(place)));
        Point nearest = foot;
        if (!area.covers(first(axes, foot), second(axes, foot))) {
            double least = Double.POSITIVE_INFINITY;
            for (Bar edge : rim) {
                Point candidate = edge.nearestTo(place);
                if (candidate.distanceM(place) < least) {
                    least = candidate.distanceM(place);
                    nearest = candidate;
                }
            }
        }
        if (side == Side.BOTH) {
            return nearest;
        }
        Point inwards = middle.minus(nearest);
        double inM = Math.min(1, 2 * HAND_M / Math.max(2 * HAND_M, inwards.lengthM()));
        return nearest.plus(inwards.times(inM)).plus(normal.times(side.sign * HAND_M));
    }

    /** At most the distance seen from above: of a steep slope, 0 all over its box. */
    @Override
    public double planDistanceM(double xM, double yM) {
        boolean isUpright = Math.abs(normal.zM()) < FLAT;
        if (axes == Axes.XY ? area.covers(xM, yM) : !isUpright && planBox().covers(xM, yM)) {
            return 0;
        }
        double least = Double.POSITIVE_INFINITY;
        for (Bar edge : rim) {
            least = Math.min(least, edge.planDistanceM(xM, yM));
        }
        return least;
    }

    @Override
    public PlanBox planBox() {
        PlanBox box = rim.get(0).planBox();
        for (Bar edge : rim) {
            box = box.with(edge.planBox());
        }
        return box;
    }
}
