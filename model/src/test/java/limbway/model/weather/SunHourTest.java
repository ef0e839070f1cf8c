package limbway.model.weather;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.light.SunPosition;

import static org.junit.jupiter.api.Assertions.assertEquals;

class SunHourTest {

    /**
     * Duffie and Beckman, Solar Engineering of Thermal Processes, examples 1.10.1 and 1.10.2, from memory: 43 N, 15 April
     * (day 105, declination 9.41): light above the air 33.8 MJ/m2 in the day and 3.79 MJ/m2 from 10 to 11 h.
     */
    @Test
    @Tag("published")
    void givesTheTextbookLightOfAnHourAndADay() {
        double declination = 23.45 * Math.sin(2 * Math.PI * (284 + 105) / 365.0);
        double aboveAir = 1367 * (1 + 0.033 * Math.cos(2 * Math.PI * 105 / 365.0));
        double joules = 3600 * aboveAir;
        SunHour hour = SunHour.of(sun(43, declination, -22.5), 43, 0.5);
        // three printed digits
        assertEquals(3.79e6, hour.meanSine() * joules, 0.005e6);
        double day = 0;
        for (int h = 0; h < 24; h++) {
            double middleDeg = 15 * (h + 0.5) - 180;
            double setDeg =
                    Math.toDegrees(Math.acos(-Math.tan(Math.toRadians(43)) * Math.tan(Math.toRadians(declination))));
            // a moment of that hour in which the sun is up, if there is one
            double moment = Math.max(-setDeg + 1e-6, Math.min(setDeg - 1e-6, middleDeg));
            double share = (moment - (middleDeg - 7.5)) / 15;
            if (share >= 0 && share <= 1) {
                day += SunHour.of(sun(43, declination, moment), 43, share).meanSine() * joules;
            }
        }
        // three printed digits
        assertEquals(33.8e6, day, 0.05e6);
    }

    /** FAO Irrigation and Drainage Paper 56, example 8, from memory: 20 S, day 246: 32.2 MJ/m2 and 11.7 h. */
    @Test
    @Tag("published")
    void givesTheDayOfTheHandbookOfIrrigation() {
        double declination = Math.toDegrees(0.409 * Math.sin(2 * Math.PI * 246 / 365 - 1.39));
        double perHour = 0.0820 * 60 * (1 + 0.033 * Math.cos(2 * Math.PI * 246 / 365));
        double sum = 0;
        double lightH = 0;
        double setDeg = Math.toDegrees(Math.acos(Math.tan(Math.toRadians(20)) * Math.tan(Math.toRadians(declination))));
        for (int h = 0; h < 24; h++) {
            double middleDeg = 15 * (h + 0.5) - 180;
            double moment = Math.max(-setDeg + 1e-6, Math.min(setDeg - 1e-6, middleDeg));
            double share = (moment - (middleDeg - 7.5)) / 15;
            if (share >= 0 && share <= 1) {
                SunHour hour = SunHour.of(sun(-20, declination, moment), -20, share);
                sum += hour.meanSine() * perHour;
                lightH += hour.upShare();
            }
        }
        // three printed digits
        assertEquals(32.2, sum, 0.05);
        assertEquals(11.7, lightH, 0.05);
    }

    /** Over the pole the sun neither rises nor sets within a day: its height stays at its declination. */
    @Test
    @Tag("derived")
    void staysUpOverThePole() {
        SunHour hour = SunHour.of(new SunPosition(100, 20), 90, 0.3);
        assertEquals(1, hour.upShare(), 1e-12);
        assertEquals(Math.sin(Math.toRadians(20)), hour.meanSine(), 1e-12);
    }

    private static SunPosition sun(double latitudeDeg, double declinationDeg, double hourAngleDeg) {
        double lat = Math.toRadians(latitudeDeg);
        double dec = Math.toRadians(declinationDeg);
        double hour = Math.toRadians(hourAngleDeg);
        double east = -Math.cos(dec) * Math.sin(hour);
        double north = Math.cos(lat) * Math.sin(dec) - Math.sin(lat) * Math.cos(dec) * Math.cos(hour);
        double up = Math.sin(lat) * Math.sin(dec) + Math.cos(lat) * Math.cos(dec) * Math.cos(hour);
        return new SunPosition((Math.toDegrees(Math.atan2(east, north)) + 360) % 360, Math.toDegrees(Math.asin(up)));
    }
}
