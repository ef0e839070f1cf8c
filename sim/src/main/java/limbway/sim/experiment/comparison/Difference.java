package limbway.sim.experiment.comparison;

import java.util.Optional;

import limbway.sim.experiment.statistics.Bootstrap;
import limbway.sim.experiment.statistics.PairedDifference;
import limbway.sim.experiment.statistics.StoppingRule;

/**
 * How two layouts differ in one criterion.
 *
 * @param a number of the first layout, from 0
 * @param b number of the second layout, from 0
 * @param criterion number of the criterion, from 0
 * @param paired the first less the second, replication by replication
 * @param pHolm its p value corrected for all pairs of layouts that are compared in this criterion, 0 to 1
 * @param targetHalfWidth half-width that is good enough, 0 or more; 0 where both layouts are 0 throughout
 * @param median median of the differences by replication with its bootstrap interval
 * @param ratio mean of the first over the mean of the second with its bootstrap interval; only for amounts that are above 0
 *     throughout
 */
public record Difference(
        int a,
        int b,
        int criterion,
        PairedDifference paired,
        double pHolm,
        double targetHalfWidth,
        Optional<Bootstrap.Range> median,
        Optional<Bootstrap.Range> ratio) {

    /** Below this a difference is declared. The usual level, a convention. */
    public static final double LEVEL = 0.05;

    /**
     * Whether chance alone is an unlikely reason for it.
     *
     * @return true if the corrected p value is below 0.05
     */
    public boolean isDeclared() {
        return pHolm < LEVEL;
    }

    /**
     * Whether it is known well enough.
     *
     * @return true if half the interval is no wider than the target
     */
    public boolean isPrecise() {
        return paired.halfWidth() <= targetHalfWidth;
    }

    /**
     * How far it is from known well enough.
     *
     * @return half the width of the interval over the target; 0 if there is no width
     */
    public double widthOverTarget() {
        return paired.halfWidth() == 0 ? 0 : paired.halfWidth() / targetHalfWidth;
    }

    /**
     * How many replications it would take to know it well enough.
     *
     * @return an estimate from how much the replications differ so far
     */
    public long replicationsNeeded() {
        return paired.halfWidth() == 0
                ? paired.n()
                : StoppingRule.repetitionsNeeded(paired.n(), paired.halfWidth(), targetHalfWidth);
    }
}
