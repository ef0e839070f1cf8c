package limbway.sim.experiment.placement;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.enclosure.Barrier;
import limbway.model.enclosure.BarrierKind;
import limbway.model.enclosure.Bearing;
import limbway.model.enclosure.Bounds;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.HotWire;
import limbway.model.enclosure.Material;
import limbway.model.enclosure.Resource;
import limbway.model.enclosure.ResourceKind;
import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportKind;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.geometry.Polyline;
import limbway.model.study.Climate;
import limbway.model.study.Feeding;
import limbway.model.study.Variant;
import limbway.model.weather.MonthlyWeather;
import limbway.sim.Yard;
import limbway.sim.habitat.Habitat;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

class PlacingTest {

    private static final Habitat BASE = Yard.furnished().build();
    private final Variant layout = BASE.layout();

    private Sifted sift(PlacingRules rules, PlacingTask task, List<CandidatePlace> candidates) {
        return new CandidateSieve(rules, task, layout, BASE.bodies(), Optional.empty(), LocalDate.of(2026, 3, 21))
                .sift(candidates);
    }

    private static PlacingRules rules(OptionalDouble reachM, boolean hoist, boolean shaded) {
        return new PlacingRules(reachM, hoist, 0, OptionalDouble.empty(), shaded, true, 0);
    }

    private static final PlacingTask FOOD = PlacingTask.moving(ResourceKind.FOOD, List.of("hatch", "tray-mid"));

    @Test
    void candidatesStandAtTheSpacingAndSayWhereTheyAre() {
        List<CandidatePlace> all = CandidatePlaces.along(layout.enclosure(), 1);
        List<String> onMast = all.stream()
                .filter(candidate -> candidate.on().equals("mast-1"))
                .map(CandidatePlace::words)
                .toList();
        // 7 m high: the foot and the top are left out
        assertEquals(
                List.of("mast-1 at 1", "mast-1 at 2", "mast-1 at 3", "mast-1 at 4", "mast-1 at 5", "mast-1 at 6"),
                onMast);
        assertTrue(all.stream().anyMatch(candidate -> candidate.words().equals("deck-1")));
        for (CandidatePlace candidate : all) {
            assertEquals(
                    1,
                    all.stream()
                            .filter(other -> other.words().equals(candidate.words()))
                            .count());
        }
    }

    @Test
    void theReachOfKeepersLeavesOutWhatIsHigherUnlessThereIsAHoist() {
        List<CandidatePlace> candidates = List.of(
                new CandidatePlace("low", new Point(15, 4, 2), "mast-1"),
                new CandidatePlace("high", new Point(15, 4, 2.01), "mast-1"));
        Sifted sifted = sift(rules(OptionalDouble.of(2), false, false), FOOD, candidates);
        assertEquals(List.of(Set.of(), Set.of(PlacingRule.KEEPER_REACH)), sifted.broken());
        assertEquals(Set.of(PlacingRule.KEEPER_REACH), sifted.contradiction(2));
        assertEquals(1, sifted.left(EnumSet.of(PlacingRule.KEEPER_REACH)));
        assertEquals(Set.of(), sifted.contradiction(1));
        assertEquals(
                List.of(Set.of(), Set.of()),
                sift(rules(OptionalDouble.of(2), true, false), FOOD, candidates).broken());
    }

    @Test
    void twoRulesThatContradictEachOtherOnlyTogetherAreBothNamed() {
        Sifted sifted = new Sifted(List.of(
                EnumSet.of(PlacingRule.KEEPER_REACH),
                EnumSet.of(PlacingRule.SHADED),
                EnumSet.of(PlacingRule.LOAD),
                EnumSet.noneOf(PlacingRule.class)));
        assertEquals(Set.of(), sifted.contradiction(1));
        // each rule alone leaves three of the four, two of them two, all three one
        assertEquals(Set.of(PlacingRule.KEEPER_REACH, PlacingRule.LOAD), sifted.contradiction(3));
        assertEquals(Set.of(PlacingRule.KEEPER_REACH, PlacingRule.LOAD, PlacingRule.SHADED), sifted.contradiction(2));
    }

