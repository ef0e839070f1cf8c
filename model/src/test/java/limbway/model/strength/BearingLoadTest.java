package limbway.model.strength;

import java.util.List;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.enclosure.Bearing;
import limbway.model.enclosure.Material;
import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportKind;
import limbway.model.energy.Elasticities;
import limbway.model.geometry.Point;
import limbway.model.geometry.Polyline;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

class BearingLoadTest {

    private static final double G = 9.80665;

    /** Closed forms in doubles differ by rounding only. */
    private static final double ROUNDING = 1e-9;

    private static final BearingLoad LOADS = new BearingLoad(Strengths.standard(), Elasticities.standard());

    private static Support straight(
            SupportKind kind, Material material, Point end, double diameterM, double tipDiameterM) {
        return new Support(
                "it",
                kind,
                Polyline.straight(new Point(0, 0, 3), end),
                diameterM,
                tipDiameterM,
                material,
                Bearing.UNSTATED);
    }

    private static Support branch(double lengthM, double diameterM, double tipDiameterM) {
        return straight(SupportKind.BRANCH, Material.BARK, new Point(lengthM, 0, 3), diameterM, tipDiameterM);
    }

    private static Support rope(Point... points) {
        return new Support("it", SupportKind.ROPE, new Polyline(List.of(points)), 0.01, Material.FIBRE_ROPE);
    }

    /** M = F L / 4, W = pi d³ / 32 · (1 - 0.9⁴), stress = M / W: F = stress pi d³ (1 - 0.9⁴) / (8 L). */
    @Test
    @Tag("derived")
    void aTubeBetweenTwoEndsBreaksInItsMiddleByTheTextbookMoment() {
        Support tube = straight(SupportKind.BEAM, Material.GALVANISED_STEEL, new Point(4, 0, 3), 0.05, 0.05);
        double forceN = 0.5 * 235e6 * Math.PI * 0.05 * 0.05 * 0.05 * (1 - 0.6561) / (8 * 4);
        BearingLimit.Bending limit = assertInstanceOf(BearingLimit.Bending.class, LOADS.of(tube));
        assertEquals(forceN / G, limit.heaviestKg(), ROUNDING * forceN);
        assertEquals(2, limit.breaksAtM(), ROUNDING);
    }

    /** A weight at a quarter of the span makes F L 3/16 of moment, three quarters of that in the middle. */
    @Test
    @Tag("derived")
    void aBeamBearsFourThirdsAtAQuarterOfItsSpan() {
        Support log = straight(SupportKind.BEAM, Material.TIMBER, new Point(4, 0, 3), 0.1, 0.1);
        assertEquals(LOADS.of(log).heaviestKg() * 4 / 3, LOADS.at(log, 1).heaviestKg(), ROUNDING * 1e3);
    }

    /** F = stress pi d³ / (32 L) = 0.5 · 50e6 · pi · 0.06³ / (32 · 3) = 176.7 N, 18.0 kg. */
    @Test
    @Tag("derived")
    void aLivingBranchOfSixCentimetresBreaksUnderAnAdultAndNotUnderAnInfant() {
        BearingLimit limit = LOADS.of(branch(3, 0.06, 0.06));
        assertEquals(18.02, limit.heaviestKg(), 0.01); // two decimals are printed in the comment's working
        assertFalse(limit.bears(37));
        assertTrue(limit.bears(8));
    }

    /** Tip 2 cm, base 8 cm: weakest where the branch is 3 cm thick, a sixth of its length from the tip. */
    @Test
    @Tag("derived")
    void aTaperedBranchBreaksWhereItIsHalfAsThickAgainAsUnderTheWeight() {
        BearingLimit.Bending limit = assertInstanceOf(BearingLimit.Bending.class, LOADS.of(branch(6, 0.08, 0.02)));
        assertEquals(5, limit.breaksAtM(), ROUNDING);
        double forceN = 0.5 * 50e6 * Math.PI * 0.03 * 0.03 * 0.03 / (32 * 1);
        assertEquals(forceN / G, limit.heaviestKg(), ROUNDING * forceN);
    }

    @Test
    void noPlaceOfATaperedMemberIsWeakerThanAFineSearchFinds() {
        for (double tipM : new double[] {0.02, 0.05, 0.07}) {
            double least = Double.POSITIVE_INFINITY;
            for (int i = 0; i < 2000; i++) {
                double x = 6 * i / 2000.0;
                double d = 0.08 + (tipM - 0.08) * x / 6;
                least = Math.min(least, 0.5 * 50e6 * Math.PI * d * d * d / (32 * (6 - x)));
            }
            // the stress is flat at its greatest: steps of 3 mm miss it by less than a thousandth
            assertEquals(least / G, LOADS.of(branch(6, 0.08, tipM)).heaviestKg(), 1e-3 * least / G);
        }
    }

