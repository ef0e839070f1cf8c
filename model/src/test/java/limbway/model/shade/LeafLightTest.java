package limbway.model.shade;

import java.time.MonthDay;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import limbway.model.enclosure.Crown;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Foliage;
import limbway.model.enclosure.Shading;
import limbway.model.geometry.Point;
import limbway.model.scene.Scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Light through crowns, by the law of Beer and Lambert. */
class LeafLightTest {

    private static final Point UP = new Point(0, 0, 1);

    private static Enclosure under(Foliage foliage) {
        Crown crown = new Crown("crown", "", new Point(5, 5, 0), 3, 2, 8, foliage);
        return Scene.yard(10, 10).build().withShading(new Shading(List.of(), List.of(), List.of(crown)));
    }

    /** e^(−k · LAI) below the middle; k from Vose et al. 1995. Printed to four decimals. */
    @ParameterizedTest
    @CsvSource({"0.53, 3, 0.2039", "0.6, 4, 0.0907"})
    @Tag("derived")
    void theLeafAreaIndexBelowTheMiddleSetsTheLight(double k, double index, double share) {
        ShadeSettings settings = new ShadeSettings(0.8, 0.3, k, 0.4);
        ShadeScene scene = ShadeScene.of(under(new Foliage(index, Optional.empty())), settings);
        assertEquals(share, scene.beam(5, 5, 0, UP, 0), 5e-5);
    }

    /** G 0.5, leaf area density 1, radius 3: e^−3. Printed to six decimals. */
    @Test
    @Tag("derived")
    void aRayThroughTheMiddleOfASphere() {
        Leaves sphere = sphere(3);
        Point sun = Shadows.sun(50, 10);
        Point below = new Point(0, 0, 5).minus(sun.times(5 / sun.zM()));
        assertEquals(0.049787, Shadows.light(sphere, below.xM(), below.yM(), sun), 5e-7);
        // a point inside has only the rest of the way before it
        assertEquals(Math.exp(-1.5), sphere.through(0, 0, 5, sun.xM(), sun.yM(), sun.zM(), 0), 1e-12);
        assertEquals(1, sphere.through(0, 0, 9, sun.xM(), sun.yM(), sun.zM(), 0));
    }

    /** Mean over the disc of a sphere in parallel light: (2/x²)(1 − (1 + x) e^(−x)), x = 2 G · LAD · R. */
    @ParameterizedTest
    @CsvSource({"1, 0.528482", "2, 0.296997", "3, 0.177967", "4, 0.113553"})
    @Tag("derived")
    void theMeanLightUnderASphere(double radiusM, double share) {
        Leaves sphere = sphere(radiusM);
        int rings = 20_000;
        double sum = 0;
        for (int i = 0; i < rings; i++) {
            double r = radiusM * Math.sqrt((i + 0.5) / rings);
            sum += sphere.through(r * 0.6, r * 0.8, 0, 0, 0, 1, 0);
        }
        // rings of equal area: the rule of midpoints errs by less than 1e-7 here; half the last printed digit
        assertEquals(share, sum / rings, 1e-6);
    }

    @Test
    void aTreeIsBareOutsideItsSeasonOnly() {
        Foliage summer = new Foliage(3, Optional.of(new Foliage.Season(MonthDay.of(4, 20), MonthDay.of(10, 31))));
        ShadeScene scene = ShadeScene.of(under(summer), ShadeSettings.standard());
        double leaf = Math.exp(-0.5 * 3);
        double bare = Math.exp(-0.5 * 3 * 0.4);
        assertLight(scene, MonthDay.of(4, 19), bare);
        assertLight(scene, MonthDay.of(4, 20), leaf);
        assertLight(scene, MonthDay.of(10, 31), leaf);
        assertLight(scene, MonthDay.of(11, 1), bare);
        assertLight(scene, MonthDay.of(2, 29), bare);
        assertTrue(bare > leaf);
    }

    @Test
    void inTheSouthTheSeasonReachesOverTheTurnOfTheYear() {
        Foliage south = new Foliage(3, Optional.of(new Foliage.Season(MonthDay.of(10, 1), MonthDay.of(4, 30))));
        ShadeScene scene = ShadeScene.of(under(south), ShadeSettings.standard());
        double leaf = Math.exp(-0.5 * 3);
        assertLight(scene, MonthDay.of(12, 31), leaf);
        assertLight(scene, MonthDay.of(1, 1), leaf);
        assertLight(scene, MonthDay.of(5, 1), Math.exp(-0.5 * 3 * 0.4));
    }

    private static void assertLight(ShadeScene scene, MonthDay day, double share) {
        // the same exponential, other order of factors
        assertEquals(share, scene.beam(5, 5, 0, UP, scene.season(day)), 1e-12, day::toString);
    }

    private static Leaves sphere(double radiusM) {
        double gTimesDensity = 0.5;
        Crown crown = new Crown("ball", "", new Point(0, 0, 0), radiusM, 5 - radiusM, 5 + radiusM);
        return new Leaves(crown, new double[] {gTimesDensity});
    }
}
