package limbway.model.shade;

import java.util.List;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import limbway.model.enclosure.Crown;
import limbway.model.geometry.Corner;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Shadows on level ground against closed forms. */
class ShadowVectorsTest {

    private static final Point UP = new Point(0, 0, 1);

    /** h · cot a. Printed to four decimals, of which half the last may differ. */
    @ParameterizedTest
    @CsvSource({"15, 37.3205", "30, 17.3205", "45, 10", "60, 5.7735", "75, 2.6795"})
    @Tag("derived")
    void aPostOfTenMetresCastsItsShadowAwayFromTheSun(double altitudeDeg, double lengthM) {
        double azimuth = 120;
        Point sun = Shadows.sun(altitudeDeg, azimuth);
        Point away = Shadows.sun(0, azimuth + 180);
        // a strip that faces the sun, 2 cm wide: its upper edge is exactly ten metres high
        Point side = Shadows.sun(0, azimuth + 90).times(0.01);
        Sheet strip = Sheet.of(
                List.of(
                        side.times(-1),
                        side,
                        side.plus(UP.times(10)),
                        side.times(-1).plus(UP.times(10))),
                away.times(-1),
                0);
        double start = 0.001;
        double reached =
                start + Shadows.reachM(strip, sun, start * away.xM(), start * away.yM(), away.xM(), away.yM(), 100);
        assertEquals(lengthM, reached, 5e-5);
    }

    /** (x, y) − h · cot a · (sin A, cos A): (0, 0, 10) at altitude 30, azimuth 120 falls on (−15, 8.66025). */
    @Test
    @Tag("derived")
    void aPointFallsToTheGroundAlongTheRay() {
        Point sun = Shadows.sun(30, 120);
        double half = 1e-4;
        Sheet speck = Sheet.of(
                List.of(
                        new Point(-half, -half, 10),
                        new Point(half, -half, 10),
                        new Point(half, half, 10),
                        new Point(-half, half, 10)),
                UP,
                0);
        // half a unit of the fifth decimal lies well inside the speck's 0.1 mm
        assertEquals(0, Shadows.light(speck, -15, 8.66025, sun));
        assertEquals(1, Shadows.light(speck, -15 + 2 * half, 8.66025, sun));
        assertEquals(1, Shadows.light(speck, -15, 8.66025 - 2 * half, sun));
    }

    /** A level polygon at height h casts itself, shifted by h · cot a. */
    @Test
    @Tag("derived")
    void aLevelSheetCastsItselfShifted() {
        Point sun = Shadows.sun(37, 251);
        List<Point> edge = List.of(
                new Point(0, 0, 4), new Point(5, 1, 4), new Point(2, 2, 4), new Point(4, 6, 4), new Point(-1, 3, 4));
        Sheet sheet = Sheet.of(edge, UP, 0);
        Outline shifted = new Outline(edge.stream()
                .map(p -> p.minus(sun.times(4 / sun.zM())))
                .map(p -> new Corner(p.xM(), p.yM()))
                .toList());
        SplittableRandom chance = new SplittableRandom(1);
        int dark = 0;
        for (int i = 0; i < 20_000; i++) {
            double x = chance.nextDouble(-5, 15);
            double y = chance.nextDouble(-5, 15);
            boolean isDark = Shadows.light(sheet, x, y, sun) == 0;
            assertEquals(shifted.covers(x, y), isDark, () -> "at " + x + ", " + y);
            dark += isDark ? 1 : 0;
        }
        assertTrue(dark > 100, "the shadow must have been met");
    }

    /**
     * An upright post of radius 0.3 m and height 4 m at altitude 40 covers πR² + 2RH · cot a = 3.14295 m² with a flat top.
     * Pieces of supports are rounded at their ends, as knees of ropes need it: the half disc πR²/2 under the far end
     * becomes half an ellipse, πR²/(2 sin a). Within its foot the side away from the sun is dark, the other, πR²/2, lit.
     */
    @Test
    @Tag("derived")
    void aPostCastsItsOutline() {
        double altitude = Math.toRadians(40);
        Point sun = Shadows.sun(40, 77);
        Member post = new Member(new Point(0, 0, 0), new Point(0, 0, 4), 0.3, 0.3, false, false, 20);
        double footHalf = Math.PI * 0.09 / 2;
        double rounded = 3.14295 - footHalf + footHalf * (1 / Math.sin(altitude) - 1);
        // outline of 11 m crossed by cells of 5 mm: some 2,300 cells are half dark at random, error 0.5 √2300 · 25e-6
        // m²,
        // four times that is 0.0024; the half light of the rim lies at the edge to 1e-4
        assertEquals(rounded, Shadows.areaM2(post, sun, 0, 0, 6, 0.005), 0.005);
    }

