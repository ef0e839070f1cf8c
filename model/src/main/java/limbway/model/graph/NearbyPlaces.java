package limbway.model.graph;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import limbway.model.geometry.Point;

/**
 * Chooses, among very many places of a plan, which pairs are walked between directly: from each place to the nearest one
 * in each of many directions.
 *
 * <p>Any way between two places can then be made of such steps with little more length; see {@code docs/model.md}.
 *
 * @source the cone graph of Yao 1982, SIAM J. Comput. 11:721-736, doi 10.1137/0211059 (from memory)
 */
final class NearbyPlaces {

    /** With more places than this, walks lead by way of neighbours instead of straight. */
    static final int EXACT_PLACES = 1500;

    private static final int DIRECTIONS = 32;
    private static final double CELL_M = 2;
    private static final int FARTHEST_RING = 16;

    private final List<Point> places;
    private final int columns;
    private final int rows;
    private final double westM;
    private final double southM;
    private final List<List<Integer>> cells = new ArrayList<>();

    /** Receives a pair of places by their numbers. */
    @FunctionalInterface
    interface Pair {
        void accept(int one, int other);
    }

    /** Visits every pair of places, or, where there are very many, each place with its nearest neighbours all round. */
    static void forEachPair(List<Point> places, Pair visitor) {
        if (places.size() > EXACT_PLACES) {
            NearbyPlaces nearby = new NearbyPlaces(places);
            for (int i = 0; i < places.size(); i++) {
                for (int j : nearby.around(i)) {
                    visitor.accept(i, j);
                }
            }
            return;
        }
        for (int i = 0; i < places.size(); i++) {
            for (int j = i + 1; j < places.size(); j++) {
                visitor.accept(i, j);
            }
        }
    }

    NearbyPlaces(List<Point> places) {
        this.places = places;
        double west = Double.MAX_VALUE;
        double south = Double.MAX_VALUE;
        double east = -Double.MAX_VALUE;
        double north = -Double.MAX_VALUE;
        for (Point p : places) {
            west = Math.min(west, p.xM());
            south = Math.min(south, p.yM());
            east = Math.max(east, p.xM());
            north = Math.max(north, p.yM());
        }
        westM = west;
        southM = south;
        columns = 1 + (int) ((east - west) / CELL_M);
        rows = 1 + (int) ((north - south) / CELL_M);
        for (int i = 0; i < columns * rows; i++) {
            cells.add(new ArrayList<>(2));
        }
        for (int i = 0; i < places.size(); i++) {
            cells.get(row(places.get(i)) * columns + column(places.get(i))).add(i);
        }
    }

    /** Numbers of the nearest place in each direction in which there is one within some thirty metres. */
    int[] around(int place) {
        Point from = places.get(place);
        int[] nearest = new int[DIRECTIONS];
        double[] nearestM = new double[DIRECTIONS];
        Arrays.fill(nearest, -1);
        Arrays.fill(nearestM, Double.MAX_VALUE);
        int open = DIRECTIONS;
        for (int ring = 0; ring <= FARTHEST_RING; ring++) {
            if (open == 0 && allWithin(nearestM, (ring - 1) * CELL_M)) {
                break;
            }
            for (int cell : ringOf(row(from), column(from), ring)) {
                for (int other : cells.get(cell)) {
                    double awayM = from.planDistanceM(places.get(other));
                    if (awayM == 0) {
                        continue;
                    }
                    int direction = direction(from, places.get(other));
                    if (awayM < nearestM[direction]) {
                        open -= nearest[direction] < 0 ? 1 : 0;
                        nearest[direction] = other;
                        nearestM[direction] = awayM;
                    }
                }
            }
        }
        return Arrays.stream(nearest).filter(i -> i >= 0).toArray();
    }

    private static boolean allWithin(double[] distancesM, double limitM) {
        for (double distanceM : distancesM) {
            if (distanceM > limitM) {
                return false;
            }
        }
        return true;
    }

    private List<Integer> ringOf(int row, int column, int ring) {
        List<Integer> found = new ArrayList<>();
        for (int r = Math.max(0, row - ring); r <= Math.min(rows - 1, row + ring); r++) {
            boolean edge = Math.abs(r - row) == ring;
            int step = edge || ring == 0 ? 1 : 2 * ring;
            for (int c = column - ring; c <= column + ring; c += step) {
                if (c >= 0 && c < columns) {
                    found.add(r * columns + c);
                }
            }
        }
        return found;
    }

    private static int direction(Point from, Point to) {
        double turn = StrictMath.atan2(to.yM() - from.yM(), to.xM() - from.xM()) / (2 * Math.PI) + 0.5;
        return Math.min(DIRECTIONS - 1, (int) (turn * DIRECTIONS));
    }

    private int row(Point p) {
        return (int) ((p.yM() - southM) / CELL_M);
    }

    private int column(Point p) {
        return (int) ((p.xM() - westM) / CELL_M);
    }
}
