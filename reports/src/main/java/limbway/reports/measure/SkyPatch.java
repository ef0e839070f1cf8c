package limbway.reports.measure;

import java.util.ArrayList;
import java.util.List;

import limbway.model.enclosure.Site;
import limbway.model.light.SunPosition;
import limbway.model.shade.ShadeYear;

/**
 * A part of the sky in which the sun stands at times, with how often too few platforms lie in shade then.
 *
 * @param azimuthDeg its least azimuth, a multiple of {@link #AZIMUTH_DEG}
 * @param altitudeDeg its least height, a multiple of {@link #ALTITUDE_DEG}
 * @param sunMinutes time a year that the sun stands there
 * @param breachMinutes part of it in breach
 */
public record SkyPatch(int azimuthDeg, int altitudeDeg, int sunMinutes, int breachMinutes) {

    /** Width of a patch [degrees]. */
    public static final int AZIMUTH_DEG = 5;

    /** Height of a patch [degrees]. */
    public static final int ALTITUDE_DEG = 5;

    private static final int ROUND = 360 / AZIMUTH_DEG;
    private static final int UP = 90 / ALTITUDE_DEG;

    /**
     * The patches that the sun comes to while shade is asked for.
     *
     * @param site where
     * @param year which platforms lay in shade when
     * @return patches, low ones first, each row from north round by east
     */
    public static List<SkyPatch> of(Site site, ShadeYear year) {
        int[][] sun = new int[UP][ROUND];
        int[][] breach = new int[UP][ROUND];
        for (int day = 0; day < year.calendar().days(); day++) {
            for (int slot = 0; slot < year.calendar().slots(); slot++) {
                if (year.isSunUp(day, slot)) {
                    SunPosition at = SunPosition.at(site, year.calendar().moment(day, slot));
                    int row = Math.max(0, Math.min(UP - 1, (int) (at.altitudeDeg() / ALTITUDE_DEG)));
                    int column = (int) (at.azimuthDeg() / AZIMUTH_DEG) % ROUND;
                    sun[row][column] += year.calendar().stepMin();
                    breach[row][column] +=
                            year.isBreach(day, slot) ? year.calendar().stepMin() : 0;
                }
            }
        }
        List<SkyPatch> patches = new ArrayList<>();
        for (int row = 0; row < UP; row++) {
            for (int column = 0; column < ROUND; column++) {
                if (sun[row][column] > 0) {
                    patches.add(new SkyPatch(
                            column * AZIMUTH_DEG, row * ALTITUDE_DEG, sun[row][column], breach[row][column]));
                }
            }
        }
        return patches;
    }

    /**
     * Share of the time with the sun there in which too few platforms lie in shade.
     *
     * @return 0 to 1
     */
    public double breachShare() {
        return (double) breachMinutes / sunMinutes;
    }
}