    @Test
    void hotWireBarriersAndWeakSupportsLeaveCandidatesOut() {
        Support weak = new Support(
                "weak",
                SupportKind.BEAM,
                Polyline.straight(new Point(8, 8, 3), new Point(12, 8, 3)),
                0.1,
                0.1,
                Material.TIMBER,
                new Bearing(OptionalDouble.empty(), OptionalDouble.of(100), false));
        List<Support> supports = new ArrayList<>(layout.enclosure().supports());
        supports.add(weak);
        Enclosure enclosure = layout.enclosure()
                .withSupports(supports)
                .withBounds(new Bounds(
                        List.of(new Barrier("wall", BarrierKind.WALL, Outline.rectangle(0, 0, 30, 0.2), 0, 4)),
                        List.of(new HotWire.Strand(
                                "wire", Polyline.straight(new Point(0, 19, 2), new Point(30, 19, 2)), 0.5)),
                        List.of()));
        Variant walled = new Variant("walled", "", enclosure, layout.keeping(), Set.of());
        PlacingRules rules = new PlacingRules(OptionalDouble.empty(), false, 0, OptionalDouble.of(20), false, true, 1);
        CandidateSieve sieve =
                new CandidateSieve(rules, FOOD, walled, BASE.bodies(), Optional.empty(), LocalDate.of(2026, 3, 21));
        List<CandidatePlace> candidates = List.of(
                new CandidatePlace("free", new Point(15, 10, 2), ""),
                new CandidatePlace("at the wire", new Point(15, 18.6, 2), ""),
                new CandidatePlace("beside the wire", new Point(15, 18.4, 2), ""),
                new CandidatePlace("at the wall", new Point(15, 1.1, 2), ""),
                new CandidatePlace("beside the wall", new Point(15, 1.3, 2), ""),
                // bears 100 kg: not the 20 kg of the place beside a flanged male
                new CandidatePlace("weak at 2", new Point(10, 8, 3), "weak"));
        assertEquals(
                List.of(
                        Set.of(),
                        Set.of(PlacingRule.HOT_WIRE),
                        Set.of(),
                        Set.of(PlacingRule.BARRIER_DISTANCE),
                        Set.of(),
                        Set.of(PlacingRule.LOAD)),
                sieve.sift(candidates).broken());
    }

    @Test
    void decksAreOfferedOnlyWhatStandsFirm() {
        List<CandidatePlace> firm = CandidatePlaces.firm(layout.enclosure(), 1);
        assertTrue(firm.stream().anyMatch(candidate -> candidate.on().equals("mast-1")));
        assertTrue(firm.stream()
                .noneMatch(candidate ->
                        candidate.on().startsWith("rope") || candidate.on().startsWith("deck")));
    }

    /** Noon of an equinox near the equator: the open is in the sun, the place below a deck is not. */
    @Test
    @Tag("derived")
    void shadeAtTheHoursOfFeedingIsLookedUp() {
        List<CandidatePlace> candidates = List.of(
                new CandidatePlace("open", new Point(9, 12, 0), ""),
                new CandidatePlace("below the deck", new Point(15.3, 16, 4), ""));
        Sifted sifted = sift(
                rules(OptionalDouble.empty(), false, true),
                PlacingTask.moving(ResourceKind.FOOD, List.of("hatch")),
                candidates);
        assertEquals(List.of(Set.of(PlacingRule.SHADED), Set.of()), sifted.broken());
    }

