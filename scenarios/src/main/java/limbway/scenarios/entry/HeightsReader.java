package limbway.scenarios.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

import limbway.model.geometry.Corner;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.geometry.Terrain;
import limbway.scenarios.format.ListNode;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.format.Node;
import limbway.scenarios.problem.Place;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Reads the heights of the ground. */
final class HeightsReader {

    private static final int MOST_HEIGHTS = 2_000;

    /** A corner of the ground may lie this far beyond the outermost heights [m]. */
    private static final double BEYOND_M = 0.01;

    private static final GeometryFactory FACTORY = new GeometryFactory();

    private final Problems problems;
    private final Values values;
    private final PointsReader points;

    HeightsReader(Problems problems) {
        this.problems = problems;
        this.values = new Values(problems);
        this.points = new PointsReader(problems);
    }

    /** The terrain, or empty after a problem. */
    Optional<Terrain> read(Node node, Optional<Outline> ground) {
        return values.mapping(node, "heights of the ground").flatMap(mapping -> read(mapping, ground));
    }

    private Optional<Terrain> read(MappingNode mapping, Optional<Outline> ground) {
        Fields fields = Fields.of(mapping, Form.HEIGHTS, problems);
        Optional<String> way = fields.oneWay(List.of("points", "grid"), "what they are", "one of: points, grid");
        if (way.isEmpty()) {
            return Optional.empty();
        }
        Place place = fields.find(way.get()).orElse(mapping).place();
        Optional<Sheet> sheet = fields.read(way.get(), node -> way.get().equals("grid") ? grid(node) : scattered(node));
        sheet.ifPresent(measured -> ground.flatMap(edge -> uncovered(edge, measured.nodes()))
                .ifPresent(corner -> fields.fault(Problem.at(place, "heights of the ground do not cover all of it")
                        .found("corner " + shown(corner) + " of the ground lies beyond the outermost heights")
                        .mend("add heights there, also beyond the edge, or make the ground smaller"))));
        return fields.build(() -> sheet.orElseThrow().terrain());
    }

    /** Measured heights and the sheet through them. */
    private record Sheet(List<Point> nodes, Terrain terrain) {}

    private Optional<Sheet> scattered(Node node) {
        if (node instanceof ListNode list && list.items().size() > MOST_HEIGHTS) {
            return tooMany(node, list.items().size());
        }
        if (!(node instanceof ListNode list) || list.items().size() < 3) {
            problems.add(Problem.at(node.place(), "points of the heights are not a list of points")
                    .found(node.shown())
                    .allowed("3 to " + MOST_HEIGHTS + " points, for example [[0, 0, 0], [30, 0, 1.5], [30, 20, 2]]"));
            return Optional.empty();
        }
        Map<Coordinate, Point> measured = new TreeMap<>();
        boolean sound = true;
        for (Node item : list.items()) {
            Optional<double[]> xyz =
                    values.numbers(item, PlaceReader.XYZ, 3, "a point of the heights", "[x, y, z] in metres");
            sound &= xyz.isPresent();
            if (xyz.isPresent()) {
                Point point = new Point(xyz.get()[0], xyz.get()[1], xyz.get()[2]);
                Point earlier = measured.putIfAbsent(new Coordinate(point.xM(), point.yM()), point);
                if (earlier != null) {
                    problems.add(Problem.at(item.place(), "two heights are given for one place")
                            .found(Wording.measure(earlier.zM(), "m") + " and " + Wording.measure(point.zM(), "m"))
                            .mend("take one of them out"));
                    sound = false;
                }
            }
        }
        if (!sound) {
            return Optional.empty();
        }
        List<Point> nodes = List.copyOf(measured.values());
        if (hull(nodes).getDimension() < 2) {
            problems.add(Problem.at(node.place(), "points of the heights lie in one line, seen from above")
                    .mend("add a point beside that line"));
            return Optional.empty();
        }
        return Optional.of(new Sheet(nodes, new Terrain(Triangulation.of(nodes))));
    }

    private Optional<Sheet> grid(Node node) {
        return values.mapping(node, "grid of the heights").flatMap(mapping -> {
            Fields fields = Fields.of(mapping, Form.GRID, problems);
            Optional<Corner> origin = fields.read("origin", value -> points.corner(value, "origin of the grid"));
            double spacingM = fields.number(Quantity.SPACING);
            Optional<double[][]> rows = fields.read("rows", this::rows);
            return fields.build(() -> sheet(origin.orElseThrow(), spacingM, rows.orElseThrow()));
        });
    }

    private Optional<double[][]> rows(Node node) {
        List<Node> items = values.list(node, "rows of the grid");
        int width = items.isEmpty() || !(items.get(0) instanceof ListNode first)
                ? 0
                : first.items().size();
        if (items.size() < 2 || width < 2) {
            problems.add(Problem.at(node.place(), "rows of the grid hold too few heights")
                    .found(items.size() + " rows, the first of " + width)
                    .allowed("two or more rows of two or more heights, the southernmost row first"));
            return Optional.empty();
        }
        if ((long) items.size() * width > MOST_HEIGHTS) {
            return tooMany(node, (long) items.size() * width);
        }
        double[][] heights = new double[items.size()][width];
        boolean sound = true;
        for (int r = 0; r < items.size(); r++) {
            List<Node> row = values.list(items.get(r), "a row of the grid");
            if (row.size() != width) {
                problems.add(Problem.at(items.get(r).place(), "a row of the grid is not as long as the first")
                        .found(Integer.toString(row.size()))
                        .allowed(width + " heights"));
                return Optional.empty();
            }
            for (int c = 0; c < width; c++) {
                OptionalDouble height = values.number(row.get(c), Quantity.ELEVATION, "a height of the grid");
                sound &= height.isPresent();
                heights[r][c] = height.orElse(0);
            }
        }
        return sound ? Optional.of(heights) : Optional.empty();
    }

    private static Sheet sheet(Corner origin, double spacingM, double[][] heights) {
        Point[][] nodes = new Point[heights.length][heights[0].length];
        List<Point> all = new ArrayList<>();
        for (int r = 0; r < nodes.length; r++) {
            for (int c = 0; c < nodes[r].length; c++) {
                nodes[r][c] = new Point(origin.xM() + c * spacingM, origin.yM() + r * spacingM, heights[r][c]);
                all.add(nodes[r][c]);
            }
        }
        return new Sheet(all, new Terrain(Triangulation.ofGrid(nodes)));
    }

    private <T> Optional<T> tooMany(Node node, long found) {
        problems.add(Problem.at(node.place(), "there are too many heights")
                .found(Long.toString(found))
                .allowed("at most " + MOST_HEIGHTS));
        return Optional.empty();
    }

    /** The first corner of the ground for which the heights say nothing; the area between them has no dents. */
    private static Optional<Corner> uncovered(Outline ground, List<Point> nodes) {
        Geometry known = hull(nodes).buffer(BEYOND_M);
        Polygon edge = ground.toPolygon();
        return known.covers(edge)
                ? Optional.empty()
                : ground.corners().stream()
                        .filter(corner -> !known.covers(FACTORY.createPoint(new Coordinate(corner.xM(), corner.yM()))))
                        .findFirst();
    }

    private static Geometry hull(List<Point> nodes) {
        return FACTORY.createMultiPointFromCoords(
                        nodes.stream().map(p -> new Coordinate(p.xM(), p.yM())).toArray(Coordinate[]::new))
                .convexHull();
    }

    private static String shown(Corner corner) {
        return "[" + Wording.number(corner.xM()) + ", " + Wording.number(corner.yM()) + "]";
    }
}
