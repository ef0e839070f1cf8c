package limbway.model.heat;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;

import limbway.model.enclosure.Site;
import limbway.model.light.SunPosition;
import limbway.model.weather.Conditions;
import limbway.model.weather.Weather;

/**
 * One hour in the open sun.
 *
 * @param moment middle of the hour
 * @param open weather in the open
 * @param sunAltitudeDeg height of the sun above the level [degrees]
 */
public record HotHour(Instant moment, Conditions open, double sunAltitudeDeg) {

    /** A bar of scaffold tube, by which hours are compared. */
    private static final MemberBalance YARDSTICK = new MemberBalance(0.0483, SurfaceCatalogue.GALVANISED_OXIDISED);

    /**
     * The hour of a year in which a bare scaffold tube, square to the sun, gets hottest.
     *
     * @param site where
     * @param weather weather of the site
     * @param settings ground
     * @param year calendar year
     * @return the earliest of the hottest hours
     */
    public static HotHour hottest(Site site, Weather weather, HeatSettings settings, int year) {
        Instant end = LocalDate.of(year + 1, 1, 1).atStartOfDay(site.zone()).toInstant();
        Instant moment =
                LocalDate.of(year, 1, 1).atTime(0, 30).atZone(site.zone()).toInstant();
        HotHour best = null;
        double bestC = Double.NEGATIVE_INFINITY;
        for (; moment.isBefore(end); moment = moment.plus(Duration.ofHours(1))) {
            HotHour hour = new HotHour(
                    moment,
                    weather.at(site, moment),
                    SunPosition.at(site, moment).altitudeDeg());
            double surfaceC =
                    YARDSTICK.surfaceC(hour.squareToTheSun(settings, hour.open().windMPerS()));
            if (surfaceC > bestC) {
                bestC = surfaceC;
                best = hour;
            }
        }
        return best;
    }

    /**
     * What members of several surfaces, thicknesses and winds come to in this hour, square to the sun.
     *
     * @param settings ground
     * @param surfaces surfaces to compare
     * @param diametersM thicknesses [m]
     * @param windsMPerS winds across the member [m/s]
     * @return one row for each surface, thickness and wind, in this order
     */
    public List<Row> compare(
            HeatSettings settings, List<Surface> surfaces, List<Double> diametersM, List<Double> windsMPerS) {
        List<Row> rows = new ArrayList<>();
        for (Surface surface : surfaces) {
            for (double diameterM : diametersM) {
                MemberBalance balance = new MemberBalance(diameterM, surface);
                for (double windMPerS : windsMPerS) {
                    Exposure exposure = squareToTheSun(settings, windMPerS);
                    rows.add(new Row(
                            surface,
                            diameterM,
                            windMPerS,
                            balance.surfaceC(exposure),
                            balance.sunnySideC(exposure),
                            ResponseTime.isSteady(surface.touch(), diameterM)));
                }
            }
        }
        return rows;
    }

    private Exposure squareToTheSun(HeatSettings settings, double windMPerS) {
        Conditions windy = new Conditions(open.airC(), windMPerS, open.irradiance());
        return Exposure.of(settings, windy, 1, 1, 1, sunAltitudeDeg);
    }

    /**
     * One member in the open sun.
     *
     * @param surface its surface
     * @param diameterM thickness [m]
     * @param windMPerS wind across it [m/s]
     * @param surfaceC temperature round it [°C]
     * @param sunnySideC upper bound of the line that faces the sun [°C], see {@link MemberBalance#sunnySideC}
     * @param isSteady whether it follows the sun within a quarter of an hour
     */
    public record Row(
            Surface surface, double diameterM, double windMPerS, double surfaceC, double sunnySideC, boolean isSteady) {

        /**
         * Whether it burns a hand.
         *
         * @param hold how long it is touched
         * @return true from the threshold of its kind of surface on
         */
        public boolean burns(ContactLimits.Hold hold) {
            return ContactLimits.burns(surface.touch(), hold, surfaceC);
        }
    }
}
