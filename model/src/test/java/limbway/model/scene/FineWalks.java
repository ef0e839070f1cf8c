package limbway.model.scene;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.PriorityQueue;

import limbway.model.energy.ZigzagCost;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;
import limbway.model.geometry.Terrain;
import limbway.model.geometry.Triangle;

/**
 * Least costs of walking over an open terrain by brute force: places very close together on all sides of all triangles,
 * every straight way within a triangle, Dijkstra's method. Shares nothing with the compiler of graphs but the cost of a
 * straight metre.
 */
public final class FineWalks {

    private record Place(Point at, List<Integer> triangles) {}

    private record Reached(double joules, int place) {}

    private final List<Triangle> triangles;
    private final double stepM;
    private final double massKg;
    private final ZigzagCost cost;
    private final List<Place> places = new ArrayList<>();
    private final List<List<Integer>> placesIn = new ArrayList<>();
    /** Of each triangle, the cost between any two of its places, in the order of {@link #placesIn}. */
    private final List<double[][]> walksJ = new ArrayList<>();

    public FineWalks(Terrain terrain, double stepM, double massKg) {
        this.triangles = terrain.triangles();
        this.stepM = stepM;
        this.massKg = massKg;
        this.cost = new ZigzagCost(massKg);
        Map<List<Long>, Integer> known = new LinkedHashMap<>();
        for (int t = 0; t < triangles.size(); t++) {
            placesIn.add(new ArrayList<>());
            Triangle triangle = triangles.get(t);
            addSide(new Segment(triangle.a(), triangle.b()), t, known);
            addSide(new Segment(triangle.b(), triangle.c()), t, known);
            addSide(new Segment(triangle.c(), triangle.a()), t, known);
        }
        for (List<Integer> within : placesIn) {
            double[][] walkJ = new double[within.size()][within.size()];
            for (int i = 0; i < walkJ.length; i++) {
                for (int j = 0; j < walkJ.length; j++) {
                    walkJ[i][j] = walkJ(
                            places.get(within.get(i)).at(),
                            places.get(within.get(j)).at());
                }
            }
            walksJ.add(walkJ);
        }
    }

    private void addSide(Segment side, int t, Map<List<Long>, Integer> known) {
        int steps = (int) Math.ceil(side.lengthM() / stepM);
        for (int i = 0; i <= steps; i++) {
            Point p = side.at((double) i / steps);
            List<Long> key = List.of(Math.round(p.xM() * 1e6), Math.round(p.yM() * 1e6));
            int number = known.computeIfAbsent(key, k -> {
                places.add(new Place(p, new ArrayList<>()));
                return places.size() - 1;
            });
            if (!places.get(number).triangles().contains(t)) {
                places.get(number).triangles().add(t);
                placesIn.get(t).add(number);
            }
        }
    }

    /** Least cost [J] from one place in plan to each of some others. */
    public double[] leastJ(Point from, List<Point> to) {
        int n = places.size();
        double[] least = new double[n + to.size()];
        Arrays.fill(least, Double.MAX_VALUE);
        PriorityQueue<Reached> open = new PriorityQueue<>((a, b) -> Double.compare(a.joules(), b.joules()));
        for (int t : trianglesAt(from)) {
            for (int other : placesIn.get(t)) {
                reach(other, walkJ(from, places.get(other).at()), least, open);
            }
        }
        reachGoals(new Place(from, trianglesAt(from)), 0, to, least, open);
        while (!open.isEmpty()) {
            Reached next = open.poll();
            if (next.joules() == least[next.place()] && next.place() < n) {
                spread(next, least, open);
                reachGoals(places.get(next.place()), next.joules(), to, least, open);
            }
        }
        return Arrays.copyOfRange(least, n, least.length);
    }

    private void spread(Reached from, double[] least, PriorityQueue<Reached> open) {
        for (int t : places.get(from.place()).triangles()) {
            List<Integer> within = placesIn.get(t);
            double[] walkJ = walksJ.get(t)[within.indexOf(from.place())];
            for (int k = 0; k < walkJ.length; k++) {
                reach(within.get(k), from.joules() + walkJ[k], least, open);
            }
        }
    }

    private void reachGoals(Place from, double spentJ, List<Point> to, double[] least, PriorityQueue<Reached> open) {
        for (int t : from.triangles()) {
            for (int k = 0; k < to.size(); k++) {
                if (triangles.get(t).covers(to.get(k).xM(), to.get(k).yM())) {
                    reach(places.size() + k, spentJ + walkJ(from.at(), to.get(k)), least, open);
                }
            }
        }
    }

    private static void reach(int place, double spentJ, double[] least, PriorityQueue<Reached> open) {
        if (spentJ < least[place]) {
            least[place] = spentJ;
            open.add(new Reached(spentJ, place));
        }
    }

    private List<Integer> trianglesAt(Point p) {
        List<Integer> found = new ArrayList<>();
        for (int t = 0; t < triangles.size(); t++) {
            if (triangles.get(t).covers(p.xM(), p.yM())) {
                found.add(t);
            }
        }
        return found;
    }

    private double walkJ(Point a, Point b) {
        double lengthM = a.distanceM(b);
        double slope = lengthM == 0 ? 0 : StrictMath.asin(Math.max(-1, Math.min(1, (b.zM() - a.zM()) / lengthM)));
        return massKg * lengthM * cost.jPerKgM(StrictMath.toDegrees(slope));
    }
}
