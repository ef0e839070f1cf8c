package limbway.model.strength;

/** The heaviest body that a support bears, and why no heavier. A warning, never a structural calculation. */
public sealed interface BearingLimit {

    /**
     * The heaviest body.
     *
     * @return mass [kg], above 0; infinite where nothing is known to limit it
     */
    double heaviestKg();

    /**
     * Whether a body is not too heavy.
     *
     * @param massKg mass of the body [kg]
     * @return true up to the limit
     */
    default boolean bears(double massKg) {
        return massKg <= heaviestKg();
    }

    /**
     * The scenario states the load.
     *
     * @param heaviestKg mass [kg], above 0
     */
    record Stated(double heaviestKg) implements BearingLimit {}

    /**
     * A heavier body may break it by bending.
     *
     * @param heaviestKg mass [kg], above 0
     * @param loadAtM where the body is, along the support from its first end [m]
     * @param breaksAtM where the stress is greatest, along the support from its first end [m]
     */
    record Bending(double heaviestKg, double loadAtM, double breaksAtM) implements BearingLimit {}

    /**
     * A heavier body in the middle of a rope may pull it apart.
     *
     * @param heaviestKg mass [kg], above 0
     * @param tensionPerLoad greatest tension in the rope over the weight in its middle, above 0
     */
    record Tension(double heaviestKg, double tensionPerLoad) implements BearingLimit {}

    /**
     * Nothing is known that limits the load.
     *
     * @param why a clause
     */
    record Unlimited(String why) implements BearingLimit {
        @Override
        public double heaviestKg() {
            return Double.POSITIVE_INFINITY;
        }
    }
}
