package limbway.scenarios.survey;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

import limbway.model.enclosure.Site;
import limbway.model.light.SunPosition;
import limbway.scenarios.problem.Place;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Whether a weather file belongs to the place that it names, and that place to the site of the scenario. */
final class EpwPlace {

    /** Farther apart than this [degrees] the weather is that of another place: common practice, no source. */
    private static final double FAR_DEG = 1;

    private static final double FAR_HOURS = 1;

    /** A difference in height that a keeper should know of [m]: 2 degrees by the usual 6.5 for each kilometre. */
    private static final double STEEP_M = 300;

    /** Nearer than this the place is the same [km]. */
    private static final double SAME_KM = 2;

    private static final double KM_PER_DEG = 111.2;

    /** Light stronger than dusk [Wh/m²] before the sun is up belongs to another hour. */
    private static final double LIGHT_WH = 20;

    private static final double DUSK_DEG = -3;

    /** So many hours of light at night are no slips of a station. */
    private static final int MOST_AT_NIGHT = 20;

    private static final Instant ANY_MOMENT = Instant.parse("2023-01-01T00:00:00Z");

    private final EpwHeader header;
    private final Problems problems;

    EpwPlace(EpwHeader header, Problems problems) {
        this.header = header;
        this.problems = problems;
    }

    /** Whether the file can serve for a site; otherwise problems are added. */
    boolean isNear(Site site) {
        boolean sound = true;
        double eastDeg = eastDeg(site);
        if (Math.abs(header.latitudeDeg() - site.latitudeDeg()) > FAR_DEG || Math.abs(eastDeg) > FAR_DEG) {
            Place place = header.location().place(EpwHeader.LATITUDE);
            problems.add(Problem.at(place, "this weather was recorded somewhere else")
                    .found(shown(header.latitudeDeg(), header.longitudeDeg()))
                    .allowed("within " + Wording.number(FAR_DEG) + " degree of the site, "
                            + shown(site.latitudeDeg(), site.longitudeDeg()))
                    .mend(mend(site)));
            sound = false;
        }
        double hours = zoneHours(site);
        boolean isUtc = hours == 0 && site.zone().getRules().isFixedOffset();
        if (sound && !isUtc && Math.abs(header.zoneHours() - hours) > FAR_HOURS) {
            problems.add(Problem.at(
                            header.location().place(EpwHeader.ZONE),
                            "the clocks of the weather file do not go with those of the site")
                    .found(utc(header.zoneHours()))
                    .allowed("within " + Wording.number(FAR_HOURS) + " hour of " + site.zone() + ", " + utc(hours))
                    .mend("correct the time zone of one of them; the file counts hours without summer time"));
            sound = false;
        }
        return sound;
    }

    private String mend(Site site) {
        boolean swapped = Math.abs(header.latitudeDeg() - site.longitudeDeg()) <= FAR_DEG
                && Math.abs(header.longitudeDeg() - site.latitudeDeg()) <= FAR_DEG;
        boolean sign = Math.abs(Math.abs(header.latitudeDeg()) - Math.abs(site.latitudeDeg())) <= FAR_DEG
                && Math.abs(Math.abs(header.longitudeDeg()) - Math.abs(site.longitudeDeg())) <= FAR_DEG;
        if (swapped) {
            return "swap latitude and longitude, here or in the site";
        }
        return sign
                ? "correct the sign of latitude or longitude, here or in the site: south and west are negative"
                : "take the file of a nearer station, or correct the site";
    }

    /** What a keeper should know of a file that can serve. */
    List<String> notes(Site site) {
        List<String> notes = new ArrayList<>();
        double northKm = (header.latitudeDeg() - site.latitudeDeg()) * KM_PER_DEG;
        double eastKm = eastDeg(site) * KM_PER_DEG * StrictMath.cos(StrictMath.toRadians(site.latitudeDeg()));
        double awayKm = Math.hypot(northKm, eastKm);
        if (awayKm > SAME_KM) {
            notes.add(String.format(Locale.ROOT, "The weather was recorded about %.0f km from the site.", awayKm));
        }
        double aboveM = header.elevationM() - site.elevationM();
        if (Math.abs(aboveM) > STEEP_M) {
            notes.add(String.format(
                    Locale.ROOT,
                    "The weather was recorded %.0f m %s than the site, where the air is %s.",
                    Math.abs(aboveM),
                    aboveM > 0 ? "higher" : "lower",
                    aboveM > 0 ? "warmer" : "cooler"));
        }
        double hours = header.zoneHours() - zoneHours(site);
        if (hours != 0) {
            notes.add(String.format(
                    Locale.ROOT,
                    "The clocks of the weather file are %s, those of the site %s without summer time; each hour is taken"
                            + " as the file means it.",
                    utc(header.zoneHours()),
                    utc(zoneHours(site))));
        }
        return notes;
    }

    /** Sunlight in hours in which the sun is down where the file says that it was recorded, as a problem. */
    Optional<Problem> lightAtNight(double[] globalWh, List<EpwLine> lines) {
        ZoneOffset offset = header.offset();
        Site station = new Site(header.latitudeDeg(), header.longitudeDeg(), offset);
        Instant start = LocalDateTime.of(2023, 1, 1, 0, 0).toInstant(offset);
        int found = 0;
        int first = -1;
        for (int i = 0; i < globalWh.length; i++) {
            if (globalWh[i] > LIGHT_WH && isDown(station, start.plus(Duration.ofHours(i)))) {
                first = first < 0 ? i : first;
                found++;
            }
        }
        if (found <= MOST_AT_NIGHT) {
            return Optional.empty();
        }
        Place place = lines.get(first).place(EpwField.GLOBAL.number());
        return Optional.of(Problem.at(place, "the sun shines at night in this weather file")
                .found(found + " hours with more than " + EpwField.GLOBAL.shown(LIGHT_WH) + " while the sun is down")
                .allowed("at most " + MOST_AT_NIGHT + " such hours")
                .mend(
                        "correct latitude, longitude or time zone in the line LOCATION, or shift the hours: they are those of "
                                + utc(header.zoneHours()) + ", without summer time"));
    }

    private static boolean isDown(Site station, Instant start) {
        for (int minutes = 0; minutes <= 60; minutes += 30) {
            if (SunPosition.at(station, start.plus(Duration.ofMinutes(minutes))).altitudeDeg() > DUSK_DEG) {
                return false;
            }
        }
        return true;
    }

    private double eastDeg(Site site) {
        return Math.IEEEremainder(header.longitudeDeg() - site.longitudeDeg(), 360);
    }

    private static double zoneHours(Site site) {
        return site.zone().getRules().getStandardOffset(ANY_MOMENT).getTotalSeconds() / 3600.0;
    }

    private static String shown(double latitudeDeg, double longitudeDeg) {
        return "latitude " + Wording.number(latitudeDeg) + ", longitude " + Wording.number(longitudeDeg);
    }

    static String utc(double hours) {
        return "UTC" + (hours < 0 ? "" : "+") + Wording.number(hours);
    }
}
