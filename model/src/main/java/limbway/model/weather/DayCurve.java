package limbway.model.weather;

/**
 * How warm the air is through one day of sun and the night after it: a sine by day, highest some time after noon, and a
 * decay by night.
 *
 * @param minC least temperature of the day [°C]
 * @param maxC greatest temperature of the day [°C]
 * @param nextMinC least temperature of the next day [°C]
 * @param dayH hours from sunrise to sunset, above 0 and below 24
 * @param nightH hours from sunset to the next sunrise, above 0 and below 24
 * @source Parton and Logan 1981, Agricultural Meteorology 23:205-216; coefficients for air at 150 cm, Denver, as the
 *     documentation of a public library for thermal ecology lists them; the form is from memory
 */
record DayCurve(double minC, double maxC, double nextMinC, double dayH, double nightH) {

    /** Delay of the greatest temperature after noon [h]. */
    private static final double LAG_H = 1.86;

    /** How fast the air cools by night. */
    private static final double COOLING = 2.20;

    /** When the least temperature comes after sunrise [h]. */
    static final double LEAST_AFTER_SUNRISE_H = -0.17;

    /**
     * Temperature of the air.
     *
     * @param afterSunriseH hours since sunrise, {@link #LEAST_AFTER_SUNRISE_H} to that of the next day
     * @return degrees Celsius
     */
    double airC(double afterSunriseH) {
        if (afterSunriseH <= dayH) {
            return byDayC(afterSunriseH);
        }
        // The published decay has not come down to the least temperature when the day begins (a step of 0.6 K in the
        // humid tropics): it is stretched so that it ends there.
        double endsAt = decay(nightH + LEAST_AFTER_SUNRISE_H);
        double left = (decay(afterSunriseH - dayH) - endsAt) / (1 - endsAt);
        return nextMinC + (byDayC(dayH) - nextMinC) * left;
    }

    /**
     * The published decay.
     *
     * @param afterSunsetH hours since sunset
     * @return what is left of the warmth at sunset, 0 to 1
     */
    double decay(double afterSunsetH) {
        return StrictMath.exp(-COOLING * afterSunsetH / nightH);
    }

    private double byDayC(double afterSunriseH) {
        double sinceLeastH = afterSunriseH - LEAST_AFTER_SUNRISE_H;
        return minC + (maxC - minC) * StrictMath.sin(Math.PI * sinceLeastH / (dayH + 2 * LAG_H));
    }
}
