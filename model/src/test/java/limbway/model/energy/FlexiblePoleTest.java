package limbway.model.energy;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import limbway.model.enclosure.Material;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

@Tag("derived")
class FlexiblePoleTest {

    private static final Elasticity WOOD = new Elasticity(8e9, 900, 0);

    /** 3 E pi d^4 / (64 L³) with E = 8 GPa, worked by a script independent of the code: 111.701 and 4363.32 N/m. */
    @ParameterizedTest
    @CsvSource({"0.04, 3, 111.701, 0.0005", "0.10, 3, 4363.32, 0.005"})
    void aUniformPoleIsTheTextbookCantilever(double diameterM, double lengthM, double nPerM, double halfLastDigit) {
        assertEquals(nPerM, new FlexiblePole(lengthM, diameterM, diameterM, WOOD).stiffnessNPerM(), halfLastDigit);
    }

    /** The deflection s²/(E I(s)) added up along the pole by Simpson's rule, as if the closed form were unknown. */
    @ParameterizedTest
    @CsvSource({"0.20, 0.05", "0.10, 0.09", "0.05, 0.10", "0.08, 0.08"})
    void aTaperedPoleIsTheSumOfItsSlices(double baseM, double tipM) {
        double lengthM = 6;
        int slices = 2000;
        double metresPerN = 0;
        for (int i = 0; i <= slices; i++) {
            double fromTipM = lengthM * i / slices;
            double diameterM = tipM + (baseM - tipM) * fromTipM / lengthM;
            double weight = i == 0 || i == slices ? 1 : i % 2 == 1 ? 4 : 2;
            metresPerN += weight * fromTipM * fromTipM / WOOD.bendingNM2(diameterM);
        }
        metresPerN *= lengthM / slices / 3;
        // Simpson's error falls with the fourth power of the slice: 2000 slices leave less than 1e-9 of the sum
        assertEquals(1, metresPerN * new FlexiblePole(lengthM, baseM, tipM, WOOD).stiffnessNPerM(), 1e-9);
    }

    /** A tube of inner share 0.9 keeps 1 - 0.9^4 = 0.3439 of the stiffness and 1 - 0.9² = 0.19 of the mass. */
    @Test
    void aTubeIsASolidPoleLessItsCore() {
        var solid = new FlexiblePole(5, 0.1, 0.06, WOOD);
        var tube = new FlexiblePole(5, 0.1, 0.06, new Elasticity(8e9, 900, 0.9));
        // two products of a few doubles each: rounding only
        assertEquals(0.3439, tube.stiffnessNPerM() / solid.stiffnessNPerM(), 1e-12);
        assertEquals(0.19, tube.massKg() / solid.massKg(), 1e-12);
    }

    /** A solid cylinder of 0.1 m and 4 m weighs 900 pi 0.0025 4 = 28.274 kg; a cone of the same base a third of it. */
    @Test
    void aPoleWeighsAsAFrustum() {
        assertEquals(28.2743, new FlexiblePole(4, 0.1, 0.1, WOOD).massKg(), 5e-5);
        // a tip of a ten-thousandth of the base adds 1e-4 of the mass
        assertEquals(28.2743 / 3, new FlexiblePole(4, 0.1, 1e-5, WOOD).massKg(), 2e-3);
    }

    @Test
    void heldHalfWayUpAPoleEndsAtItsMeanDiameterAndIsStiffer() {
        var whole = new FlexiblePole(6, 0.12, 0.06, WOOD);
        FlexiblePole half = whole.upTo(3);
        // one interpolation
        assertEquals(0.09, half.tipDiameterM(), 1e-15);
        // d_tip / L³: 1.5 times the tip, an eighth of the cube
        assertEquals(12, half.stiffnessNPerM() / whole.stiffnessNPerM(), 1e-12);
        var thrown = assertThrows(IllegalArgumentException.class, () -> whole.upTo(7));
        assertTrue(thrown.getMessage().contains("heightM = 7.0, allowed 0.0 to 6.0"), thrown.getMessage());
    }

    /** 48 and 192 E I / L³: with E I = 8e9 pi 0.1^4 / 64 = 39269.9 N m² over 4 m 29452.4 and 117809.7 N/m. */
    @Test
    void aBeamBuiltInAtBothEndsIsFourTimesAsStiffAsOneAtRest() {
        assertEquals(29_452.4, BeamBending.restingNPerM(4, 0.1, WOOD), 0.05);
        assertEquals(117_809.7, BeamBending.builtInNPerM(4, 0.1, WOOD), 0.05);
    }

    @Test
    void ropesAndHosesDoNotResistBendingAndEverythingElseDoes() {
        Elasticities all = Elasticities.standard();
        for (Material material : Material.values()) {
            boolean limp = material == Material.FIBRE_ROPE || material == Material.FIRE_HOSE;
            assertEquals(limp, all.of(material).isEmpty(), material.word());
        }
        assertEquals(13, all.parameters().size());
    }
}
