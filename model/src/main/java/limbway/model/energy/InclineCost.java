package limbway.model.energy;

/**
 * Net cost of moving along a path at a slope, per kilogram and metre of path, for animals from insects to ungulates.
 *
 * <p>The published curve is symmetric about -8 degrees, so that going straight down would cost as much as straight up.
 * Below -8 degrees it is therefore replaced by the work that muscle does to brake, at efficiency 1.20; both branches
 * meet at -8 degrees. The level coefficient is raised from 8 to 9.6 so that a chimpanzee of 17.5 kg spends the measured
 * 5.0 J/(kg m).
 *
 * @source Pontzer 2016, Biol. Lett. 12:20150935, with the correction of 2023, doi 10.1098/rsbl.2023.0492 (the equation
 *     read in a public note on the correction); braking efficiency from Margaria 1968, doi 10.1007/BF00699624, as
 *     reported second-hand; the joining of the two is this project's
 * @validity no orangutan was measured; misses the chimpanzee on 15 degrees by +64 %; the true cost of walking may lie 30 %
 *     to either side, that of climbing 40 % below to 15 % above
 */
public final class InclineCost {

    /** Standard gravity [m/s²], by definition. */
    public static final double GRAVITY_M_PER_S2 = 9.80665;

    private static final double LEVEL_COEFFICIENT = 9.6;
    private static final double LEVEL_EXPONENT = -0.34;
    private static final double LIFT_COEFFICIENT = 50;
    private static final double LIFT_EXPONENT = -0.12;
    private static final double TURN_DEG = 74;
    private static final double STEEPEST_CURVE_DESCENT_DEG = -8;
    /** Work of braking over the energy that muscle spends on it; package-wide because a landing is braked too. */
    static final double BRAKING_EFFICIENCY = 1.20;

    private InclineCost() {}

    /**
     * Returns the cost at one slope.
     *
     * @param massKg mass that moves [kg], above 0
     * @param slopeDeg slope of the path, positive upwards [°], -90 to 90
     * @return cost [J/(kg m)], above 0
     * @throws IllegalArgumentException naming the value outside its range
     */
    public static double jPerKgM(double massKg, double slopeDeg) {
        if (!(massKg > 0)) {
            throw new IllegalArgumentException("incline cost: massKg = " + massKg + ", allowed above 0");
        }
        if (!(Math.abs(slopeDeg) <= 90)) {
            throw new IllegalArgumentException("incline cost: slopeDeg = " + slopeDeg + ", allowed -90 to 90");
        }
        double level = LEVEL_COEFFICIENT * StrictMath.pow(massKg, LEVEL_EXPONENT);
        if (slopeDeg < STEEPEST_CURVE_DESCENT_DEG) {
            return level + GRAVITY_M_PER_S2 / BRAKING_EFFICIENCY * (sineDeg(-slopeDeg) - sineDeg(8));
        }
        double lift = LIFT_COEFFICIENT * (1 + sineDeg(2 * slopeDeg - TURN_DEG));
        return level + lift * StrictMath.pow(massKg, LIFT_EXPONENT);
    }

    private static double sineDeg(double deg) {
        return StrictMath.sin(StrictMath.toRadians(deg));
    }
}
