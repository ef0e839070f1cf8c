package limbway.sim.experiment.placement;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.body.Body;
import limbway.model.enclosure.ResourceKind;
import limbway.model.energy.EnergySettings;
import limbway.model.geometry.Point;
import limbway.model.route.ChoiceSharpness;
import limbway.model.route.Routes;
import limbway.model.route.Search;
import limbway.model.study.Variant;
import limbway.sim.Yard;
import limbway.sim.animal.DaySettings;
import limbway.sim.experiment.Experiment;
import limbway.sim.experiment.Outcome;
import limbway.sim.experiment.RunSettings;
import limbway.sim.experiment.placement.ExpectedTravel.Expected;
import limbway.sim.habitat.Habitat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

class ExpectedTravelTest {

    private static final PlacingTask HATCH = PlacingTask.moving(ResourceKind.FOOD, List.of("hatch"));

    private static final Habitat BASE = Yard.furnished().build();

    private Habitat compiled(Variant layout) {
        return new Habitat(
                layout, BASE.animals(), Optional.empty(), EnergySettings.standard(), ChoiceSharpness.GROUP.standard());
    }

    private ExpectedTravel travel(List<CandidatePlace> candidates, List<Demand> demands) {
        return new ExpectedTravel(BASE.layout(), this::compiled, candidates, demands);
    }

    /** Every tenth of all that are made, so that every kind of carrier is among them. */
    private List<CandidatePlace> some() {
        List<CandidatePlace> all = CandidatePlaces.along(BASE.layout().enclosure(), 0.9);
        return IntStream.range(0, all.size())
                .filter(i -> i % 13 == 0)
                .mapToObj(all::get)
                .toList();
    }

    /** One graph with all candidates in it tells the same of each as a graph of the layout with the place there. */
    @Test
    @Tag("derived")
    void allCandidatesAtOnceCostWhatEachCostsInALayoutOfItsOwn() {
        List<CandidatePlace> candidates = some();
        assertTrue(candidates.size() >= 6, "candidates: " + candidates.size());
        Demand demand = new Demand(1, "nest-b", 3, 0);
        ExpectedTravel together = travel(candidates, List.of(demand));
        for (int c = 0; c < candidates.size(); c++) {
            Habitat alone = compiled(new Placing(HATCH, List.of(candidates.get(c))).applyTo(BASE.layout()));
            Body body = alone.bodies().get(1);
            Routes routes = alone.routes(body);
            int hatch = alone.graph().resourceNumber("hatch");
            int least = Integer.MAX_VALUE;
            int from = -1;
            for (int hold : alone.graph().useHolds(alone.graph().resourceNumber("nest-b"))) {
                if (routes.cheapestMilliJ(hold, hatch) < least) {
                    least = routes.cheapestMilliJ(hold, hatch);
                    from = hold;
                }
            }
            Search.Reached reached = (Search.Reached) routes.find(from, hatch);
            double share = reached.offGroundShare();
            double joules =
                    (share > 0 ? share * reached.offGround().orElseThrow().milliJ() : 0)
                            + (share < 1
                                    ? (1 - share)
                                            * reached.overGround().orElseThrow().milliJ()
                                    : 0);
            Expected expected = together.of(List.of(c), List.of());
            // each move is rounded to a millijoule, and other candidates on the way cut moves in two
            assertEquals(
                    joules / 1000, expected.energyJ(), 0.1, candidates.get(c).words());
        }
    }

    @Test
    void theScoreOfTheTableIsTheShareThatIsTold() {
        List<CandidatePlace> candidates = some();
        List<Demand> demands =
                List.of(new Demand(0, "nest-a", 2, 1), new Demand(1, "roof-4", 1, 1), new Demand(3, "trough", 0, 4));
        ExpectedTravel travel = travel(candidates, demands);
        for (List<String> standing : List.of(List.<String>of(), List.of("tray-east", "tray-mid"))) {
            DemandTable table = travel.table(standing);
            for (int c = 0; c + 1 < candidates.size(); c++) {
                double told = travel.of(List.of(c, c + 1), standing).offGround();
                assertEquals(1 - told, table.score(c, c + 1), 1e-9);
            }
        }
    }

    @Test
    void aCandidateHighOnTheRopesSavesMetresOnTheGround() {
        CandidatePlace ground = new CandidatePlace("[28, 10]", new Point(28, 10, 0), "");
        CandidatePlace deck = new CandidatePlace("deck-2", new Point(26, 4, 5), "deck-2");
        ExpectedTravel travel = travel(List.of(ground, deck), Demand.even(BASE, List.of("hatch")));
        Expected low = travel.of(List.of(0), List.of());
        Expected high = travel.of(List.of(1), List.of());
        assertTrue(high.groundM() < low.groundM() / 2, low + " " + high);
        assertTrue(high.offGround() > low.offGround(), low + " " + high);
        assertEquals(travel.of(List.of(1), List.of()), travel.only(List.of(1)).of(List.of(0), List.of()));
    }

    @Test
    void whoCannotGetThereIsNamed() {
        CandidatePlace nowhere = new CandidatePlace("[15, 10, 15]", new Point(15, 10, 15), "");
        CandidatePlace mast = new CandidatePlace("mast-1 at 2", new Point(15, 4, 2), "mast-1");
        ExpectedTravel travel = travel(List.of(nowhere, mast), Demand.even(BASE, List.of("hatch")));
        assertEquals(BASE.bodies().stream().map(Body::name).toList(), travel.cannotReach(0));
        // steel of a mast is too thick for the young
        assertFalse(travel.cannotReach(1).contains("flanged male"));
    }

    @Test
    void tripsOfDaysThatWereLivedAreTheDemand() {
        RunSettings settings = new RunSettings(3, 1, 1, LocalDate.of(2026, 3, 21), 1);
        Outcome outcome = Experiment.run(BASE, settings, DaySettings.standard(), (done, total) -> {});
        List<Demand> demands = Demand.lived(outcome, List.of("hatch", "tray-east", "tray-mid"));
        double toward = demands.stream().mapToDouble(Demand::toward).sum();
        long counted = outcome.journals().get(0).trips().stream()
                .filter(trip ->
                        kind(trip.toResource()) == ResourceKind.FOOD && kind(trip.fromResource()) != ResourceKind.FOOD)
                .count();
        assertEquals((double) counted, toward);
        assertTrue(counted > 5, "trips to food: " + counted);
        assertTrue(demands.stream().noneMatch(demand -> demand.other().equals("hatch")));
    }

    private ResourceKind kind(int resource) {
        return BASE.graph().resources().get(resource).kind();
    }
}
