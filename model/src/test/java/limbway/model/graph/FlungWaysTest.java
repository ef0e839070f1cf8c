package limbway.model.graph;

import java.util.EnumSet;
import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.body.Body;
import limbway.model.body.BodyCatalogue;
import limbway.model.body.LocomotorMode;
import limbway.model.enclosure.Bearing;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Material;
import limbway.model.enclosure.ResourceKind;
import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportKind;
import limbway.model.energy.EnergySettings;
import limbway.model.energy.SwayCost;
import limbway.model.energy.SwaySettings;
import limbway.model.geometry.Point;
import limbway.model.geometry.Polyline;
import limbway.model.route.ChoiceSharpness;
import limbway.model.route.Routes;
import limbway.model.route.Search;
import limbway.model.route.Way;
import limbway.model.scene.Scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Sways, leaps, drops, arm-swinging and walks on two feet in enclosures small enough to reckon by hand. */
class FlungWaysTest {

    private static Body body(String name) {
        return BodyCatalogue.standard().find(name).orElseThrow();
    }

    private static Search search(Enclosure enclosure, Body body) {
        RouteGraph graph = RouteGraph.compile(enclosure, GraphSettings.forBodies(List.of(body)));
        Routes routes = new Routes(
                graph, MoveCosts.of(graph, body, EnergySettings.standard()), ChoiceSharpness.GROUP.standard());
        return routes.find(graph.useHolds(0)[0], 1);
    }

    private static Set<LocomotorMode> modes(Enclosure enclosure, Body body) {
        RouteGraph graph = RouteGraph.compile(enclosure, GraphSettings.forBodies(List.of(body)));
        MoveCosts costs = MoveCosts.of(graph, body, EnergySettings.standard());
        Set<LocomotorMode> found = EnumSet.noneOf(LocomotorMode.class);
        for (int m = 0; m < graph.moveCount(); m++) {
            if (costs.milliJ(m) != MoveCosts.IMPOSSIBLE) {
                found.add(graph.mode(m));
            }
        }
        return found;
    }

    private static Way offGround(Enclosure enclosure, Body body) {
        return ((Search.Reached) search(enclosure, body)).offGround().orElseThrow();
    }

    private static Enclosure poles(double gapM, boolean sways) {
        Scene scene = Scene.yard(20, 10);
        Enclosure fixed = scene.pole("far", 5 + gapM + 0.08, 5, 6)
                .resource("nest", ResourceKind.NEST, new Point(5, 5, 6), "near")
                .resource("food", ResourceKind.FOOD, new Point(5 + gapM + 0.08, 5, 6), "far")
                .build();
        Support near = new Support(
                "near",
                SupportKind.POLE,
                Polyline.straight(new Point(5, 5, 0), new Point(5, 5, 6)),
                0.08,
                0.08,
                Material.TIMBER,
                new Bearing(OptionalDouble.of(150), OptionalDouble.empty(), sways));
        return fixed.withSupports(List.of(near, fixed.supports().get(0)));
    }

    /** A gap of 3 m less a reach of 1.5 m is a swing of 1.5 m at 150 N/m: 1,335 J but for the damping's share, as published. */
    @Test
    @Tag("derived")
    void aFreePoleIsSwayedAcrossAtTheCostOfTheFormula() {
        Body female = body("adult female");
        Way way = offGround(poles(3, true), female);
        double expectedJ = SwayCost.energyJ(
                150,
                3 - female.gapReachM(),
                SwaySettings.GROUP.standard().cycles(),
                SwaySettings.GROUP.standard().damping(),
                SwaySettings.GROUP.standard().efficiency());
        // the swing is at its cheapest at the top, so nothing else is done on the way; gaps are kept in single
        // precision
        assertEquals(expectedJ, way.energy().part(LocomotorMode.SWAY) / 1000.0, 0.01);
        assertEquals(way.milliJ(), way.energy().part(LocomotorMode.SWAY));
    }

    @Test
    void aPoleThatIsTiedOrTooFarIsNotSwayed() {
        assertFalse(modes(poles(3, false), body("adult female")).contains(LocomotorMode.SWAY));
        assertFalse(modes(poles(3.8, true), body("adult female")).contains(LocomotorMode.SWAY));
    }

