package limbway.reports.patterns;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleBiFunction;

import limbway.model.graph.RouteGraph;
import limbway.sim.experiment.Outcome;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Motive;
import limbway.sim.journal.Stay;

/** Where and when animals go to bed, and how far from their last bed. */
final class Sleep {

    private static final long DAY_MS = 86_400_000;
    private static final long NOON_MS = DAY_MS / 2;

    private Sleep() {}

    /** Share of nights on the ground. */
    static Measurement onGround(Run run) {
        return mean(run, (graph, night) -> graph.heightAboveGroundM(night.hold()) <= 0.01 ? 1.0 : 0.0);
    }

    /** Mean clock time at which the bed is reached [h]. */
    static Measurement startHour(Run run) {
        return mean(run, (graph, night) -> night.startMs() % DAY_MS / 3_600_000.0);
    }

    /** Begins of nights, one for each animal and day. */
    static List<Stay> nights(Journal journal) {
        return journal.stays().stream()
                .filter(stay -> stay.motive() == Motive.NIGHT && stay.startMs() % DAY_MS > NOON_MS)
                .toList();
    }

    private static Measurement mean(Run run, ToDoubleBiFunction<RouteGraph, Stay> figure) {
        return lives -> {
            Outcome outcome = lives.outcome(run);
            RouteGraph graph = outcome.habitat().graph();
            List<Double> found = new ArrayList<>();
            for (Journal journal : outcome.journals()) {
                nights(journal).stream()
                        .mapToDouble(night -> figure.applyAsDouble(graph, night))
                        .average()
                        .ifPresent(found::add);
            }
            return found;
        };
    }
}