    @Test
    void aThickerShorterSteeperMemberBearsMoreAndABodyFartherOutLess() {
        double before = 0;
        for (double diameterM = 0.03; diameterM < 0.3; diameterM += 0.01) {
            double now = LOADS.of(branch(3, diameterM, 0.03)).heaviestKg();
            assertTrue(now >= before);
            before = now;
        }
        double nearer = Double.POSITIVE_INFINITY;
        for (double alongM = 0.1; alongM <= 3; alongM += 0.1) {
            double now = LOADS.at(branch(3, 0.08, 0.03), alongM).heaviestKg();
            assertTrue(now <= nearer);
            nearer = now;
        }
        Support steep = straight(SupportKind.BRANCH, Material.BARK, new Point(1.8, 0, 5.4), 0.06, 0.06);
        // 3 m long, 1.8 m of it level: the lever is 0.6 of the level branch's
        assertEquals(
                LOADS.of(branch(3, 0.06, 0.06)).heaviestKg() / 0.6,
                LOADS.of(steep).heaviestKg(),
                1e-6);
    }

    @Test
    void aTaperedBeamIsWeakestBeyondItsMiddleTowardsTheThinEnd() {
        Support beam = straight(SupportKind.BEAM, Material.TIMBER, new Point(4, 0, 3), 0.12, 0.06);
        BearingLimit.Bending limit = assertInstanceOf(BearingLimit.Bending.class, LOADS.of(beam));
        assertTrue(limit.loadAtM() > 2);
        assertTrue(limit.heaviestKg() < LOADS.at(beam, 2).heaviestKg());
    }

    /** Legs 3-4-5: 4 m to each side, 3 m down, so T = P / (2 · 3/5); a rope without stretch. */
    @Test
    @Tag("derived")
    void aSaggingRopeIsPulledByTheWeightOverTwiceTheSineOfItsLegs() {
        Strengths stiff = new Strengths(235, 45, 50, 4, 0.5, new RopeStrength(200, 7, 0));
        BearingLimit.Tension limit = assertInstanceOf(
                BearingLimit.Tension.class,
                new BearingLoad(stiff, Elasticities.standard())
                        .of(rope(new Point(0, 0, 5), new Point(4, 0, 2), new Point(8, 0, 5))));
        assertEquals(5 / 6.0, limit.tensionPerLoad(), ROUNDING);
        assertEquals(20000 / 7.0 / (5 / 6.0) / G, limit.heaviestKg(), 1e-6);
    }

    /** With sag share f the legs' sine is 2 f / sqrt(1 + 4 f²), so T / P = sqrt(1 + 4 f²) / (4 f). */
    @Test
    @Tag("derived")
    void theLessARopeSagsTheMoreItIsPulled() {
        double before = 0;
        for (double share : new double[] {0.3, 0.2, 0.1, 0.05, 0.01}) {
            double perLoad = RopeTension.perLoad(
                    new Polyline(List.of(new Point(0, 0, 9), new Point(5, 0, 9 - 10 * share), new Point(10, 0, 9))), 0);
            assertEquals(Math.sqrt(1 + 4 * share * share) / (4 * share), perLoad, 1e-9 * perLoad);
            assertTrue(perLoad > before);
            before = perLoad;
        }
    }

    @Test
    void aHangingRopeBearsTheWeightItselfAndATightOneOnlyByStretching() {
        assertEquals(1, RopeTension.perLoad(Polyline.straight(new Point(0, 0, 5), new Point(0, 0, 1)), 0.02));
        Polyline level = Polyline.straight(new Point(0, 0, 5), new Point(6, 0, 5));
        assertEquals(Double.POSITIVE_INFINITY, RopeTension.perLoad(level, 0));
        // cos a = 1/1.02, sin a = 0.1971, T / P = 1 / (2 · 0.1971) = 2.537 to the digits printed
        assertEquals(2.537, RopeTension.perLoad(level, 0.02), 5e-4);
    }

    @Test
    void whatIsStatedGoesBeforeTheFormula() {
        Bearing stated = new Bearing(OptionalDouble.empty(), OptionalDouble.of(12), false);
        Polyline axis = Polyline.straight(new Point(0, 0, 0), new Point(0, 0, 3));
        for (SupportKind kind : SupportKind.values()) {
            Support support = new Support("it", kind, axis, 0.5, 0.5, Material.TIMBER, stated);
            assertEquals(new BearingLimit.Stated(12), LOADS.of(support));
        }
    }

    @Test
    void uprightPolesTrunksLaddersAndHosesAreNotLimited() {
        for (SupportKind kind : List.of(SupportKind.POLE, SupportKind.TRUNK, SupportKind.LADDER)) {
            assertInstanceOf(
                    BearingLimit.Unlimited.class,
                    LOADS.of(straight(kind, Material.TIMBER, new Point(0, 0, 9), 0.05, 0.05)));
        }
        Support hose = new Support(
                "it",
                SupportKind.ROPE,
                rope(new Point(0, 0, 5), new Point(6, 0, 5)).axis(),
                0.06,
                Material.FIRE_HOSE);
        assertTrue(LOADS.of(hose).bears(1e6));
        assertFalse(LOADS.of(straight(SupportKind.POLE, Material.TIMBER, new Point(4, 0, 9), 0.05, 0.05))
                .bears(80));
    }

    @Test
    void everyStrengthIsAParameterWithinItsRangeAndNamedOnce() {
        var parameters = Strengths.standard().parameters();
        assertEquals(8, parameters.stream().map(p -> p.name()).distinct().count());
        parameters.forEach(p -> assertTrue(p.low() <= p.value() && p.value() <= p.high(), p.name()));
    }
}
