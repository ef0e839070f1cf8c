package limbway.model.shade;

import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import limbway.model.enclosure.Cover;
import limbway.model.enclosure.CoverKind;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Platform;
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
    private static final RoofFamily SMALL = new RoofFamily(List.of(0.75, 1.25), 1, 1, 4, 1, 0, 3);

    private static Cover roof(String id, double x0, double y0, double x1, double y1, double z) {
        return new Cover(
                id,
                CoverKind.ROOF,
                new Facet(List.of(
                        new Point(x0, y0, z), new Point(x1, y0, z), new Point(x1, y1, z), new Point(x0, y1, z))),
                0);
    }

    /** Three decks near each other: the first under a roof for good, the others under roofs laid at random. */
    private static Enclosure layout(long seed) {
        SplittableRandom chance = new SplittableRandom(seed);
        Enclosure bare = Scene.yard(20, 20)
                .deck("west", 4, 8, 6, 10, 3)
                .deck("middle", 8, 8, 10, 10, 2.5)
                .deck("east", 12, 9, 14, 11, 3.2)
                .build();
        List<Cover> roofs = new ArrayList<>();
        roofs.add(roof("for good", 0, 3, 7.5, 15, 3.5));
        for (int i = 0; i < 2; i++) {
            double x = 6 + 6 * chance.nextDouble();
            double y = 6 + 3 * chance.nextDouble();
            roofs.add(roof("old " + i, x, y, x + 2 + 4 * chance.nextDouble(), y + 4, 5 + chance.nextDouble()));
        }
        return bare.withShading(new Shading(roofs, List.of(), List.of()));
    }

    /**
     * The smallest area of all roofs with so many screens, each set up as covers and tried ray by ray; infinite if none will
     * do. Only moments of breach are looked at again: a roof takes no shade away.
     */
    private static double smallestByRays(Enclosure layout, FlatJudge judge, ShadeYear year, int screens) {
        List<Integer> breaches = IntStream.range(
                        0, year.calendar().days() * year.calendar().slots())
                .filter(n -> year.isBreach(
                        n / year.calendar().slots(), n % year.calendar().slots()))
                .boxed()
                .toList();
        double smallest = Double.POSITIVE_INFINITY;
        for (Platform deck : layout.platforms()) {
            DeckFrame frame = new DeckFrame(deck);
            RoofSizes sizes = new RoofSizes(SMALL, frame, screens);
            for (RoofSizes.Size size : sizes.rising(screens)) {
                for (RoofPlan plan : sizes.places(size)) {
                    Roof roof = Roof.of(deck.id(), frame, plan);
                    if (roof.areaM2() < smallest - 1e-9 && judge.keepsRule(roof.addedTo(layout), breaches)) {
                        smallest = roof.areaM2();
                    }
                }
            }
        }
        return smallest;
    }

    @ParameterizedTest
    @CsvSource({
        "1, 40, 0",
        "2, 25, 0",
        "3, 25, 0",
        "4, 40, 0",
        "5, 25, 0",
        "6, 25, 0",
        "1, 12, 2",
        "4, 12, 1",
        "5, 12, 1",
        "9, 12, 2"
    })
    void theRoofIsAsSmallAsTheSmallestFoundByTryingThemAll(long seed, double lowestSunDeg, int screens) {
        Enclosure layout = layout(seed);
        FlatJudge judge = new FlatJudge(layout, new ShadeRule(2, 0.75, 0.3, lowestSunDeg), HOURLY);
        ShadeYear year = judge.audit(layout);
        RoofAnswer.Found found =
                assertInstanceOf(RoofAnswer.Found.class, RoofSearch.of(layout, year, SMALL, judge, ShadeProgress.NONE));
        assertEquals(screens, found.roof().screens().size());
        assertEquals(0, found.after().breachMinutes());
        // Areas are sums of products of exact steps and heights: only rounding may differ.
        double rounding = 1e-9;
        assertEquals(
                smallestByRays(layout, judge, year, found.roof().screens().size()),
                found.roof().areaM2(),
                rounding);
        for (int fewer = 0; fewer < found.roof().screens().size(); fewer++) {
            assertEquals(Double.POSITIVE_INFINITY, smallestByRays(layout, judge, year, fewer));
        }
    }

    @Test
    void whereTheRuleIsKeptThereIsNothingToMend() {
        Enclosure layout = layout(1)
                .withShading(new Shading(List.of(roof("everything", -90, -90, 120, 120, 4)), List.of(), List.of()));
        FlatJudge judge = new FlatJudge(layout, ShadeRule.standard(), HOURLY);
        assertInstanceOf(
                RoofAnswer.NothingToMend.class,
                RoofSearch.of(layout, judge.audit(layout), SMALL, judge, ShadeProgress.NONE));
    }

    @Test
    void whoStopsTheSearchIsToldThatThereIsNoAnswer() {
        Enclosure layout = layout(1);
        FlatJudge judge = new FlatJudge(layout, ShadeRule.standard(), HOURLY);
        ShadeYear year = judge.audit(layout);
        assertEquals(
                new RoofAnswer.Interrupted(year.breachMinutes()),
                RoofSearch.of(layout, ShadeSettings.standard(), year, SMALL, 1, (done, all) -> done < 2));
    }

    @Test
    void aRuleThatAsksForMorePlatformsThanThereAreIsKeptByNoRoof() {
        Enclosure layout = layout(1);
        int platforms = layout.platforms().size();
        FlatJudge judge = new FlatJudge(layout, new ShadeRule(platforms + 1, 0.75, 0.3, 5), HOURLY);
        assertEquals(
                new RoofAnswer.TooFewPlatforms(platforms + 1, platforms),
                RoofSearch.of(layout, judge.audit(layout), SMALL, judge, ShadeProgress.NONE));
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
        RoofAnswer.NoneFound none = assertInstanceOf(
                RoofAnswer.NoneFound.class, RoofSearch.of(layout, year, SMALL, judge, ShadeProgress.NONE));
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
        RoofAnswer answer = RoofSearch.of(layout, year, RoofFamily.standard(), judge, ShadeProgress.NONE);
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

    /** The same layout and rule, judged by the audit of the model, with trees' leaves and members as they are. */
    @ParameterizedTest
    @CsvSource({"1, 25", "4, 12", "5, 12"})
    void theAuditOfTheModelAgreesThatTheRoofEndsEveryBreach(long seed, double lowestSunDeg) {
        Enclosure layout = layout(seed);
        ShadeRule rule = new ShadeRule(2, 0.75, 0.3, lowestSunDeg);
        List<String> names = List.of("west", "middle", "east");
        ShadeSettings settings = ShadeSettings.standard();
        ShadeYear year = ShadeAudit.of(layout, settings, rule, HOURLY, names, 2, (done, all) -> true)
                .orElseThrow();
        assertTrue(year.breachMinutes() > 0);
        RoofAnswer.Found found = assertInstanceOf(
                RoofAnswer.Found.class,
                RoofSearch.of(layout, settings, year, RoofFamily.standard(), 2, ShadeProgress.NONE));
        ShadeYear after = ShadeAudit.of(
                        found.roof().addedTo(layout), settings, rule, HOURLY, names, 1, (done, all) -> true)
                .orElseThrow();
        assertEquals(0, after.breachMinutes());
    }
}
