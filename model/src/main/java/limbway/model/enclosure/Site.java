package limbway.model.enclosure;

import java.time.ZoneId;

/**
 * Where on Earth the enclosure stands.
 *
 * @param latitudeDeg degrees north, -90 to 90
 * @param longitudeDeg degrees east, -180 to 180
 * @param zone time zone of clocks and feeding times
 * @param elevationM height above the sea [m], -500 to 9000
 * @param horizon how high the land around stands before the sky
 */
public record Site(double latitudeDeg, double longitudeDeg, ZoneId zone, double elevationM, Horizon horizon) {

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
        if (!(elevationM >= -500 && elevationM <= 9000)) {
            throw new IllegalArgumentException("site: elevationM = " + elevationM + ", allowed -500 to 9000");
        }
    }

    /**
     * A site at the height of the sea with a level horizon.
     *
     * @param latitudeDeg degrees north, -90 to 90
     * @param longitudeDeg degrees east, -180 to 180
     * @param zone time zone of clocks and feeding times
     */
    public Site(double latitudeDeg, double longitudeDeg, ZoneId zone) {
        this(latitudeDeg, longitudeDeg, zone, 0, Horizon.LEVEL);
    }
}
