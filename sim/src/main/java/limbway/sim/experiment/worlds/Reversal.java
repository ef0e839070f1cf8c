package limbway.sim.experiment.worlds;

import java.util.Optional;

import limbway.sim.experiment.screening.Factor;

/**
 * Where a difference changes its sign as one input moves over its range and everything else stays as assumed.
 *
 * @param input what moves
 * @param asAssumed the difference as assumed, by the chance of the search
 * @param least least difference met on the range
 * @param greatest greatest difference met on the range
 * @param turn where the sign changes, nearest to what is assumed; empty if it does not on the range
 */
public record Reversal(Factor input, double asAssumed, double least, double greatest, Optional<Turn> turn) {

    /**
     * A change of sign.
     *
     * @param value value of the input, in its unit, at which it happens
     * @param above true if the answer is reversed above that value, false if below
     * @param confirmed the narrowest surroundings in which other chance finds the same two signs, each with a
     *     paired p value below 0.05 divided by the number of surroundings tried; empty if none does
     */
    public record Turn(double value, boolean above, Optional<Surroundings> confirmed) {}

    /**
     * Two values of an input, one to either side of a change of sign.
     *
     * @param low lower value, in the unit of the input
     * @param high upper value
     * @param atLow difference at the lower value by other chance
     * @param atHigh difference at the upper value by other chance
     */
    public record Surroundings(double low, double high, double atLow, double atHigh) {}
}
