package limbway.model.energy;

/**
 * Net cost of getting straight ahead over open ground that an animal may also climb in zigzags.
 *
 * <p>The cost of a metre of height, {@code C(M, slope) / sin slope}, is least at one slope, between 14 and 18 degrees.
 * On ground that rises more steeply it is cheaper to turn aside, left and right by turns, to just that slope; the cost
 * is then that of the height gained, whatever the slope of the ground. Below that slope, and downhill, the straight way
 * is the cheapest. The result is the lower convex hull of the incline cost over all directions of a plane, so on plane
 * ground no path costs less than the straight one at this price.
 *
 * @source derived from {@link InclineCost}: the hull over directions of a plane is symmetric about the uphill direction,
 *     so it is tangent where progress uphill per joule is greatest
 * @validity turning costs nothing; nobody has measured apes on zigzags
 */
public final class ZigzagCost {

    private static final double STEEPEST_DEG = 90;
    private static final double PRECISION_DEG = 1e-6;

    private final double massKg;
    private final double cheapestSlopeDeg;
    private final double jPerKgOfRiseM;

    /**
     * The cost for one body mass.
     *
     * @param massKg mass that moves [kg], above 0
     */
    public ZigzagCost(double massKg) {
        this.massKg = massKg;
        double low = 1;
        double high = STEEPEST_DEG;
        while (high - low > PRECISION_DEG) {
            double third = (high - low) / 3;
            if (jPerKgOfRiseM(low + third) <= jPerKgOfRiseM(high - third)) {
                high -= third;
            } else {
                low += third;
            }
        }
        this.cheapestSlopeDeg = (low + high) / 2;
        this.jPerKgOfRiseM = jPerKgOfRiseM(cheapestSlopeDeg);
    }

    /**
     * The slope at which height is gained most cheaply.
     *
     * @return slope [°], above 0
     */
    public double cheapestSlopeDeg() {
        return cheapestSlopeDeg;
    }

    /**
     * Returns the cost per metre made good, straight or in zigzags, whichever is less.
     *
     * @param slopeDeg slope of the straight way, positive upwards [°], -90 to 90
     * @return cost [J/(kg m)], above 0
     */
    public double jPerKgM(double slopeDeg) {
        return slopeDeg <= cheapestSlopeDeg
                ? InclineCost.jPerKgM(massKg, slopeDeg)
                : jPerKgOfRiseM * StrictMath.sin(StrictMath.toRadians(slopeDeg));
    }

    private double jPerKgOfRiseM(double slopeDeg) {
        return InclineCost.jPerKgM(massKg, slopeDeg) / StrictMath.sin(StrictMath.toRadians(slopeDeg));
    }
}
