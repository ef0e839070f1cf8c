package limbway.model.link;

import java.util.List;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.body.Body;
import limbway.model.body.BodyCatalogue;
import limbway.model.enclosure.Barrier;
import limbway.model.enclosure.BarrierKind;
import limbway.model.enclosure.Bearing;
import limbway.model.enclosure.Bounds;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.HotWire;
import limbway.model.enclosure.Material;
import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportKind;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.geometry.Polyline;
import limbway.model.scene.Scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

class CandidatesTest {

    private static final List<Body> FEMALE =
            List.of(BodyCatalogue.standard().find("adult female").orElseThrow());
    private static final Tie WEST = new Tie("west", "west at 4", new Point(8, 10, 4));
    private static final Tie EAST = new Tie("east", "east at 4", new Point(16, 10, 4));

    private static Scene scene() {
        return Scene.yard(24, 20).pole("west", 8, 10, 6).pole("east", 16, 10, 6);
    }

    private static LinkLimits limits(double longestM, double steepestDeg, double clearanceM) {
        return new LinkLimits(LinkKind.ROPE, 0.05, 1, longestM, steepestDeg, clearanceM, 1, false);
    }

    private static Limit broken(Enclosure enclosure, LinkLimits limits, Tie from, Tie to) {
        return new Fit(enclosure, FEMALE, limits)
                .firstBroken(new Candidate(LinkKind.ROPE, from, to, 0.05))
                .orElse(null);
    }

    @Test
    @Tag("derived")
    void aRopeHangsAtItsMiddleByItsSag() {
        // 5 % of 8 m in plan: 0.4 m below 4 m, so 3.6 m above the ground
        Enclosure enclosure = scene().build();
        assertEquals(null, broken(enclosure, limits(9, 30, 3.59), WEST, EAST));
        assertEquals(Limit.CLEARANCE, broken(enclosure, limits(9, 30, 3.61), WEST, EAST));
        assertEquals(Limit.LENGTH, broken(enclosure, limits(7.99, 30, 2.5), WEST, EAST));
        Tie high = new Tie("east", "east top", new Point(16, 10, 6));
        // atan (2 / 8) = 14.04°
        assertEquals(Limit.SLOPE, broken(enclosure, limits(9, 14, 2.5), WEST, high));
        assertEquals(null, broken(enclosure, limits(9, 14.1, 2.5), WEST, high));
    }

    @Test
    void nothingLeadsThroughWhatStandsThere() {
        assertEquals(Limit.BLOCKED, broken(scene().pole("between", 12, 10, 6).build(), limits(9, 30, 2.5), WEST, EAST));
        assertEquals(null, broken(scene().pole("between", 12, 10.3, 6).build(), limits(9, 30, 2.5), WEST, EAST));
        // the rope passes from 3.98 m to 3.6 m within the deck
        assertEquals(
                Limit.BLOCKED,
                broken(scene().deck("stand", 8.5, 9, 11, 11, 3.8).build(), limits(9, 30, 2.5), WEST, EAST));
        Barrier wall = new Barrier("wall", BarrierKind.WALL, Outline.rectangle(11.5, 0, 12, 20), 0, 5);
        assertEquals(
                Limit.BLOCKED,
                broken(
                        scene().build().withBounds(new Bounds(List.of(wall), List.of(), List.of())),
                        limits(9, 30, 2.5),
                        WEST,
                        EAST));
    }

    @Test
    void liveWireAndTheWayOutAreKeptFree() {
        HotWire wire =
                new HotWire.Strand("wire", Polyline.straight(new Point(12, 9.5, 3.6), new Point(12, 9.5, 6)), 0.6);
        assertEquals(
                Limit.WIRE,
                broken(
                        scene().build().withBounds(new Bounds(List.of(), List.of(wire), List.of())),
                        limits(9, 30, 2.5),
                        WEST,
                        EAST));
        // the top of the wall passes 1.2 m beside the rope, nearer than a female reaches (1.5 m)
        Barrier wall = new Barrier("wall", BarrierKind.WALL, Outline.rectangle(0, 11.2, 24, 11.5), 0, 3.6);
        assertEquals(
                Limit.ESCAPE,
                broken(
                        scene().build().withBounds(new Bounds(List.of(wall), List.of(), List.of())),
                        limits(9, 30, 2.5),
                        WEST,
                        EAST));
        // at the edge of the ground nothing is drawn that stops an animal
        Enclosure narrow = Scene.yard(24, 11.2)
                .pole("west", 8, 10, 6)
                .pole("east", 16, 10, 6)
                .build();
        assertEquals(Limit.ESCAPE, broken(narrow, limits(9, 30, 2.5), WEST, EAST));
    }

    @Test
    void whatGivesWayOrIsTooWeakIsNoAnchor() {
        Support weak = new Support(
                "weak",
                SupportKind.BEAM,
                Polyline.straight(new Point(8, 4, 4), new Point(16, 4, 4)),
                0.05,
                0.05,
                Material.TIMBER,
                new Bearing(OptionalDouble.empty(), OptionalDouble.of(20), false));
        Enclosure enclosure = scene().add(weak)
                .rope("line", new Point(8, 10, 5), new Point(16, 10, 5))
                .build();
        Candidates found = Candidates.of(enclosure, FEMALE, limits(9, 30, 2.5));
        assertEquals(1, found.tooWeak());
        assertFalse(found.all().isEmpty());
        assertTrue(found.all().stream()
                .noneMatch(link -> List.of(link.from().on(), link.to().on()).contains("line")));
        LinkLimits onRopes = new LinkLimits(LinkKind.ROPE, 0.05, 1, 9, 30, 2.5, 1, true);
        assertTrue(Candidates.of(enclosure, FEMALE, onRopes).ties() > found.ties());
        int refused =
                found.refused().values().stream().mapToInt(Integer::intValue).sum();
        assertEquals(found.pairs(), refused + found.all().size());
    }

    @Test
    void aLinkIsPastedAsItWasJudged() {
        Candidate pole = new Candidate(
                LinkKind.POLE, WEST, new Tie("stand", "stand at [0.9, -0.5]", new Point(16, 10, 4)), 0.08);
        assertEquals(
                "- {add: {beam: link-1, from: west at 4, to: \"stand at [0.9, -0.5]\", diameter: 0.08, material: timber}}",
                pole.scenarioLine("link-1"));
    }
}
