package limbway.model.energy;

import limbway.model.body.Body;
import limbway.model.body.LocomotorMode;

/**
 * Net cost of a metre of path in one locomotor mode, for one body.
 *
 * <p>{@code M [C(M, slope) + (multiplier - 1) C(M, 0) cos slope]}: the incline cost, and for modes dearer than walking a
 * surcharge on the level part only, because vertical climbing costs the same whatever the hold.
 *
 * @source {@link InclineCost}; multipliers in {@link EnergySettings}
 */
public final class ModeCost {

    private final EnergySettings settings;

    /**
     * Costs under given settings.
     *
     * @param settings multipliers
     */
    public ModeCost(EnergySettings settings) {
        this.settings = settings;
    }

    /**
     * Returns the cost per metre of path.
     *
     * @param body who moves
     * @param mode how
     * @param slopeDeg slope of the path, positive upwards [°], -90 to 90
     * @return cost [J/m], above 0
     */
    public double jPerM(Body body, LocomotorMode mode, double slopeDeg) {
        double multiplier =
                switch (mode) {
                    case QUADRUPEDAL_WALK -> 1;
                    case VERTICAL_CLIMB, VERTICAL_DESCENT, CLAMBER -> settings.clamberMultiplier();
                    case BRIDGE -> settings.bridgeMultiplier();
                };
        double surcharge = (multiplier - 1)
                * InclineCost.jPerKgM(body.massKg(), 0)
                * StrictMath.cos(StrictMath.toRadians(slopeDeg));
        return body.massKg() * (InclineCost.jPerKgM(body.massKg(), slopeDeg) + surcharge);
    }
}
