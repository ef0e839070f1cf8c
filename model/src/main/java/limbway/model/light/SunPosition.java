package limbway.model.light;

import java.time.Instant;
import java.time.ZoneOffset;
import java.time.ZonedDateTime;

import net.e175.klaus.solarpositioning.DeltaT;
import net.e175.klaus.solarpositioning.SPA;

import limbway.model.enclosure.Site;
import limbway.model.geometry.Point;

/**
 * Where the middle of the sun stands in the sky, without refraction: shade is cast by straight rays, and near the horizon,
 * where refraction reaches half a degree, shade is not judged.
 *
 * @param azimuthDeg degrees clockwise from north, 0 to 360
 * @param altitudeDeg degrees above the level, -90 to 90
 */
public record SunPosition(double azimuthDeg, double altitudeDeg) {

    /**
     * The sun over a site.
     *
     * @param site where
     * @param moment when
     * @return its position
     * @source Reda and Andreas, Solar Position Algorithm, NREL/TP-560-34302 (rev. 2008), by the library solarpositioning
     */
    public static SunPosition at(Site site, Instant moment) {
        ZonedDateTime time = moment.atZone(ZoneOffset.UTC);
        var found = SPA.calculateSolarPosition(
                time, site.latitudeDeg(), site.longitudeDeg(), site.elevationM(), DeltaT.estimate(time.toLocalDate()));
        return new SunPosition(found.azimuth(), 90 - found.zenithAngle());
    }

    /**
     * The direction towards the sun: x east, y north, z up.
     *
     * @return a vector of length 1
     */
    public Point direction() {
        double azimuth = Math.toRadians(azimuthDeg);
        double altitude = Math.toRadians(altitudeDeg);
        double level = StrictMath.cos(altitude);
        return new Point(level * StrictMath.sin(azimuth), level * StrictMath.cos(azimuth), StrictMath.sin(altitude));
    }
}
