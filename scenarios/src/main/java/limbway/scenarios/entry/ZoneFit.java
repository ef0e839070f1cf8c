package limbway.scenarios.entry;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Locale;
import java.util.Optional;

import limbway.scenarios.problem.Place;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Wording;

/**
 * How well the clocks of a time zone go with the sun at a longitude.
 *
 * @param latitudeDeg degrees north
 * @param longitudeDeg degrees east
 * @param zone time zone of the clocks
 */
record ZoneFit(double latitudeDeg, double longitudeDeg, ZoneId zone) {

    /*
     * All limits are common sense from a list of real places, from memory. Farthest from the sun are clocks in the west of
     * China (3.1 h), in the west of Alaska (2.5 h), in Dakhla (2.1 h), in the west of Argentina (1.9 h), in the north-west
     * of Spain (1.6 h); Kiribati is a day ahead and yet right to half an hour, which is why whole days do not count.
     */

    /** Farther than on any inhabited land [h]: worth a remark. */
    private static final double ODD_H = 3.25;

    /** So far off that it can only be a slip [h], unless the clocks are meant to show UTC. */
    private static final double SLIP_H = 4;

    /** So far off [h] where the other way round fits to {@link #FITS_H}, latitude and longitude are swapped. */
    private static final double SWAP_H = 2.15;

    /** Clocks of most places are no farther from the sun than this [h]. */
    private static final double FITS_H = 1;

    private static final Instant ANY_MOMENT = Instant.parse("2026-01-01T00:00:00Z");

    /** What can only be a slip of the pen, as a problem. */
    Optional<Problem> slip(Place latitudePlace, Place zonePlace) {
        double hours = hoursOff(longitudeDeg);
        boolean fitsSwapped = Quantity.LATITUDE.allows(longitudeDeg) && hoursOff(latitudeDeg) <= FITS_H;
        if (hours > SWAP_H && fitsSwapped && !isUtc()) {
            return Optional.of(swapped(
                    latitudePlace,
                    "latitude and longitude seem to be swapped: time zone " + zone + " fits only the other way round",
                    latitudeDeg,
                    longitudeDeg));
        }
        if (hours <= SLIP_H || isUtc()) {
            return Optional.empty();
        }
        return Optional.of(
                Problem.at(zonePlace, "time zone " + zone + " does not fit longitude " + Wording.number(longitudeDeg))
                        .found(String.format(Locale.ROOT, "clocks %.1f hours from the sun", hours))
                        .allowed("up to " + Wording.number(SLIP_H)
                                + " hours; the farthest on inhabited land are about 3, in the west of China")
                        .mend(mend()));
    }

    private String mend() {
        if (zone.getId().startsWith("Etc/GMT") && hoursOff(longitudeDeg, -clockHours()) <= FITS_H) {
            return "the signs of these names are turned round: Etc/GMT-8 is eight hours ahead of UTC";
        }
        if (hoursOff(-longitudeDeg) <= FITS_H) {
            return "did you mean longitude " + Wording.number(-longitudeDeg) + "? (west is negative)";
        }
        return "correct the longitude or the time zone, or write UTC if the clocks are meant to show it";
    }

    /** A problem that offers both numbers the other way round. */
    static Problem swapped(Place place, String headline, double latitudeDeg, double longitudeDeg) {
        return Problem.at(place, headline)
                .found("latitude " + Wording.number(latitudeDeg) + ", longitude " + Wording.number(longitudeDeg))
                .mend("swap them: latitude: " + Wording.number(longitudeDeg) + ", longitude: "
                        + Wording.number(latitudeDeg));
    }

    /** A remark on clocks far from the sun that may be meant. */
    Optional<String> remark() {
        double hours = hoursOff(longitudeDeg);
        return hours <= ODD_H
                ? Optional.empty()
                : Optional.of(String.format(
                        Locale.ROOT,
                        "The clocks of time zone %s are %.1f hours from the sun at longitude %s: check the site, because the"
                                + " animals wake and sleep by the sun and are fed by the clock.",
                        zone,
                        hours,
                        Wording.number(longitudeDeg)));
    }

    private boolean isUtc() {
        return zone.getRules().isFixedOffset() && clockHours() == 0;
    }

    private double clockHours() {
        return zone.getRules().getStandardOffset(ANY_MOMENT).getTotalSeconds() / 3600.0;
    }

    private double hoursOff(double eastDeg) {
        return hoursOff(eastDeg, clockHours());
    }

    private static double hoursOff(double eastDeg, double clockHours) {
        return Math.abs(Math.IEEEremainder(clockHours - eastDeg / 15, 24));
    }
}
