package limbway.model.explain.flip;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import limbway.model.alteration.FreeNames;
import limbway.model.body.Body;
import limbway.model.body.LocomotorMode;
import limbway.model.enclosure.Enclosure;
import limbway.model.energy.ModeCost;
import limbway.model.geometry.Point;
import limbway.model.graph.RouteGraph;
import limbway.model.route.ReverseTree;

/**
 * Hangs one more rope between two things that have names, as short as turns the trip.
 *
 * <p>Pairs are chosen by what the way would cost over the new rope: to its first end, along it, and on from its second end.
 */
final class AddedLinkSearch {

    /** Longest rope that is looked at [m]. Assumption: longer ones are seldom hung in one span. */
    static final double LONGEST_M = 15;

    /** Places looked at, at either end, before pairs of things are chosen; more are thinned out. */
    private static final int MOST_PLACES = 700;

    private static final int MOST_PAIRS = 6;

    /** Places are about so far apart along a support [m]. */
    private static final double APART_M = 0.5;

    private record Ends(String from, String to, double leastM) {}

    private final ChangeTrial trial;
    private final TripTrees trees;
    private final Enclosure enclosure;
    private final RouteGraph graph;
    private final Body body;
    private final ModeCost prices;
    private final Map<String, List<Integer>> holdsOf = new LinkedHashMap<>();

    AddedLinkSearch(ChangeTrial trial, TripTrees trees) {
        this.trial = trial;
        this.trees = trees;
        this.enclosure = trial.question().enclosure();
        this.graph = trees.graph();
        this.body = trial.question().body();
        this.prices = new ModeCost(trial.question().energy());
        for (int hold = 0; hold < graph.holdCount(); hold++) {
            String id = graph.support(hold);
            if (Things.support(enclosure, id).isPresent()
                    || Things.platform(enclosure, id).isPresent()) {
                holdsOf.computeIfAbsent(id, k -> new ArrayList<>()).add(hold);
            }
        }
    }

    /** The shortest rope that turns the trip, or empty if none up to the longest does. */
    Optional<Flip> find() {
        Optional<Flip> best = Optional.empty();
        int tried = 0;
        for (Ends ends : pairs()) {
            double bestM = best.map(flip -> flip.change().amountM()).orElse(LONGEST_M);
            if (tried++ == MOST_PAIRS || ends.leastM - APART_M >= bestM || !trial.canAfford(1)) {
                break;
            }
            Optional<Flip> shorter = new RopeFitting(
                            trial,
                            FreeNames.ofLink(enclosure, 0),
                            Anchors.on(enclosure, ends.from, holdsOf.get(ends.from), graph, this::toHere),
                            Anchors.on(enclosure, ends.to, holdsOf.get(ends.to), graph, this::onwards),
                            this::ropeMilliJ,
                            trees.now().overGroundMilliJ())
                    .shortest(bestM);
            best = shorter.isPresent() ? shorter : best;
        }
        return best;
    }

    private int toHere(int hold) {
        return trees.fromStart().offGroundMilliJ(hold);
    }

    private int onwards(int hold) {
        return trees.offGroundToEndMilliJ(hold);
    }

    /** Pairs of things between which a rope could turn the trip, those nearest to each other first. */
    private List<Ends> pairs() {
        int most = trees.now().overGroundMilliJ();
        List<Integer> starts = new ArrayList<>();
        List<Integer> ends = new ArrayList<>();
        for (List<Integer> holds : holdsOf.values()) {
            for (int hold : holds) {
                if (toHere(hold) <= most && toHere(hold) != ReverseTree.UNREACHABLE) {
                    starts.add(hold);
                }
                if (onwards(hold) <= most && onwards(hold) != ReverseTree.UNREACHABLE) {
                    ends.add(hold);
                }
            }
        }
        Map<String, Ends> nearest = new LinkedHashMap<>();
        for (int u : thinned(starts)) {
            for (int v : thinned(ends)) {
                if (!graph.support(u).equals(graph.support(v))) {
                    consider(u, v, most, nearest);
                }
            }
        }
        List<Ends> sorted = new ArrayList<>(nearest.values());
        sorted.sort(Comparator.comparingDouble(Ends::leastM)
                .thenComparing(Ends::from)
                .thenComparing(Ends::to));
        return sorted;
    }

    private void consider(int u, int v, int most, Map<String, Ends> nearest) {
        double lengthM = graph.place(u).distanceM(graph.place(v));
        String key = graph.support(u) + "\n" + graph.support(v);
        Ends known = nearest.get(key);
        if (lengthM < Things.SAME_PLACE_M || lengthM > LONGEST_M || (known != null && known.leastM <= lengthM)) {
            return;
        }
        if (toHere(u) + ropeMilliJ(graph.place(u), graph.place(v)) + onwards(v) <= most) {
            nearest.put(key, new Ends(graph.support(u), graph.support(v), lengthM));
        }
    }

    private static List<Integer> thinned(List<Integer> holds) {
        int every = 1 + holds.size() / MOST_PLACES;
        List<Integer> some = new ArrayList<>();
        for (int i = 0; i < holds.size(); i += every) {
            some.add(holds.get(i));
        }
        return some;
    }

    /** What the way along a straight rope costs. */
    private double ropeMilliJ(Point from, Point to) {
        double lengthM = from.distanceM(to);
        double slopeDeg = StrictMath.toDegrees(StrictMath.atan2(to.zM() - from.zM(), from.planDistanceM(to)));
        double jPerM = prices.jPerM(body, LocomotorMode.CLAMBER, slopeDeg);
        if (body.brachiates()) {
            jPerM = Math.min(jPerM, prices.jPerM(body, LocomotorMode.BRACHIATE, slopeDeg));
        }
        return 1000 * jPerM * lengthM;
    }
}