    private static Enclosure apart(double gapM, double farTopM) {
        return Scene.yard(30, 10)
                .beam("near", 0.05, new Point(5, 3, 8), new Point(5, 7, 8))
                .beam("far", 0.05, new Point(5.05 + gapM, 3, farTopM), new Point(5.05 + gapM, 7, farTopM))
                .resource("nest", ResourceKind.NEST, new Point(5, 5, 8), "near")
                .resource("food", ResourceKind.FOOD, new Point(5.05 + gapM, 5, farTopM), "far")
                .build();
    }

    /** At 8.3 m/s the level range is 7.02 m; 9 m need a landing 9²g/(2·8.3²) - 8.3²/(2g) = 2.26 m lower. */
    @Test
    @Tag("derived")
    void aGibbonLeapsSevenMetresLevelAndNineWithADrop() {
        Body gibbon = body("white-handed gibbon");
        assertTrue(modes(apart(6.9, 8), gibbon).contains(LocomotorMode.LEAP));
        assertFalse(modes(apart(7.2, 8), gibbon).contains(LocomotorMode.LEAP));
        assertFalse(modes(apart(8.95, 5.9), gibbon).contains(LocomotorMode.LEAP));
        assertTrue(modes(apart(8.95, 5.6), gibbon).contains(LocomotorMode.LEAP));
        assertFalse(modes(apart(6.9, 8), body("adult female")).contains(LocomotorMode.LEAP));
    }

    @Test
    void aPoleIsLeaptToLowerDownWhereLevelItIsTooFar() {
        Body gibbon = body("white-handed gibbon");
        Enclosure masts = Scene.yard(30, 10)
                .pole("near", 5, 5, 9)
                .pole("far", 13.9, 5, 9)
                .resource("nest", ResourceKind.NEST, new Point(5, 5, 8), "near")
                .resource("food", ResourceKind.FOOD, new Point(13.9, 5, 6), "far")
                .build();
        Body gripping = new Body(
                "gibbon with large hands", 5.9, 8, 1.4, 1.1, 1.2, 9, 8.3, 0.1, 0.5, 0.2, true, gibbon.speeds());
        assertTrue(offGround(masts, gripping).energy().part(LocomotorMode.LEAP) > 0);
    }

    @Test
    void whoDropsPaysNoLessThanForClimbingDown() {
        Enclosure beam = Scene.yard(10, 10)
                .beam("beam", 0.05, new Point(3, 5, 2.8), new Point(7, 5, 2.8))
                .resource("nest", ResourceKind.NEST, new Point(5, 5, 2.8), "beam")
                .food("food", 5, 5, 0)
                .build();
        Body juvenile = body("juvenile");
        Way way = ((Search.Reached) search(beam, juvenile)).cheapest();
        double descentJ = 2.8
                * new limbway.model.energy.ModeCost(EnergySettings.standard())
                        .jPerM(juvenile, LocomotorMode.VERTICAL_DESCENT, -90);
        assertEquals(descentJ, way.milliJ() / 1000.0, 0.01);
        assertTrue(way.energy().part(LocomotorMode.DROP) > 0);
        assertTrue(search(beam, body("adult female")) instanceof Search.Unreachable);
    }

    @Test
    void aHandRailMakesAWalkwayOfWhatIsNeitherGrippedNorBroad() {
        Body female = body("adult female");
        Scene scene = Scene.yard(10, 10).beam("feet", 0.18, new Point(2, 5, 4), new Point(8, 5, 4));
        assertFalse(modes(scene.build(), female).contains(LocomotorMode.BIPEDAL_WALK));
        Enclosure railed = scene.beam("hand", 0.04, new Point(2, 5, 5.4), new Point(8, 5, 5.4))
                .build();
        assertTrue(modes(railed, female).contains(LocomotorMode.BIPEDAL_WALK));
    }

    @Test
    void gibbonsSwingAlongARopeAndOrangutansClamber() {
        Enclosure rope = Scene.yard(10, 10)
                .rope("rope", new Point(2, 5, 4), new Point(8, 5, 4))
                .build();
        assertTrue(modes(rope, body("siamang")).contains(LocomotorMode.BRACHIATE));
        assertFalse(modes(rope, body("adult female")).contains(LocomotorMode.BRACHIATE));
    }
}