    /** The hatch is below a deck, at noon: a place in the open sun is hotter by more than the model can be wrong. */
    @Test
    void placesHotterThanThoseOfNowAreLeftOutIfTheWeatherIsKnown() {
        List<Resource> resources = layout.enclosure().resources().stream()
                .map(resource -> resource.id().equals("hatch")
                        ? new Resource("hatch", resource.kind(), new Point(15.3, 16, 4), "", resource.stalls())
                        : resource)
                .toList();
        Variant shaded =
                new Variant("shaded", "", layout.enclosure().withResources(resources), layout.keeping(), Set.of());
        MonthlyWeather hot = new MonthlyWeather(Collections.nCopies(12, 34.0), Collections.nCopies(12, 24.0), 0.5, 3);
        List<CandidatePlace> candidates = List.of(
                new CandidatePlace("open", new Point(9, 12, 0), ""),
                new CandidatePlace("as now", new Point(15.3, 16, 4), ""));
        for (boolean noHotter : new boolean[] {true, false}) {
            Sifted sifted = new CandidateSieve(
                            new PlacingRules(
                                    OptionalDouble.empty(), false, 0, OptionalDouble.empty(), false, noHotter, 0),
                            PlacingTask.moving(ResourceKind.FOOD, List.of("hatch")),
                            shaded,
                            BASE.bodies(),
                            Optional.of(new Climate(hot, 0)),
                            LocalDate.of(2026, 3, 21))
                    .sift(candidates);
            assertEquals(List.of(noHotter ? Set.of(PlacingRule.HEAT) : Set.of(), Set.of()), sifted.broken());
        }
    }

    @Test
    void foodOfPlacesThatAreAddedIsTakenFromTheOthers() {
        PlacingTask task = PlacingTask.adding(ResourceKind.FOOD, 2, false, layout.enclosure());
        Variant placed = new Placing(
                        task,
                        List.of(
                                new CandidatePlace("deck-0", new Point(4, 4, 5), "deck-0"),
                                new CandidatePlace("[8, 12]", new Point(8, 12, 0), "")))
                .applyTo(layout);
        double before =
                layout.feedings().stream().mapToDouble(Feeding::energyKj).sum();
        double then = placed.feedings().stream().mapToDouble(Feeding::energyKj).sum();
        // rounded to a tenth of a kilojoule, feeding by feeding
        assertEquals(before, then, 0.5);
        // three places shared it, now five do
        assertEquals(0.6 * food(layout, "hatch"), food(placed, "hatch"), 0.3);
        assertEquals(0.2 * before, food(placed, "new-food-1"), 0.5);
        assertEquals(
                layout.enclosure().resources().size() + 2,
                placed.enclosure().resources().size());
    }

    private static double food(Variant variant, String place) {
        return variant.feedings().stream()
                .filter(feeding -> feeding.resource().equals(place))
                .mapToDouble(Feeding::energyKj)
                .sum();
    }

    @Test
    void thePlaceWithMostFoodGoesWhereMostTripsLead() {
        // two candidates, each at the nest of one body; one body goes six times as often
        List<CandidatePlace> candidates = List.of(
                new CandidatePlace("deck-0", new Point(4.5, 4.5, 5), "deck-0"),
                new CandidatePlace("deck-3", new Point(26.5, 16.5, 5), "deck-3"));
        ExpectedTravel travel = new ExpectedTravel(
                layout,
                variant -> BASE.layout().equals(variant) ? BASE : habitat(variant),
                candidates,
                List.of(new Demand(0, "nest-a", 1, 1), new Demand(1, "nest-b", 6, 6)));
        PlacingSearch.Found found = PlacingSearch.run(layout, FOOD, candidates, travel, List.of(), 0, 5);
        assertEquals(1, found.proposals().size());
        // the hatch gets more food than the tray
        assertEquals("deck-3 + deck-0", found.proposals().get(0).placing().key());
        assertTrue(PlacingSearch.run(layout, FOOD, candidates, travel, List.of(), 100, 5)
                .proposals()
                .isEmpty());
    }

    private Habitat habitat(Variant variant) {
        return new Habitat(variant, BASE.animals(), Optional.empty(), BASE.energy(), BASE.sharpness());
    }

