package limbway.model.weather;

import limbway.model.light.SunPosition;

/**
 * The sun's height through one hour, in closed form from its place at one moment of that hour.
 *
 * @param upShare share of the hour in which the sun is up, above 0, at most 1
 * @param sineNow sine of its height now, above 0
 * @param meanSine mean over the whole hour of the sine of its height, 0 while it is down; above 0
 */
record SunHour(double upShare, double sineNow, double meanSine) {

    /**
     * The path of the sun, its declination taken as the same all through the hour and the hour angle as growing by 15
     * degrees.
     *
     * @param sun its place now, above the level
     * @param latitudeDeg degrees north, -90 to 90
     * @param share how much of the hour has passed, 0 to 1
     * @return what is known of the hour
     */
    static SunHour of(SunPosition sun, double latitudeDeg, double share) {
        double latitude = Math.toRadians(latitudeDeg);
        var towards = sun.direction();
        double sinLatitude = StrictMath.sin(latitude);
        double cosLatitude = StrictMath.cos(latitude);
        double sinDeclination = sinLatitude * towards.zM() + cosLatitude * towards.yM();
        // the sun's direction turned into the plane of the equator: to the south (or zenith) and to the west
        double meridian = cosLatitude * towards.zM() - sinLatitude * towards.yM();
        double now = StrictMath.atan2(-towards.xM(), meridian);
        double constant = sinLatitude * sinDeclination;
        double swing = cosLatitude * StrictMath.hypot(meridian, towards.xM());
        double hour = Math.toRadians(15);
        double set = swing <= Math.abs(constant) ? Math.PI : StrictMath.acos(-constant / swing);
        // the sun is up now, so now lies between -set and set
        double from = Math.max(now - share * hour, -set);
        double to = Math.min(now + (1 - share) * hour, set);
        if (swing <= Math.abs(constant)) {
            from = now - share * hour;
            to = from + hour;
        }
        double sum = constant * (to - from) + swing * (StrictMath.sin(to) - StrictMath.sin(from));
        return new SunHour(Math.max(1e-9, (to - from) / hour), towards.zM(), Math.max(1e-9, sum / hour));
    }
}
