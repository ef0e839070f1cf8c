package limbway.model.explain.flip;

import limbway.model.parameter.Parameter;

/**
 * The value of an assumed cost from which on the answer is another.
 *
 * @param parameter the number, with the value in use
 * @param turnsAt the nearest value found at which the other way is the cheapest
 * @param toOffGround whether the way off the ground is then the cheapest; else it no longer is
 */
public record PriceTurn(Parameter parameter, double turnsAt, boolean toOffGround) {

    /**
     * Whether the value lies within the range worth trying.
     *
     * @return true if the answer hangs on a number that may well be so
     */
    public boolean isPlausible() {
        return turnsAt >= parameter.low() && turnsAt <= parameter.high();
    }

    /**
     * The value over the one in use.
     *
     * @return a factor
     */
    public double factor() {
        return turnsAt / parameter.value();
    }
}