    /** A sphere of radius 3 m, its middle 5 m high, at altitude 40. Printed digits; area by cells of 1 cm. */
    @Test
    @Tag("derived")
    void aSphereCastsAnEllipse() {
        Point sun = Shadows.sun(40, 200);
        Point away = Shadows.sun(0, 20);
        Leaves sphere = new Leaves(new Crown("ball", "", new Point(0, 0, 0), 3, 2, 8), new double[] {1e6});
        double x = away.xM() * 5.95877;
        double y = away.yM() * 5.95877;
        double far = Shadows.reachM(sphere, sun, x, y, away.xM(), away.yM(), 20);
        double near = Shadows.reachM(sphere, sun, x, y, -away.xM(), -away.yM(), 20);
        assertEquals(4.66717, (far + near) / 2, 1e-5);
        // the middle of the ellipse is where it was said to be
        assertEquals(0, far - near, 2e-5);
        assertEquals(3, Shadows.reachM(sphere, sun, x, y, away.yM(), -away.xM(), 20), 1e-5);
        // 24.4 m of outline, 3,500 cells of 1 cm half dark at random: 0.003 m², four times that
        assertEquals(43.9871, Shadows.areaM2(sphere, sun, x, y, 5, 0.01), 0.012);
    }

    /** W · H · cot a · cos(25°): a wall of 6 m by 3 m, sun 25 degrees off its normal. */
    @Test
    @Tag("derived")
    void aWallCastsItsWidthAsSeenFromTheSun() {
        Sheet wall = Sheet.of(
                List.of(new Point(-3, 0, 0), new Point(3, 0, 0), new Point(3, 0, 3), new Point(-3, 0, 3)),
                new Point(0, 1, 0),
                0);
        // a hard bound for straight edges that slant through cells of 5 mm is 0.1 m²; at random 0.0008 m², taken
        // tenfold
        // because the edge of the wall runs along the cells
        assertEquals(19.44172, Shadows.areaM2(wall, Shadows.sun(40, 25), 0, -2, 6, 0.005), 0.01);
    }

    /**
     * Full shadow ends where the sun's disc is as wide as the bar: D / (2 tan(0.533°/2)), printed as 2.69, 5.19 and 32 m.
     * Half the last printed digit.
     */
    @ParameterizedTest
    @CsvSource({"0.025, 2.69, 0.005", "0.0483, 5.19, 0.005", "0.3, 32, 0.5"})
    @Tag("derived")
    void fullShadowOfABarEndsWhereTheSunIsAsWide(double diameterM, double endM, double toleranceM) {
        Point sun = UP;
        double dark = 0;
        double grey = 100;
        while (grey - dark > 1e-6) {
            double height = (dark + grey) / 2;
            Member bar = new Member(
                    new Point(-50, 0, height),
                    new Point(50, 0, height),
                    diameterM / 2,
                    diameterM / 2,
                    false,
                    false,
                    200);
            if (Shadows.light(bar, 0, 0, sun) == 0) {
                dark = height;
            } else {
                grey = height;
            }
        }
        assertEquals(endM, dark, toleranceM);
    }

    /** The share of the disc behind a bar, against counting points of the disc. */
    @ParameterizedTest
    @CsvSource({"3, 0", "6, 0.01", "10, 0.03", "10, 0.05", "20, 0.11", "2, 0.0125", "40, 0.2"})
    @Tag("derived")
    void aBarHidesTheShareOfTheDiscThatItCovers(double heightM, double asideM) {
        double radius = 0.0125;
        Member bar = new Member(
                new Point(-50, asideM, heightM), new Point(50, asideM, heightM), radius, radius, false, false, 200);
        double sunM = heightM * Member.SUN_RADIUS;
        int free = 0;
        int all = 0;
        for (int i = 0; i < 1000; i++) {
            for (int j = 0; j < 1000; j++) {
                double u = (i - 499.5) / 500;
                double v = (j - 499.5) / 500;
                if (u * u + v * v <= 1) {
                    all++;
                    free += Math.abs(v * sunM - asideM) >= radius ? 1 : 0;
                }
            }
        }
        // rows of the disc are 0.002 of its radius wide, two edges, widest row 2/π of the disc for each radius
        assertEquals((double) free / all, Shadows.light(bar, 0, 0, UP), 0.002);
    }
}
