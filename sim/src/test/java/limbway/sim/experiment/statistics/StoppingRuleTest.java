package limbway.sim.experiment.statistics;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

class StoppingRuleTest {

    private final StoppingRule rule = new StoppingRule(0.02, 0.05, 10, 20);

    /** 0.05 / 1.05 = 0.047619, as Law and Kelton have it (from memory). */
    @Test
    @Tag("published")
    void aRelativeErrorOfFivePercentAsksForALittleLess() {
        assertEquals(0.047619, rule.targetOfAmount(1), 5e-7);
        assertEquals(4.7619, rule.targetOfAmount(100), 5e-5);
        assertEquals(0.02, rule.targetOfShare());
    }

    @Test
    @Tag("derived")
    void looksAreTakenAfterTheFirstRepetitionsAndThenInBatches() {
        assertEquals(10, rule.nextLook(0, 100));
        assertEquals(30, rule.nextLook(10, 100));
        assertEquals(100, rule.nextLook(90, 100));
        assertEquals(95, rule.nextLook(90, 95));
    }

    /** Half the width takes four times as many. */
    @Test
    @Tag("derived")
    void whatItTakesGrowsWithTheSquare() {
        assertEquals(80, StoppingRule.repetitionsNeeded(20, 0.04, 0.02));
        assertEquals(46, StoppingRule.repetitionsNeeded(20, 0.03, 0.02) + 1);
    }

    @Test
    void whatMakesNoSenseIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new StoppingRule(0, 0.05, 10, 10));
        assertThrows(IllegalArgumentException.class, () -> new StoppingRule(0.02, 0, 10, 10));
        assertThrows(IllegalArgumentException.class, () -> new StoppingRule(0.02, 0.05, 9, 10));
        assertThrows(IllegalArgumentException.class, () -> new StoppingRule(0.02, 0.05, 10, 0));
    }
}
