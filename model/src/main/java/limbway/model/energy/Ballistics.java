package limbway.model.energy;

/**
 * How far and how high a body flies that leaves with a given speed.
 *
 * @source flight of a point without air, textbook; parabola of safety for the best angle
 * @validity speed of the centre of mass at take-off; arms that reach ahead and land early add to the gap, air takes less than
 *     the doubt about the speed
 */
public final class Ballistics {

    private static final double G = InclineCost.GRAVITY_M_PER_S2;

    private Ballistics() {}

    /**
     * Returns the widest gap between places of equal height, {@code v²/g}.
     *
     * @param speedMPerS take-off speed [m/s], 0 or more
     * @return gap [m]
     */
    public static double levelRangeM(double speedMPerS) {
        return speedMPerS * speedMPerS / G;
    }

    /**
     * Returns the highest rise, straight up, {@code v²/(2 g)}.
     *
     * @param speedMPerS take-off speed [m/s], 0 or more
     * @return rise [m]
     */
    public static double highestRiseM(double speedMPerS) {
        return speedMPerS * speedMPerS / (2 * G);
    }

    /**
     * Returns the widest gap at the best angle, {@code (v/g) sqrt(v² - 2 g h)}.
     *
     * @param speedMPerS take-off speed [m/s], 0 or more
     * @param riseM height of landing above take-off [m], negative for a drop
     * @return gap [m], 0 where the landing is too high
     */
    public static double widestGapM(double speedMPerS, double riseM) {
        double left = speedMPerS * speedMPerS - 2 * G * riseM;
        return left <= 0 ? 0 : speedMPerS / G * Math.sqrt(left);
    }

    /**
     * Returns how much lower the landing must lie for a gap to be flown over at the best angle.
     *
     * @param speedMPerS take-off speed [m/s], above 0
     * @param gapM gap [m], 0 or more
     * @return drop [m], negative where the landing may lie higher
     * @throws IllegalArgumentException if the speed is not above 0
     */
    public static double dropForGapM(double speedMPerS, double gapM) {
        Allowed.aboveZero("ballistics", "speedMPerS", speedMPerS);
        double square = speedMPerS * speedMPerS;
        return (G * G * gapM * gapM / square - square) / (2 * G);
    }

    /**
     * Returns the least speed that flies over a gap, {@code sqrt(g (h + sqrt(d² + h²)))}.
     *
     * @param gapM gap [m], 0 or more
     * @param riseM height of landing above take-off [m], negative for a drop
     * @return speed [m/s]
     */
    public static double leastSpeedMPerS(double gapM, double riseM) {
        return Math.sqrt(Math.max(0, G * (riseM + Math.hypot(gapM, riseM))));
    }

    /**
     * Returns the speed that flies over a gap at a given angle, {@code v² = g d² / [2 cos²a (d tan a - h)]}.
     *
     * @param gapM gap [m], above 0
     * @param riseM height of landing above take-off [m], negative for a drop
     * @param angleDeg angle of take-off above the level [°], -90 to 90, both excluded
     * @return speed [m/s], infinite where no speed reaches that high at that angle
     */
    public static double speedAtAngleMPerS(double gapM, double riseM, double angleDeg) {
        double angle = StrictMath.toRadians(angleDeg);
        double spareM = gapM * StrictMath.tan(angle) - riseM;
        double cosine = StrictMath.cos(angle);
        return spareM <= 0 ? Double.POSITIVE_INFINITY : gapM / cosine * Math.sqrt(G / (2 * spareM));
    }
}
