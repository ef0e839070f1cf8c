package limbway.scenarios.layout;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.energy.Elasticity;

import static org.junit.jupiter.api.Assertions.assertEquals;

/** The height at which a column bends over under its own weight. */
class OwnWeightTest {

    /** Solid, 0.1 m: I/A = d²/16, so that h³ = 7.8373 10 GPa 0.000625 m² / (500 kg/m³ 9.80665 m/s²) = 9989.8 m³. */
    @Test
    @Tag("derived")
    void aSolidColumnOfTimber() {
        double heightM = OwnWeight.criticalHeightM(0.1, new Elasticity(10e9, 500, 0));
        // worked to one decimal
        assertEquals(9989.8, heightM * heightM * heightM, 0.05);
    }

    /** A tube carries the same weight with more stiffness: I/A = d² (1 + share²) / 16. */
    @Test
    @Tag("derived")
    void aTubeStandsHigherThanASolidColumn() {
        double solidM = OwnWeight.criticalHeightM(0.05, new Elasticity(200e9, 7850, 0));
        double tubeM = OwnWeight.criticalHeightM(0.05, new Elasticity(200e9, 7850, 0.9));
        // rounding of a cube root only
        assertEquals(Math.cbrt(1.81), tubeM / solidM, 1e-12);
    }

    /** Twice as thick stands 2^(2/3) times as high. */
    @Test
    @Tag("derived")
    void heightGrowsWithTheTwoThirdsPowerOfThickness() {
        Elasticity timber = new Elasticity(10e9, 500, 0);
        double ratio = OwnWeight.criticalHeightM(0.2, timber) / OwnWeight.criticalHeightM(0.1, timber);
        // rounding of a cube root only
        assertEquals(Math.cbrt(4), ratio, 1e-12);
    }
}
