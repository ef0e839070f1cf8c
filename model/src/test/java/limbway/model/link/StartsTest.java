package limbway.model.link;

import java.util.List;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.body.BodyCatalogue;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.ResourceKind;
import limbway.model.enclosure.Support;
import limbway.model.geometry.Point;
import limbway.model.graph.GraphSettings;
import limbway.model.graph.RouteGraph;
import limbway.model.route.ReverseTree;
import limbway.model.scene.Scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

class StartsTest {

    /** The cup hangs free and is used from two masts and a rope; the nest is on a deck that falls with its mast. */
    private static Enclosure yard() {
        return Scene.yard(24, 20)
                .pole("west", 6, 10, 6)
                .pole("prop", 6.6, 10.4, 6)
                .pole("east", 14, 10, 6)
                .deck("stand", 13, 9, 15, 11, 4)
                .rope("line", new Point(6, 10, 5.03), new Point(14, 10, 5.03))
                .resource("cup", ResourceKind.WATER, new Point(6.3, 10, 4.8), "")
                .resource("nest", ResourceKind.NEST, new Point(13.5, 10, 4), "stand")
                .build();
    }

    private static WhatIf whatIf() {
        return WhatIfTest.whatIf(
                yard(), List.of(BodyCatalogue.standard().find("adult female").orElseThrow()));
    }

    @Test
    @Tag("derived")
    void whoIsAtAPlaceIsThereAfterAnyFall() {
        WhatIf whatIf = whatIf();
        WayCosts[] before = whatIf.before().toArray(WayCosts[]::new);
        int checked = 0;
        for (Support support : yard().supports()) {
            List<WayCosts> after = whatIf.compiled(Fall.of(yard(), support.id()).left());
            for (int i = 0; i < before.length; i++) {
                assertTrue(
                        after.get(i).leadsOffGround() || after.get(i).overMilliJ() != ReverseTree.UNREACHABLE,
                        support.id() + ", " + whatIf.errands().get(i));
                if (before[i].offMilliJ() == 0) {
                    assertEquals(
                            0,
                            after.get(i).offMilliJ(),
                            support.id() + ", " + whatIf.errands().get(i));
                    checked++;
                }
            }
        }
        assertTrue(checked >= 6, "errands of no length: " + checked);
    }

    @Test
    void aHoldOnWhatFellGivesWayToTheNearestOfItsPlace() {
        GraphSettings settings = GraphSettings.forBodies(
                List.of(BodyCatalogue.standard().find("adult female").orElseThrow()));
        RouteGraph before = RouteGraph.compile(yard(), settings);
        RouteGraph after = RouteGraph.compile(Fall.of(yard(), "line").left(), settings);
        HoldsByPlace places = new HoldsByPlace(after);
        Starts starts = new Starts(before, after);
        int gone = 0;
        for (int hold : before.useHolds(0)) {
            int start = starts.of(hold);
            assertNotEquals(HoldsByPlace.NONE, start);
            assertTrue(after.place(start).distanceM(before.place(hold)) <= 0.6, "hold " + hold);
            gone += places.at(before.place(hold)) == HoldsByPlace.NONE ? 1 : 0;
        }
        assertTrue(gone > 0, "no hold is gone");
    }

    @Test
    void fromAPlaceThatFallsOneStartsOnTheGroundBelowIt() {
        GraphSettings settings = GraphSettings.forBodies(
                List.of(BodyCatalogue.standard().find("adult female").orElseThrow()));
        RouteGraph before = RouteGraph.compile(yard(), settings);
        RouteGraph after = RouteGraph.compile(Fall.of(yard(), "east").left(), settings);
        Starts starts = new Starts(before, after);
        for (int hold : before.useHolds(1)) {
            Point start = after.place(starts.of(hold));
            assertEquals(0, start.zM(), 1e-9);
            assertTrue(start.planDistanceM(new Point(13.5, 10, 0)) < 1.5, start.toString());
        }
    }
}
