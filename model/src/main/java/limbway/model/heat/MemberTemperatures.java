package limbway.model.heat;

import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Site;
import limbway.model.enclosure.Support;
import limbway.model.geometry.Point;
import limbway.model.light.SunPosition;
import limbway.model.weather.Conditions;
import limbway.model.weather.Weather;

/**
 * How hot the supports of an enclosure get through one day.
 *
 * <p>A ladder is judged by the thickness of its rungs and the direction of its rails.
 *
 * @param date the day by the clocks of the site
 * @param members one entry for each support, in the order of the enclosure
 */
public record MemberTemperatures(LocalDate date, List<MemberDay> members) {

    private static final int HOURS = 24;

    /** Points along a support that stand for it. */
    private static final int POINTS = 5;

    /** Room between a surface and the point that is asked for its light [m]. */
    private static final double CLEAR_OF_SURFACE_M = 0.001;

    /** Keeps a copy of the list. */
    public MemberTemperatures {
        members = List.copyOf(members);
    }

    /**
     * Looks at the middle of every hour of a day.
     *
     * @param enclosure what stands where
     * @param settings ground
     * @param weather weather of the site
     * @param reach how much light reaches a point, with the leaves of that day
     * @param date the day by the clocks of the site
     * @return temperatures of all supports
     */
    public static MemberTemperatures of(
            Enclosure enclosure, HeatSettings settings, Weather weather, LightReach reach, LocalDate date) {
        List<Moment> moments = moments(enclosure.site(), weather, date);
        List<MemberDay> members = new ArrayList<>();
        for (Support support : enclosure.supports()) {
            members.add(day(support, settings, reach, moments));
        }
        return new MemberTemperatures(date, members);
    }

    /**
     * The supports by how hot they get, the hottest first; the order of the enclosure among equals.
     *
     * @return all members
     */
    public List<MemberDay> hottestFirst() {
        return members.stream()
                .sorted(Comparator.comparingDouble(MemberDay::peakC).reversed())
                .toList();
    }

    private static List<Moment> moments(Site site, Weather weather, LocalDate date) {
        List<Moment> moments = new ArrayList<>();
        for (int hour = 0; hour < HOURS; hour++) {
            Instant middle = date.atTime(hour, 30).atZone(site.zone()).toInstant();
            moments.add(new Moment(weather.at(site, middle), SunPosition.at(site, middle)));
        }
        return moments;
    }

    private static MemberDay day(Support support, HeatSettings settings, LightReach reach, List<Moment> moments) {
        Surface surface = SurfaceCatalogue.of(support.material());
        List<Station> stations = stations(support, reach);
        List<Double> means = new ArrayList<>();
        List<Double> peaks = new ArrayList<>();
        List<Double> sunnySides = new ArrayList<>();
        for (Moment moment : moments) {
            double sum = 0;
            double peak = Double.NEGATIVE_INFINITY;
            double sunnySide = Double.NEGATIVE_INFINITY;
            for (Station station : stations) {
                Exposure exposure = station.exposure(settings, reach, moment);
                MemberBalance balance = new MemberBalance(station.diameterM(), surface);
                double surfaceC = balance.surfaceC(exposure);
                sum += surfaceC;
                peak = Math.max(peak, surfaceC);
                sunnySide = Math.max(sunnySide, balance.sunnySideC(exposure));
            }
            means.add(sum / stations.size());
            peaks.add(peak);
            sunnySides.add(sunnySide);
        }
        double diameterM = (support.diameterM() + support.tipDiameterM()) / 2;
        return new MemberDay(support.id(), surface, diameterM, means, peaks, sunnySides);
    }

    private static List<Station> stations(Support support, LightReach reach) {
        double lengthM = support.axis().lengthM();
        List<Station> stations = new ArrayList<>();
        for (int i = 0; i < POINTS; i++) {
            double alongM = (i + 0.5) / POINTS * lengthM;
            Point before = support.axis().atLength(Math.max(0, alongM - lengthM / 100));
            Point after = support.axis().atLength(Math.min(lengthM, alongM + lengthM / 100));
            Point along = after.minus(before);
            Spot spot = new Spot(
                    support.axis().atLength(alongM), along.times(1 / along.lengthM()), support.diameterAtM(alongM));
            stations.add(new Station(spot, spot.skyShare(reach)));
        }
        return stations;
    }

    /** Weather and sun of one hour. */
    private record Moment(Conditions open, SunPosition sun) {}

    /** One point of an axis and the sky that it sees. */
    private record Station(Spot spot, double skyShare) {

        double diameterM() {
            return spot.diameterM();
        }

        Exposure exposure(HeatSettings settings, LightReach reach, Moment moment) {
            Point sun = moment.sun().direction();
            boolean isUp = moment.sun().altitudeDeg() > 0;
            double along = sun.dot(spot.axis());
            double sine = Math.sqrt(Math.max(0, 1 - along * along));
            // the member's own far side lies in its own shade: the light is asked for just off the side that faces it
            double beam = isUp ? reach.beam(spot.beside(sun), sun) : 0;
            return Exposure.of(
                    settings, moment.open(), beam, skyShare, sine, moment.sun().altitudeDeg());
        }
    }

    /** One point of an axis, the direction of the axis there, and the thickness. */
    private record Spot(Point at, Point axis, double diameterM) {

        /**
         * The sky that the place would see without the member: the member hides of one side just what it leaves to the other,
         * level, leaning or upright.
         */
        double skyShare(LightReach reach) {
            Point up = new Point(0, 0, 1);
            return Math.min(1, reach.sky(beside(up)) + reach.sky(beside(up.times(-1))));
        }

        /** A point just off the surface, on the side that faces a direction; beyond the axis where it runs that way. */
        private Point beside(Point direction) {
            Point across = direction.minus(axis.times(direction.dot(axis)));
            double lengthM = across.lengthM();
            double outM = diameterM / 2 + CLEAR_OF_SURFACE_M;
            // an axis within a degree of the direction has no such side: any will do, and its opposite for the opposite
            if (lengthM < 0.02) {
                Point east = new Point(1, 0, 0);
                Point side = Math.abs(axis.xM()) < 0.9 ? east : new Point(0, 1, 0);
                Point level = side.minus(axis.times(side.dot(axis)));
                double sense = direction.zM() < 0 ? -1 : 1;
                return at.plus(level.times(sense * outM / level.lengthM()));
            }
            return at.plus(across.times(outM / lengthM));
        }
    }
}
