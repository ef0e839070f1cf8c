package limbway.sim.experiment.screening;

import java.util.List;

import limbway.model.parameter.Parameter;
import limbway.model.parameter.Standing;
import limbway.sim.experiment.Assumptions;

/**
 * A number that is varied over the range worth trying.
 *
 * <p>A place in the range is a share from 0, its low end, to 1, its high end. Where the range spans more than a factor of
 * {@value #LOGARITHMIC_ABOVE}, equal shares are equal factors, else equal amounts.
 *
 * @param parameter the number with its range
 */
public record Factor(Parameter parameter) {

    /** High end over low end of a range above which shares are taken of its logarithm. Assumption. */
    public static final double LOGARITHMIC_ABOVE = 20;

    /**
     * Checks that there is something to vary.
     *
     * @throws IllegalArgumentException naming the parameter if its range is a point
     */
    public Factor {
        if (!(parameter.low() < parameter.high())) {
            throw new IllegalArgumentException("factor \"" + parameter.name() + "\": low = " + parameter.low()
                    + ", high = " + parameter.high() + ", allowed a range");
        }
    }

    /**
     * What nobody has measured: every number of a run that is not published and has a range.
     *
     * @param assumptions the numbers of a run
     * @return factors in the order of the parameters
     */
    public static List<Factor> doubtful(Assumptions assumptions) {
        return assumptions.parameters().stream()
                .filter(p -> p.standing() != Standing.PUBLISHED && p.low() < p.high())
                .map(Factor::new)
                .toList();
    }

    /**
     * How shares are spread over the range.
     *
     * @return true if equal shares are equal factors
     */
    public boolean isLogarithmic() {
        return parameter.low() > 0 && parameter.high() / parameter.low() > LOGARITHMIC_ABOVE;
    }

    /**
     * The value at a place in the range.
     *
     * @param share place in the range, 0 to 1
     * @return the value, in the unit of the parameter
     */
    public double at(double share) {
        double low = parameter.low();
        double high = parameter.high();
        return isLogarithmic() ? low * StrictMath.exp(share * StrictMath.log(high / low)) : low + share * (high - low);
    }

    /**
     * The place of a value in the range.
     *
     * @param value a value, in the unit of the parameter
     * @return 0 to 1 within the range
     */
    public double shareOf(double value) {
        double low = parameter.low();
        double high = parameter.high();
        return isLogarithmic()
                ? StrictMath.log(value / low) / StrictMath.log(high / low)
                : (value - low) / (high - low);
    }
}
