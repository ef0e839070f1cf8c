package limbway.sim.animal;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Who waits for a stall of which place, first come first served, and how long a stall is held there as a rule. */
final class Queues {

    private final List<List<Ape>> lines;
    private final double[] usedMs;
    private final int[] uses;

    Queues(int resources) {
        lines = IntStream.range(0, resources)
                .mapToObj(r -> (List<Ape>) new ArrayList<Ape>())
                .toList();
        usedMs = new double[resources];
        uses = new int[resources];
    }

    void join(Ape ape, int resource) {
        if (ape.holdings().queue() != resource) {
            quit(ape);
            lines.get(resource).add(ape);
            ape.holdings().takeQueue(resource, ape.needs().atMs());
        }
    }

    void quit(Ape ape) {
        if (ape.holdings().queue() != Ape.NONE) {
            lines.get(ape.holdings().queue()).remove(ape);
            ape.holdings().takeQueue(Ape.NONE, ape.needs().atMs());
        }
    }

    /** Who has waited longest, or null if nobody waits. */
    Ape first(int resource) {
        List<Ape> line = lines.get(resource);
        return line.isEmpty() ? null : line.get(0);
    }

    /** How many wait before an animal that waits there. */
    int ahead(Ape ape) {
        return lines.get(ape.holdings().queue()).indexOf(ape);
    }

    /** Takes down how long a stall was held. */
    void note(int resource, long heldMs) {
        usedMs[resource] += heldMs;
        uses[resource]++;
    }

    /** Mean time for which a stall was held so far, or a first guess where none was given up yet [ms]. */
    double meanUseMs(int resource, double firstGuessMs) {
        return uses[resource] == 0 ? firstGuessMs : usedMs[resource] / uses[resource];
    }
}
