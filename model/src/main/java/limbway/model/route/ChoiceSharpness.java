package limbway.model.route;

import limbway.model.parameter.Parameter;
import limbway.model.parameter.ParameterGroup;
import limbway.model.parameter.Standing;

/**
 * How strictly an animal takes the cheaper of two ways: a logit on the relative cost.
 *
 * @param theta sharpness, 0 for a coin toss, larger for stricter; infinite for always the cheaper
 */
public record ChoiceSharpness(double theta) {

    /** What the number is. */
    public static final ParameterGroup<ChoiceSharpness> GROUP = ParameterGroup.of(
            ChoiceSharpness.class,
            new Parameter(
                    "choice.sharpness",
                    "strictness of the choice between the way off the ground and the way over it",
                    "1",
                    22,
                    5,
                    100,
                    Standing.ASSUMPTION,
                    "a way dearer by a tenth is taken one time in ten: ln 9 / 0.10 = 22"));

    /**
     * Checks the range.
     *
     * @throws IllegalArgumentException if theta is below 0 or not a number
     */
    public ChoiceSharpness {
        if (!(theta >= 0)) {
            throw new IllegalArgumentException("choice sharpness: theta = " + theta + ", allowed 0 or more");
        }
    }

    /**
     * Probability of the first of two ways.
     *
     * @param firstMilliJ cost of the first [mJ], above 0
     * @param secondMilliJ cost of the second [mJ], above 0
     * @return probability, 0 to 1; one half where both cost the same
     */
    public double shareOfFirst(long firstMilliJ, long secondMilliJ) {
        if (firstMilliJ == secondMilliJ) {
            return 0.5;
        }
        double relative = (double) (firstMilliJ - secondMilliJ) / Math.min(firstMilliJ, secondMilliJ);
        return 1 / (1 + StrictMath.exp(theta * relative));
    }
}
