package limbway.reports.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import limbway.sim.experiment.Outcome;
import limbway.sim.experiment.statistics.Interval;
import limbway.sim.journal.Journal;

/** What assumptions are screened for: a share of one layout, or the difference of that share between two. */
public enum ScreenedAnswer {
    /** Share of the distance travelled that is off the ground. */
    OFF_GROUND("share of travel off the ground"),
    /** Share of waking time above a height. */
    ELEVATED("share of waking time spent up high");

    private final String words;

    ScreenedAnswer(String words) {
        this.words = words;
    }

    /**
     * What it is called.
     *
     * @return a noun
     */
    public String words() {
        return words;
    }

    /**
     * All answers of a run.
     *
     * @param outcomes one layout, or two whose difference is asked for: the first less the second
     * @param thresholdM height that counts as up high [m]
     * @return means over the replications in the order of the constants, 0 to 1 or, for a difference, -1 to 1; not a number
     *     where nobody travelled
     */
    public static double[] all(List<Outcome> outcomes, double thresholdM) {
        double[] means = new double[values().length];
        for (ScreenedAnswer answer : values()) {
            means[answer.ordinal()] = Interval.of(answer.byReplication(outcomes, thresholdM))
                    .map(Interval::mean)
                    .orElse(Double.NaN);
        }
        return means;
    }

    /**
     * The answer in each replication.
     *
     * @param outcomes one layout, or two whose difference is asked for, complete and under the same settings
     * @param thresholdM height that counts as up high [m]
     * @return one value for each replication that gives one
     */
    public List<Double> byReplication(List<Outcome> outcomes, double thresholdM) {
        List<Double> values = new ArrayList<>();
        for (int i = 0; i < outcomes.get(0).journals().size(); i++) {
            OptionalDouble first = of(outcomes.get(0), i, thresholdM);
            OptionalDouble second = outcomes.size() > 1 ? of(outcomes.get(1), i, thresholdM) : OptionalDouble.of(0);
            if (first.isPresent() && second.isPresent()) {
                values.add(first.getAsDouble() - second.getAsDouble());
            }
        }
        return values;
    }

    private OptionalDouble of(Outcome outcome, int replication, double thresholdM) {
        Journal journal = outcome.journals().get(replication);
        return switch (this) {
            case OFF_GROUND -> OffGroundShare.of(journal, trip -> true, Aspect.DISTANCE);
            case ELEVATED -> {
                Outcome alone = new Outcome(outcome.habitat(), outcome.settings(), List.of(journal), true);
                yield ElevatedTime.of(alone, thresholdM)
                        .share()
                        .map(share -> OptionalDouble.of(share.mean()))
                        .orElse(OptionalDouble.empty());
            }
        };
    }
}
