package limbway.model.shade;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import limbway.model.enclosure.Cover;
import limbway.model.enclosure.CoverKind;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Shading;
import limbway.model.geometry.Facet;
import limbway.model.geometry.Point;
import limbway.model.scene.Scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

class RoofSearchTest {

    private static final ShadeCalendar HOURLY = new ShadeCalendar(2026, 60, ZoneOffset.ofHours(8));
    /** Small enough to try every roof by a whole audit. */
    private static final RoofFamily SMALL = new RoofFamily(List.of(1.5, 2.5), 1, 4, 1, 0, 3);

    private static Cover roof(String id, double x0, double y0, double x1, double y1, double z) {
        return new Cover(
                id,
                CoverKind.ROOF,
                new Facet(List.of(
                        new Point(x0, y0, z), new Point(x1, y0, z), new Point(x1, y1, z), new Point(x0, y1, z))),
                0);
    }

    /** Three decks near each other under roofs laid at random. */
    private static Enclosure layout(long seed) {
        SplittableRandom chance = new SplittableRandom(seed);
        Enclosure bare = Scene.yard(20, 20)
                .deck("west", 4, 8, 6, 10, 3)
                .deck("middle", 8, 8, 10, 10, 2.5)
                .deck("east", 12, 9, 14, 11, 3.2)
                .build();
        List<Cover> roofs = new ArrayList<>();
        for (int i = 0; i < 3; i++) {
            double x = 3 + 9 * chance.nextDouble();
            double y = 7 + 3 * chance.nextDouble();
            roofs.add(roof("old " + i, x, y, x + 3 + 3 * chance.nextDouble(), y + 3, 5 + chance.nextDouble()));
        }
        return bare.withShading(new Shading(roofs, List.of(), List.of()));
    }

    /** The smallest area of all roofs with so many screens, each put through the whole audit; infinite if none will do. */
    private static double smallestByAudit(Enclosure layout, FlatJudge judge, int screens, double belowM2) {
        double smallest = belowM2;
        for (var deck : layout.platforms()) {
            DeckFrame frame = new DeckFrame(deck);
            RoofSizes sizes = new RoofSizes(SMALL, frame, screens);
            for (RoofSizes.Size size : sizes.rising(screens)) {
                for (RoofPlan plan : sizes.places(size)) {
                    Roof roof = Roof.of(deck.id(), frame, plan);
                    if (roof.areaM2() < smallest - 1e-9
                            && judge.audit(roof.addedTo(layout)).breachMinutes() == 0) {
                        smallest = roof.areaM2();
                    }
                }
            }
        }
        return smallest;
    }

    @ParameterizedTest
    @CsvSource({"1, 60", "2, 60", "3, 60", "4, 50", "5, 50", "6, 45", "7, 40", "8, 55"})
    void theRoofIsAsSmallAsTheSmallestThatTheWholeAuditLetsPass(long seed, double lowestSunDeg) {
        Enclosure layout = layout(seed);
        FlatJudge judge = new FlatJudge(layout, new ShadeRule(2, 0.75, 0.3, lowestSunDeg), HOURLY);
        RoofAnswer answer = RoofSearch.of(layout, judge.audit(layout), SMALL, judge);
        double infinite = Double.POSITIVE_INFINITY;
        if (answer instanceof RoofAnswer.Found found) {
            int screens = found.roof().screens().size();
            // Areas are sums of products of exact steps and heights: only rounding may differ.
            assertEquals(
                    smallestByAudit(layout, judge, screens, infinite),
                    found.roof().areaM2(),
                    1e-9);
            for (int fewer = 0; fewer < screens; fewer++) {
                assertEquals(infinite, smallestByAudit(layout, judge, fewer, infinite));
            }
        } else if (answer instanceof RoofAnswer.NoneFound none) {
            for (int screens = 0; screens <= 3; screens++) {
                assertEquals(infinite, smallestByAudit(layout, judge, screens, infinite));
            }
            assertTrue(none.after().breachMinutes() > 0);
        }
        System.out.println(seed + " " + answer.getClass().getSimpleName()
                + (answer instanceof RoofAnswer.Found f
                        ? f.roof().screens().size() + " " + f.roof().areaM2() + " "
                                + f.roof().platform() + " " + f.minutesBefore()
                        : answer instanceof RoofAnswer.NoneFound n
                                ? " " + n.minutesBefore() + " -> " + n.after().breachMinutes()
                                : ""));
    }

    @Test
    void whereTheRuleIsKeptThereIsNothingToMend() {
        Enclosure layout = layout(1)
                .withShading(new Shading(List.of(roof("everything", -90, -90, 120, 120, 4)), List.of(), List.of()));
        FlatJudge judge = new FlatJudge(layout, ShadeRule.standard(), HOURLY);
        assertInstanceOf(RoofAnswer.NothingToMend.class, RoofSearch.of(layout, judge.audit(layout), SMALL, judge));
    }

    /** Nothing is shaded, so every breach lacks two platforms, which stand too far apart for one roof. */
    @Test
    @Tag("derived")
    void oneRoofCannotShadeTwoPlatformsThatStandFarApart() {
        Enclosure layout = Scene.yard(60, 20)
                .deck("a", 2, 2, 4, 4, 3)
                .deck("b", 50, 2, 52, 4, 3)
                .build();
        FlatJudge judge = new FlatJudge(layout, new ShadeRule(2, 0.75, 0.3, 50), HOURLY);
        ShadeYear year = judge.audit(layout);
        RoofAnswer.NoneFound none =
                assertInstanceOf(RoofAnswer.NoneFound.class, RoofSearch.of(layout, year, SMALL, judge));
        assertEquals(year.sunMinutes(), none.after().breachMinutes());
        assertEquals(year.sunMinutes(), none.minutesOfTwo());
        assertEquals(0, none.shortfalls().get(0).mendableMinutes());
        assertTrue(none.lowestSunDeg() >= 50 && none.highestSunDeg() <= 90);
    }

    /**
     * The sun above 60 degrees in the tropics, one deck shaded for good: the other needs 12 of 16 points. All 16 are lit
     * always, so 12 are missing at each moment, and every minute can be mended there and nowhere else.
     */
    @Test
    @Tag("derived")
    void theShortfallCountsPointsAndMinutes() {
        Enclosure layout = Scene.yard(60, 20)
                .deck("shaded", 2, 2, 4, 4, 3)
                .deck("bare", 50, 2, 52, 4, 3)
                .build()
                .withShading(new Shading(List.of(roof("old", -8, -8, 14, 14, 5)), List.of(), List.of()));
        FlatJudge judge = new FlatJudge(layout, new ShadeRule(2, 0.75, 0.3, 60), HOURLY);
        ShadeYear year = judge.audit(layout);
        RoofAnswer answer = RoofSearch.of(layout, year, RoofFamily.standard(), judge);
        assertEquals(
                new Shortfall("bare", year.sunMinutes(), 0, 12),
                answer.shortfalls().get(0));
        assertEquals(
                new Shortfall("shaded", 0, year.sunMinutes(), 0),
                answer.shortfalls().get(1));
        RoofAnswer.Found found = assertInstanceOf(RoofAnswer.Found.class, answer);
        assertEquals("bare", found.roof().platform());
        assertEquals(0, found.roof().screens().size());
    }
}
