package limbway.model.enclosure;

import java.time.ZoneId;

/**
 * Where on Earth the enclosure stands.
 *
 * @param latitudeDeg degrees north, -90 to 90
 * @param longitudeDeg degrees east, -180 to 180
 * @param zone time zone of clocks and feeding times
 */
public record Site(double latitudeDeg, double longitudeDeg, ZoneId zone) {

    /**
     * Checks the coordinates.
     *
     * @throws IllegalArgumentException naming the value outside its range
     */
    public Site {
        if (!(Math.abs(latitudeDeg) <= 90)) {
            throw new IllegalArgumentException("site: latitudeDeg = " + latitudeDeg + ", allowed -90 to 90");
        }
        if (!(Math.abs(longitudeDeg) <= 180)) {
            throw new IllegalArgumentException("site: longitudeDeg = " + longitudeDeg + ", allowed -180 to 180");
        }
    }
}
