package limbway.model.energy;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

@Tag("derived")
class ComplianceCostTest {

    private final ComplianceCost cost = new ComplianceCost(ComplianceSettings.GROUP.standard());

    /** (0.5 40 g)² / (2 k 0.25) worked by an independent script: 384.68, 76.94 and 15.39 J. */
    @ParameterizedTest
    @CsvSource({"200, 384.68", "1000, 76.94", "5000, 15.39"})
    void changingToASofterSupportCostsMore(double stiffnessNPerM, double energyJ) {
        assertEquals(energyJ, cost.transferJ(40, stiffnessNPerM), 0.005);
    }

    @Test
    void aRigidSupportCostsNothing() {
        assertEquals(0, cost.transferJ(40, Double.POSITIVE_INFINITY));
    }

    @ParameterizedTest
    @CsvSource({"0, 0", "0.3, 1", "1.0, 1", "1.01, 2", "7.5, 8"})
    void everyBegunMetreIsAChangeOfSupport(double lengthM, int transfers) {
        assertEquals(transfers, cost.transfers(lengthM));
    }

    @Test
    void refusesASupportWithoutStiffness() {
        var thrown = assertThrows(IllegalArgumentException.class, () -> cost.transferJ(40, 0));
        assertEquals("compliance: stiffnessNPerM = 0.0, allowed above 0", thrown.getMessage());
        assertTrue(ComplianceSettings.GROUP.of(ComplianceSettings.GROUP.standard()).stream()
                .allMatch(p -> p.name().startsWith("compliance.")));
    }
}
