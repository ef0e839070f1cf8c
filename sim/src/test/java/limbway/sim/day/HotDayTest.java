package limbway.sim.day;

import java.util.Collections;
import java.util.List;

import org.junit.jupiter.api.Test;

import limbway.model.enclosure.Cover;
import limbway.model.enclosure.CoverKind;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.ResourceKind;
import limbway.model.enclosure.Shading;
import limbway.model.geometry.Facet;
import limbway.model.geometry.Point;
import limbway.model.graph.RouteGraph;
import limbway.model.study.Climate;
import limbway.model.weather.MonthlyWeather;
import limbway.sim.Runs;
import limbway.sim.Yard;
import limbway.sim.animal.HeatNeedSettings;
import limbway.sim.habitat.Habitat;
import limbway.sim.habitat.Passages;
import limbway.sim.habitat.SunlitWays;
import limbway.sim.habitat.Warmth;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Ledger;
import limbway.sim.journal.Motive;
import limbway.sim.journal.Stay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Two shelters of which one has a roof, and a rope that hangs in the sun over shaded ground. */
class HotDayTest {

    private static final MonthlyWeather HOT =
            new MonthlyWeather(Collections.nCopies(12, 34.0), Collections.nCopies(12, 24.0), 0.5, 3);
    private static final MonthlyWeather COLD =
            new MonthlyWeather(Collections.nCopies(12, -5.0), Collections.nCopies(12, -12.0), 0.5, 3);
    private static final long NOON_MS = 12 * 3_600_000;
    private static final long HOUR_MS = 3_600_000;

    private static Yard yard() {
        return new Yard()
                .mast("a", 5, 5, 6)
                .deck("deck-a", 5, 5, 3)
                .mast("b", 15, 5, 6)
                .deck("deck-b", 15, 5, 3)
                .rope("rope", 5, 5, 3.4, 15, 5, 3.4)
                .on("nest", ResourceKind.NEST, "deck-a", 4.6, 5.4, 3, 1)
                .on("tray", ResourceKind.FOOD, "deck-b", 15.4, 5.4, 3, 1)
                .at("water", ResourceKind.WATER, 10, 12, 0, 1)
                .at("open", ResourceKind.SHADE, 8, 14, 0, 2)
                .at("roofed", ResourceKind.SHADE, 22, 14, 0, 2)
                .animal("A", "adult female", 1)
                .feed("tray", "08:00", 4000)
                .feed("tray", "13:00", 4000)
                .sharpness(2);
    }

    private static Cover roof(String id, double x0, double y0, double x1, double y1, double z) {
        return new Cover(
                id,
                CoverKind.ROOF,
                new Facet(List.of(
                        new Point(x0, y0, z), new Point(x1, y0, z), new Point(x1, y1, z), new Point(x0, y1, z))),
                0);
    }

    private static Habitat built(Yard yard) {
        Enclosure bare = yard.build().layout().enclosure();
        return yard.build(bare.withShading(new Shading(
                List.of(roof("shelter", 18, 10, 26, 18, 2), roof("awning", 2, 0, 18, 10, 2)), List.of(), List.of())));
    }

    private static long restedMs(Journal journal, Habitat habitat, String place) {
        int resource = habitat.graph().resourceNumber(place);
        long sum = 0;
        for (Stay stay : journal.stays()) {
            if (stay.resource() == resource && stay.motive() != Motive.NIGHT) {
                sum += stay.endMs() - stay.startMs();
            }
        }
        return sum;
    }

    @Test
    void onHotDaysItRestsUnderTheRoofThoughTheOpenShelterIsNearer() {
        Habitat mild = built(yard());
        Habitat hot = built(yard().climate(new Climate(HOT, 0)));
        Journal mildDays = Runs.once(mild, 10, 1);
        Journal hotDays = Runs.once(hot, 10, 1);
        Ledger.check(hotDays);
        long roofed = restedMs(hotDays, hot, "roofed");
        assertTrue(roofed > 2 * restedMs(mildDays, mild, "roofed"), roofed + " ms under the roof when it is hot");
        assertTrue(roofed > 2 * restedMs(hotDays, hot, "open"), "more than in the open shelter");
        assertTrue(hotDays.trips().stream().anyMatch(trip -> trip.motive() == Motive.HEAT));
        assertTrue(mildDays.trips().stream().noneMatch(trip -> trip.motive() == Motive.HEAT));
    }

    @Test
    void onColdDaysWeatherChangesNothing() {
        Journal without = Runs.once(built(yard()), 5, 1);
        Journal cold = Runs.once(built(yard().climate(new Climate(COLD, 300))), 5, 1);
        Runs.assertAlike(without, cold);
    }

    @Test
    void atNoonTheRoofIsFeltAndAtNightItIsNot() {
        Habitat habitat = built(yard().climate(new Climate(HOT, 0)));
        Warmth warmth = habitat.warmth(Runs.DATE, 1);
        Passages passages = habitat.passages(Yard.body("adult female")).get(0);
        RouteGraph graph = habitat.graph();
        int open = passages.startAt(graph.useHolds(graph.resourceNumber("open"))[0]);
        int roofed = passages.startAt(graph.useHolds(graph.resourceNumber("roofed"))[0]);
        int noon = (int) (NOON_MS / warmth.stepMs());
        assertTrue(warmth.operativeC(open, noon) > warmth.operativeC(roofed, noon) + 10);
        // at night the roof hides some of the cold sky
        double warmer = warmth.operativeC(roofed, 0) - warmth.operativeC(open, 0);
        assertTrue(warmer > 0 && warmer < 5, warmer + " K warmer under the roof");
    }

    @Test
    void theSunlitRopeLosesToTheShadedGroundAtNoonOnlyIfTheScenarioSaysSo() {
        HeatNeedSettings settings = HeatNeedSettings.GROUP.standard();
        Habitat habitat = built(yard().climate(new Climate(HOT, 300)));
        var body = Yard.body("adult female");
        Passages passages = habitat.passages(body).get(0);
        SunlitWays sun =
                habitat.sunlitWays(body, Runs.DATE, 1, settings::trouble).get(0);
        RouteGraph graph = habitat.graph();
        int passage = passages.passage(
                passages.startAt(graph.useHolds(graph.resourceNumber("nest"))[0]), graph.resourceNumber("tray"));
        double atNoon = share(passages, sun, passage, NOON_MS);
        double atNight = share(passages, sun, passage, HOUR_MS);
        assertEquals(passages.ways(passage).offGroundShare(), atNight);
        assertTrue(atNoon < atNight - 0.1, atNoon + " at noon, " + atNight + " at night");
        assertTrue(sun.discomfortJ(passages, passage, true, NOON_MS)
                > 2 * sun.discomfortJ(passages, passage, false, NOON_MS));
        Habitat notSaid = built(yard().climate(new Climate(HOT, 0)));
        assertTrue(notSaid.sunlitWays(body, Runs.DATE, 1, settings::trouble).stream()
                .noneMatch(SunlitWays::areMinded));
    }

    private static double share(Passages passages, SunlitWays sun, int passage, long ms) {
        return passages.offGroundShare(
                passage, sun.discomfortJ(passages, passage, true, ms), sun.discomfortJ(passages, passage, false, ms));
    }
}
