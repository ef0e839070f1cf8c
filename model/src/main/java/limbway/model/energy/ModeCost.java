package limbway.model.energy;

import limbway.model.body.Body;
import limbway.model.body.LocomotorMode;

/**
 * Net cost of a metre of path in one locomotor mode, for one body.
 *
 * <p>Along a support: {@code M [C(M, slope) + (multiplier - 1) C(M, 0) cos slope]}, the incline cost, and for clambering a
 * surcharge on the level part only, because vertical climbing costs the same whatever the hold.
 *
 * <p>Over a gap and from branch to branch within a crown, the level part is paid as clambering and the height as vertical
 * climb or descent: {@code M [multiplier C(M, 0) cos slope + C(M, +/-90) |sin slope|]}. Nobody has measured reaching
 * over; this choice makes it no cheaper to gain height by reaching than by climbing.
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
        double massKg = body.massKg();
        return switch (mode) {
            case QUADRUPEDAL_WALK -> massKg * InclineCost.jPerKgM(massKg, slopeDeg);
            case VERTICAL_CLIMB, VERTICAL_DESCENT, CLAMBER ->
                alongJPerM(massKg, settings.clamberMultiplier(), slopeDeg);
            case BRIDGE -> reachingJPerM(massKg, settings.bridgeMultiplier(), slopeDeg);
            case BIPEDAL_WALK -> massKg * InclineCost.jPerKgM(massKg, slopeDeg);
            case BRACHIATE -> SwingCost.jPerM(massKg, settings.swingMultiplier(), slopeDeg);
            case SWAY, LEAP, DROP ->
                throw new IllegalArgumentException(
                        "mode cost: mode = " + mode.word() + ", allowed modes paid by the metre");
        };
    }

    /**
     * Returns the cost per metre along a support for any multiplier; {@link SwingCost} has one of its own.
     *
     * @param massKg mass that moves [kg], above 0
     * @param multiplier cost over walking the same level distance, above 0
     * @param slopeDeg slope of the path, positive upwards [°], -90 to 90
     * @return cost [J/m]
     */
    static double alongJPerM(double massKg, double multiplier, double slopeDeg) {
        double level = InclineCost.jPerKgM(massKg, 0) * StrictMath.cos(StrictMath.toRadians(slopeDeg));
        return massKg * (InclineCost.jPerKgM(massKg, slopeDeg) + (multiplier - 1) * level);
    }

    /**
     * Returns the cost per metre of clambering from branch to branch within a crown.
     *
     * @param body who moves
     * @param slopeDeg slope of the path, positive upwards [°], -90 to 90
     * @return cost [J/m], above 0
     */
    public double throughBranchesJPerM(Body body, double slopeDeg) {
        return reachingJPerM(body.massKg(), settings.clamberMultiplier(), slopeDeg);
    }

    private static double reachingJPerM(double massKg, double multiplier, double slopeDeg) {
        double slope = StrictMath.toRadians(slopeDeg);
        double level = multiplier * InclineCost.jPerKgM(massKg, 0) * StrictMath.cos(slope);
        double height = InclineCost.jPerKgM(massKg, slopeDeg < 0 ? -90 : 90) * Math.abs(StrictMath.sin(slope));
        return massKg * (level + height);
    }
}
