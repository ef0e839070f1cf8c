package limbway.model.weather;

import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;

import limbway.model.enclosure.Site;
import limbway.model.light.Irradiance;
import limbway.model.light.SunPosition;

/**
 * Weather from a year of 8,760 hourly values, used for every year; 29 February repeats the 28th.
 *
 * <p>Value h, counted from 0, covers the time from h to h + 1 hours after the year begins in the file's own standard time.
 * Air and wind run straight between the middles of the hours. Light is not drawn straight: it would shine before sunrise.
 * Instead the light of an hour is spread over that part of it in which the sun is up, the beam evenly, diffuse and global
 * light as the sine of the sun's height, so that the sum of the hour is kept. No hour is thickened more than fourfold:
 * where the sun is up for less than a quarter of an hour, or clocks of file and site disagree, light is lost rather than
 * heaped up. Twilight before sunrise is left out.
 */
public final class HourlyWeather implements Weather {

    /** Hours of a year without 29 February. */
    public static final int HOURS = 8760;

    private static final double GREATEST_THICKENING = 4;

    private final String origin;
    private final ZoneOffset standardTime;
    private final double[] airC;
    private final double[] beamWPerM2;
    private final double[] diffuseWPerM2;
    private final double[] globalWPerM2;
    private final double[] windMPerS;

    /**
     * A year of weather.
     *
     * @param origin where the values come from, a phrase for reports
     * @param standardTime standard time in which the hours are counted, without summer time
     * @param airC dry-bulb temperature, 8,760 values [°C], -70 to 60
     * @param beamWPerM2 direct light on a surface that faces the sun, mean of the hour, 8,760 values [W/m2], 0 to 1500
     * @param diffuseWPerM2 light of the sky on a level surface, mean of the hour, 8,760 values [W/m2], 0 to 1500
     * @param globalWPerM2 all light on a level surface, mean of the hour, 8,760 values [W/m2], 0 to 1500
     * @param windMPerS wind, 8,760 values [m/s], 0 to 60
     * @throws IllegalArgumentException naming series, hour and value that is missing or outside its range
     */
    public HourlyWeather(
            String origin,
            ZoneOffset standardTime,
            double[] airC,
            double[] beamWPerM2,
            double[] diffuseWPerM2,
            double[] globalWPerM2,
            double[] windMPerS) {
        if (origin.isBlank()) {
            throw new IllegalArgumentException("hourly weather: origin is empty, allowed a phrase");
        }
        this.origin = origin;
        this.standardTime = standardTime;
        this.airC = checked("airC", airC, -70, 60);
        this.beamWPerM2 = checked("beamWPerM2", beamWPerM2, 0, 1500);
        this.diffuseWPerM2 = checked("diffuseWPerM2", diffuseWPerM2, 0, 1500);
        this.globalWPerM2 = checked("globalWPerM2", globalWPerM2, 0, 1500);
        this.windMPerS = checked("windMPerS", windMPerS, 0, 60);
    }

    private static double[] checked(String name, double[] values, double low, double high) {
        if (values.length != HOURS) {
            throw new IllegalArgumentException(
                    "hourly weather: " + name + " has " + values.length + " values, allowed " + HOURS);
        }
        for (int h = 0; h < HOURS; h++) {
            if (!(values[h] >= low && values[h] <= high)) {
                throw new IllegalArgumentException(
                        "hourly weather: " + name + "[" + h + "] = " + values[h] + ", allowed " + low + " to " + high);
            }
        }
        return values.clone();
    }

    @Override
    public Conditions at(Site site, Instant moment) {
        double hours = hoursOfYear(moment);
        int hour = (int) hours;
        Irradiance light = light(site, moment, hour, hours - hour);
        return new Conditions(between(airC, hours), between(windMPerS, hours), light);
    }

    @Override
    public String origin() {
        return origin;
    }

    /** Hours since the beginning of a year without 29 February, 0 to below 8,760. */
    private double hoursOfYear(Instant moment) {
        OffsetDateTime time = moment.atOffset(standardTime);
        int day = time.getDayOfYear();
        if (time.toLocalDate().isLeapYear() && day >= 60) {
            day--;
        }
        return (day - 1) * 24 + time.toLocalTime().toNanoOfDay() / 3.6e12;
    }

    private static double between(double[] values, double hours) {
        double sinceMiddle = hours - 0.5;
        int before = (int) Math.floor(sinceMiddle);
        double share = sinceMiddle - before;
        double first = values[(before + HOURS) % HOURS];
        return first + share * (values[(before + 1) % HOURS] - first);
    }

    private Irradiance light(Site site, Instant moment, int hour, double share) {
        SunPosition sun = SunPosition.at(site, moment);
        if (!(sun.altitudeDeg() > 0)) {
            return Irradiance.NIGHT;
        }
        SunHour path = SunHour.of(sun, site.latitudeDeg(), share);
        double even = Math.min(GREATEST_THICKENING, 1 / path.upShare());
        double bySine = Math.min(GREATEST_THICKENING, path.sineNow() / path.meanSine());
        return new Irradiance(beamWPerM2[hour] * even, diffuseWPerM2[hour] * bySine, globalWPerM2[hour] * bySine);
    }
}
