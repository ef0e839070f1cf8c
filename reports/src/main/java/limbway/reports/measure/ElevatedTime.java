package limbway.reports.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.model.parameter.Parameter;
import limbway.model.parameter.Standing;
import limbway.sim.experiment.Outcome;
import limbway.sim.experiment.statistics.Interval;
import limbway.sim.journal.Journal;

/**
 * Share of waking time spent above a height: the number that zoo studies report, and another one than the share of
 * travel off the ground.
 *
 * @param thresholdM the height [m]
 * @param share time above it divided by all time not asleep at night, 0 to 1; empty if nobody was awake
 */
public record ElevatedTime(double thresholdM, Optional<Interval> share) {

    /** Default height [m]; studies differ in what they call elevated, so it is always stated. Assumption. */
    public static final double STANDARD_THRESHOLD_M = 1.0;

    /**
     * Computes the share.
     *
     * @param outcome a run
     * @param thresholdM height [m], 0 or more
     * @return the share with its threshold
     */
    public static ElevatedTime of(Outcome outcome, double thresholdM) {
        List<Double> shares = new ArrayList<>();
        for (Journal journal : outcome.journals()) {
            double[] seconds = new double[2];
            Whereabouts.visit(outcome.habitat(), journal, (time, fromZM, toZM) -> {
                seconds[0] += time;
                seconds[1] += time * Whereabouts.shareAbove(thresholdM, fromZM, toZM);
            });
            if (seconds[0] > 0) {
                shares.add(seconds[1] / seconds[0]);
            }
        }
        return new ElevatedTime(thresholdM, Interval.of(shares));
    }

    /**
     * The threshold as a parameter.
     *
     * @param thresholdM height in use [m]
     * @return one parameter
     */
    public static Parameter parameter(double thresholdM) {
        return new Parameter(
                "report.elevated-threshold",
                "height above which waking time counts as spent up high",
                "m",
                thresholdM,
                0.5,
                5,
                Standing.ASSUMPTION,
                "studies differ: any raised place, 5 m and more, or a level of the cage; default "
                        + STANDARD_THRESHOLD_M + " m");
    }
}
