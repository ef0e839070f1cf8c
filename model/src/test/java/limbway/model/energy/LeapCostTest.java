package limbway.model.energy;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.body.Body;
import limbway.model.body.BodyCatalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

class LeapCostTest {

    private static final double RIGID = Double.POSITIVE_INFINITY;
    private final LeapCost cost = new LeapCost(LeapSettings.GROUP.standard());

    /**
     * Coward and Halsey 2014 (abstract): 141.6 ml of oxygen a metre for jumps of 1.8 m on firm ground, 20.1 J a ml, so
     * 5.12 kJ a jump, gross. The efficiency was set by it, net of rest and for an assumed 70 kg: 70 g 1.8 / 2 / 0.14 = 4.41.
     */
    @Test
    @Tag("published")
    void aHumanJumpStaysBelowWhatWasMeasuredGross() {
        double speedMPerS = Ballistics.speedAtAngleMPerS(1.8, 0, 45);
        double netJ = LeapCost.kineticJ(70, speedMPerS)
                / LeapSettings.GROUP.standard().efficiency();
        double grossJ = 141.6 * 1.8 * 20.1;
        assertEquals(4413.0, netJ, 0.05);
        assertEquals(5123.1, grossJ, 0.05);
        // 14 % below the gross figure, rest and run-up not being in it: a calibration that is guarded, not a check
        assertEquals(0.86, netJ / grossJ, 0.005);
    }

    /** 30 kg over 1 m: v² = g, K = 147.1 J, F = 30 g = K/s = 294.2 N; on 500 N/m 86.55 J are lost: 233.65 / 0.14. */
    @Test
    @Tag("derived")
    void aLeapPaysForMotionAndForTheBendingOfItsSupport() {
        Body adolescent = BodyCatalogue.standard().find("adolescent").orElseThrow();
        var rigid = assertInstanceOf(Crossing.Possible.class, cost.across(adolescent, 1, 0, RIGID));
        var soft = assertInstanceOf(Crossing.Possible.class, cost.across(adolescent, 1, 0, 500));
        assertEquals(147.09975 / 0.14, rigid.energyJ(), 1e-3);
        assertEquals(233.650 / 0.14, soft.energyJ(), 5e-2);
        // push-off 2 s / v = 1 / 3.1316, flight d / (v cos 45) = 1 / 2.2144
        assertEquals(0.3193 + 0.4516, soft.seconds(), 1e-4);
    }

    @Test
    @Tag("derived")
    void theForceIsAtLeastTheWeight() {
        assertEquals(40 * 9.80665, LeapCost.pushOffN(10, 40, 0.5));
        assertEquals(588.0, LeapCost.pushOffN(294, 40, 0.5));
    }

    @Test
    void theHeavyAndThoseWhoDoNotLeapAreRefused() {
        BodyCatalogue bodies = BodyCatalogue.standard();
        assertEquals(
                new Crossing.Refused("a flanged male does not leap"),
                cost.across(bodies.find("flanged male").orElseThrow(), 1, 0, RIGID));
        Body heavy = bodies.find("male chimpanzee").orElseThrow().weighing(51);
        assertEquals(
                new Crossing.Refused("a body of 51.0 kg does not leap, allowed up to 50.0 kg"),
                cost.across(heavy, 1, 0, RIGID));
        assertInstanceOf(
                Crossing.Possible.class,
                cost.across(bodies.find("male chimpanzee").orElseThrow(), 2, 0, RIGID));
    }

    @Test
    void aLandingTooHighForTheTakeOffIsRefused() {
        Body chimpanzee = BodyCatalogue.standard().find("male chimpanzee").orElseThrow();
        // sqrt(g (1 + sqrt 5)) = 5.63 m/s over 2 m to a landing 1 m higher
        var refused = assertInstanceOf(Crossing.Refused.class, cost.across(chimpanzee, 2, 1, RIGID));
        assertTrue(refused.why().startsWith("a take-off of 5.63"), refused.why());
    }

    /**
     * At 45 degrees nobody leaps higher than the gap is wide; at the best angle, 45 degrees and half of the slope of the
     * landing, 0.3 m across and 0.4 m up ask for sqrt(g (0.4 + 0.5)) = 2.971 m/s, so K = 43 x 8.829 / 2 = 189.8 J.
     */
    @Test
    @Tag("derived")
    void aSteepLandingIsLeaptToAtTheAngleThatAsksForLeast() {
        Body chimpanzee = BodyCatalogue.standard().find("male chimpanzee").orElseThrow();
        var possible = assertInstanceOf(Crossing.Possible.class, cost.across(chimpanzee, 0.3, 0.4, RIGID));
        assertEquals(43 * 9.81 * 0.9 / 2 / 0.14, possible.energyJ(), 1.0);
    }

    /** 15 kg over 1.5 m: 15 g 1.5 / 1.2 = 183.875 J in sqrt(3 / g) = 0.5531 s. */
    @Test
    @Tag("derived")
    void aDropIsBrakedLikeADescent() {
        var drop = new DropCost(LeapSettings.GROUP.standard());
        var possible = assertInstanceOf(Crossing.Possible.class, drop.down(15, 1.5));
        assertEquals(183.875, possible.energyJ(), 5e-4);
        assertEquals(0.5531, possible.seconds(), 5e-5);
        assertEquals(new Crossing.Refused("the drop is 2.5 m, allowed up to 2.0 m"), drop.down(15, 2.5));
        assertEquals(new Crossing.Refused("a body of 74.0 kg does not drop, allowed up to 50.0 kg"), drop.down(74, 1));
    }
}