    /** Of two places one may stay; that both stay is no placing. */
    @Test
    void aPlaceWhoseSpotOfNowIsChosenStays() {
        List<CandidatePlace> candidates =
                new ArrayList<>(List.of(new CandidatePlace("deck-3", new Point(26.5, 16.5, 5), "deck-3")));
        layout.enclosure().resources().stream()
                .filter(resource -> FOOD.moved().contains(resource.id()))
                .map(CandidatePlace::asItIs)
                .forEach(candidates::add);
        ExpectedTravel travel =
                new ExpectedTravel(layout, this::habitat, candidates, List.of(new Demand(0, "nest-a", 1, 1)));
        List<Placing> found = PlacingSearch.run(layout, FOOD, candidates, travel, List.of(), 0, 9).proposals().stream()
                .map(PlacingSearch.Proposal::placing)
                .toList();
        assertEquals(
                Set.of(List.of("{move: hatch, on: deck-3}"), List.of("{move: tray-mid, on: deck-3}")),
                Set.of(found.get(0).lines(layout), found.get(1).lines(layout)));
        assertEquals(2, found.size());
        for (Placing placing : found) {
            assertEquals(1, placing.alterations(layout).size());
            assertEquals(
                    Set.of(placing.alterations(layout).get(0).subject()),
                    placing.applyTo(layout).added());
        }
    }

    private Sifted siftDecks(Enclosure enclosure, CandidatePlace... candidates) {
        return new CandidateSieve(
                        new PlacingRules(OptionalDouble.empty(), false, 0, OptionalDouble.empty(), false, false, 0),
                        PlacingTask.adding(ResourceKind.SHADE, 1, true, enclosure),
                        new Variant("decks", "", enclosure, layout.keeping(), Set.of()),
                        BASE.bodies(),
                        Optional.empty(),
                        LocalDate.of(2026, 3, 21))
                .sift(List.of(candidates));
    }

    /** A deck reaches 1 m east and 0.75 m north of its middle, so the middle can be clear where a corner is not. */
    @Test
    @Tag("derived")
    void decksAreLookedAtToTheirCorners() {
        Enclosure enclosure = layout.enclosure()
                .withBounds(new Bounds(
                        List.of(),
                        List.of(new HotWire.Strand(
                                "wire", Polyline.straight(new Point(16.2, 0, 3), new Point(16.2, 20, 3)), 0.3)),
                        List.of()));
        // the edge of the ground has nothing that stops an animal: 4 m high and 0.8 m from it is a way out, and out of
        // the ground
        CandidatePlace near = new CandidatePlace("near", new Point(15, 10, 3), "");
        CandidatePlace clear = new CandidatePlace("clear", new Point(14.8, 10, 3), "");
        CandidatePlace edge = new CandidatePlace("edge", new Point(0.8, 10, 4), "");
        List<Set<PlacingRule>> broken = siftDecks(enclosure, near, clear, edge).broken();
        assertEquals(Set.of(PlacingRule.HOT_WIRE), broken.get(0));
        assertEquals(Set.of(), broken.get(1));
        assertEquals(Set.of(PlacingRule.FREE_SPACE, PlacingRule.WAY_OUT), broken.get(2));
        // under a deck that is there, with less room than a body takes
        CandidatePlace below = new CandidatePlace(
                "below", layout.enclosure().platforms().get(0).centre().plus(new Point(0, 0, -0.5)), "");
        assertTrue(siftDecks(layout.enclosure(), below).broken().get(0).contains(PlacingRule.FREE_SPACE));
    }

    @Test
    void whatNoOtherBeatsInEverythingIsOnTheFront() {
        double[][] values = {{5, 1}, {4, 2}, {4, 1}, {5, 1}, {1, 9}};
        assertArrayEquals(new boolean[] {true, true, false, true, true}, Front.of(values));
    }
}
