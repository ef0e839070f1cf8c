package limbway.sim.day;

import java.util.Comparator;
import java.util.List;
import java.util.function.IntPredicate;

import limbway.model.graph.RouteGraph;
import limbway.sim.animal.Ape;
import limbway.sim.animal.Stalls;
import limbway.sim.habitat.Passages;

/**
 * Gives out the nests before the first night, by rank.
 *
 * <p>Each animal gets the nest with a stall left from which it reaches most places; among equals the first in the
 * scenario. When nests run out, a resting place, and then any place at all.
 */
final class Bedding {

    private final RouteGraph graph;
    private final Stalls stalls;

    Bedding(RouteGraph graph, Stalls stalls) {
        this.graph = graph;
        this.stalls = stalls;
    }

    /** Puts every animal to bed. */
    void giveOut(List<Ape> group) {
        List<Ape> byRank = group.stream()
                .sorted(Comparator.comparingInt((Ape ape) -> ape.animal().rank())
                        .thenComparingInt(Ape::number))
                .toList();
        for (Ape ape : byRank) {
            boolean housed = settle(ape, stalls::isUnowned)
                    || settle(ape, r -> graph.resources().get(r).kind().isRestingPlace() && stalls.isFree(ape, r))
                    || settle(ape, r -> true);
            if (!housed) {
                throw new IllegalArgumentException(
                        "run: places that an animal can use = 0, allowed 1 or more; no support, "
                                + "platform or ground is within reach of any resource");
            }
        }
    }

    private boolean settle(Ape ape, IntPredicate suits) {
        Passages passages = ape.outlook().passages();
        int bestPlace = Ape.NONE;
        int bestStart = Ape.NONE;
        int mostReached = -1;
        for (int r = 0; r < graph.resources().size(); r++) {
            if (!suits.test(r)) {
                continue;
            }
            for (int hold : graph.useHolds(r)) {
                int reached = reached(passages, passages.startAt(hold));
                if (reached > mostReached) {
                    mostReached = reached;
                    bestPlace = r;
                    bestStart = passages.startAt(hold);
                }
            }
        }
        if (bestPlace == Ape.NONE) {
            return false;
        }
        ape.arrive(bestPlace, bestStart);
        if (stalls.isUnowned(bestPlace)) {
            stalls.own(ape, bestPlace);
        }
        if (graph.resources().get(bestPlace).kind().isRestingPlace()) {
            stalls.take(ape, bestPlace);
        }
        return true;
    }

    private int reached(Passages passages, int start) {
        int count = 0;
        for (int r = 0; r < graph.resources().size(); r++) {
            count += passages.isOpen(passages.passage(start, r)) ? 1 : 0;
        }
        return count;
    }
}
