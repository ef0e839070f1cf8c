package limbway.reports.patterns;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import limbway.sim.experiment.Outcome;
import limbway.sim.journal.Journal;

/** How long it takes until what a variant adds is used. */
final class Adoption {

    private static final int WINDOW_DAYS = 14;
    private static final double TAKEN_UP = 1 - 1 / Math.E;

    private Adoption() {}

    /** End of the first fortnight whose use of added places and supports is 63 % of that of the last quarter [d]. */
    static Measurement days(Run run) {
        return lives -> {
            Outcome outcome = lives.outcome(run);
            List<Double> found = new ArrayList<>();
            for (Journal journal : outcome.journals()) {
                double[] use = daily(outcome, journal);
                double late = mean(use, use.length * 3 / 4, use.length);
                int end = WINDOW_DAYS;
                while (end < use.length && mean(use, end - WINDOW_DAYS, end) < TAKEN_UP * late) {
                    end++;
                }
                if (late > 0) {
                    found.add((double) end);
                }
            }
            return found;
        };
    }

    /** Seconds spent each day on what is new. */
    private static double[] daily(Outcome outcome, Journal journal) {
        Set<String> added = outcome.habitat().layout().added();
        double[] seconds = new double[outcome.settings().days()];
        Piece.visit(outcome.habitat(), journal, piece -> {
            String support = outcome.habitat().graph().support(piece.toHold());
            if (added.contains(support)) {
                seconds[(int) (piece.startMs() / 86_400_000)] += piece.seconds();
            }
        });
        return seconds;
    }

    private static double mean(double[] values, int from, int to) {
        double sum = 0;
        for (int i = from; i < to; i++) {
            sum += values[i];
        }
        return sum / (to - from);
    }
}
