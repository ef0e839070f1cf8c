package limbway.reports.measure;

import java.util.List;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.explain.GroundReason;
import limbway.model.graph.RouteGraph;
import limbway.model.route.Search;
import limbway.reports.Pole;
import limbway.sim.experiment.Outcome;
import limbway.sim.experiment.statistics.Interval;
import limbway.sim.habitat.Habitat;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Motive;
import limbway.sim.journal.Stay;
import limbway.sim.journal.Trip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Journals made by hand, with the numbers worked in comments. */
@Tag("derived")
class MeasuresTest {

    /** Sums and quotients of a few small numbers. */
    private static final double ROUNDING = 1e-12;

    private final Habitat habitat = Pole.habitat();

    private Outcome twoReplications() {
        return Pole.outcome(
                habitat,
                2,
                Pole.journal(1, Pole.trip(0, 8, 10, 8, 100, 90), Pole.trip(1, 9, 30, 2, 300, 30)),
                Pole.journal(2, Pole.trip(0, 8, 20, 10, 200, 150)));
    }

    @Test
    void aShareIsTheSumOffTheGroundOverTheSumOfAllWithinEachReplication() {
        OffGround offGround = OffGround.of(twoReplications());
        // replication 1: (8 + 2) / (10 + 30) = 0.25, not the mean of 0.8 and 0.067; replication 2: 10 / 20 = 0.5
        Interval distance = offGround.overall().by(Aspect.DISTANCE).orElseThrow();
        assertEquals(0.375, distance.mean(), ROUNDING);
        assertEquals(2, distance.n());
        // t(0.975, 1) = 12.706 times |0.5 - 0.25| / 2
        assertEquals(12.706 * 0.125, distance.halfWidth().orElseThrow(), 0.0005 * 0.125);
        // energy: (90 + 30) / 400 = 0.3 and 150 / 200 = 0.75
        assertEquals(0.525, offGround.overall().by(Aspect.ENERGY).orElseThrow().mean(), ROUNDING);
    }

    @Test
    void layoutsAreComparedReplicationByReplicationEvenWhereSomeAreMissing() {
        Measures first = Measures.of(twoReplications(), 1);
        // shares of replications 1 and 2 are 0.25 and 0.5; here 0.75 in the second, and the first is missing
        Measures second = Measures.of(Pole.outcome(habitat, 2, Pole.journal(2, Pole.trip(0, 8, 20, 15, 200, 150))), 1);
        Interval difference =
                LayoutDifference.of(first, second, Aspect.DISTANCE).orElseThrow();
        assertEquals(0.25, difference.mean(), ROUNDING);
        assertEquals(1, difference.n());
        // equal shares in every replication differ by nothing, with certainty
        Interval none = LayoutDifference.of(first, first, Aspect.DISTANCE).orElseThrow();
        assertEquals(0, none.mean(), 0);
        assertEquals(0, none.halfWidth().orElseThrow(), 0);
    }

    @Test
    void aReplicationInWhichAnAnimalStaysPutGivesNoValueForIt() {
        OffGround offGround = OffGround.of(twoReplications());
        Interval ofJuvenile =
                offGround.byAnimal().get("Anak").by(Aspect.DISTANCE).orElseThrow();
        assertEquals(2.0 / 30, ofJuvenile.mean(), ROUNDING);
        assertEquals(1, ofJuvenile.n());
        assertTrue(ofJuvenile.lo().isEmpty());
        assertEquals(
                List.of("adult female", "juvenile"),
                List.copyOf(offGround.byBody().keySet()));
    }

    @Test
    void anHourHoldsTheTripsThatBeganInIt() {
        List<HourOfDay> hours = OffGround.of(twoReplications()).byHour();
        assertEquals(List.of(8, 9), hours.stream().map(HourOfDay::hour).toList());
        // hour 8: (8 + 10) m off the ground and (2 + 10) m on it, over two replications of two days
        assertEquals(18.0 / 4, hours.get(0).offGroundMPerDay(), ROUNDING);
        assertEquals(12.0 / 4, hours.get(0).groundMPerDay(), ROUNDING);
    }

    @Test
    void groundUseIsCountedADayByBodyAndPair() {
        List<PairUse> uses = GroundUse.of(twoReplications());
        // juvenile 28 m in replication 1 and 0 in 2: 14 and 0 m a day; female 2 m and 10 m: 1 and 5 m a day
        assertEquals(
                List.of("juvenile", "adult female"),
                uses.stream().map(use -> use.body().name()).toList());
        assertEquals(7, uses.get(0).groundMPerDay().mean(), ROUNDING);
        assertEquals(3, uses.get(1).groundMPerDay().mean(), ROUNDING);
        assertEquals(2.0 / 4, uses.get(1).tripsPerDay(), ROUNDING);
        assertEquals(List.of(Motive.THIRST), uses.get(1).motives());
        GroundReason.NothingToHold reason =
                assertInstanceOf(GroundReason.NothingToHold.class, uses.get(0).reason());
        assertEquals("water", reason.resource());
        assertEquals(10, PairTotal.of(twoReplications()).get(0).groundMPerDay().mean(), ROUNDING);
    }

    @Test
    void timeUpHighCountsTheUpperHalfOfAClimbAndLeavesSleepOut() {
        Outcome outcome = Pole.outcome(habitat, 1, climbAndStay());
        // 2 m at 0.3 m/s = 6.667 s, half of it above 1 m; 10 s at the top; 3.333 s at the foot: 13.333 of 20 s
        Interval share = ElevatedTime.of(outcome, 1.0).share().orElseThrow();
        // stays are whole milliseconds: 3.333 s for a third of 10 s
        assertEquals(2.0 / 3, share.mean(), 2e-5);
        List<HeightBand> bands = HeightBand.of(outcome);
        assertTrue(bands.get(0).isGround());
        assertEquals(1, bands.stream().mapToDouble(band -> band.share().mean()).sum(), ROUNDING);
        assertEquals(2, bands.get(bands.size() - 1).toM(), ROUNDING);
        assertEquals(share.mean(), bands.get(bands.size() - 1).share().mean(), ROUNDING);
    }

    private Journal climbAndStay() {
        RouteGraph graph = habitat.graph();
        int foot = graph.useHolds(Pole.NEST)[0];
        int top = graph.useHolds(Pole.FOOD)[0];
        Search.Reached ways = assertInstanceOf(
                Search.Reached.class, habitat.routes(Pole.female()).find(foot, Pole.FOOD));
        Trip up = new Trip(1, 0, 0, Pole.NEST, Pole.FOOD, Motive.HUNGER, ways, ways.cheapest());
        assertEquals(2, up.way().lengthM(), ROUNDING);
        List<Stay> stays = List.of(
                new Stay(1, 0, 6_667, 16_667, Pole.FOOD, top, Motive.HUNGER, false, 0, 0),
                new Stay(1, 0, 16_667, 20_000, Pole.NEST, foot, Motive.FATIGUE, false, 0, 0),
                new Stay(1, 0, 20_000, 90_000, Pole.NEST, foot, Motive.NIGHT, false, 0, 0));
        return new Journal(1, List.of(up), stays, Pole.journal(1).reserves(), List.of());
    }

    @Test
    void energyOfAnAnimalIsADayAndByPart() {
        AnimalEnergy energy = AnimalEnergy.of(twoReplications()).get(0);
        // 100 J and 200 J over two days each
        assertEquals(75, energy.movedTotalJPerDay().mean(), ROUNDING);
        assertEquals(
                75, energy.movedJPerDay().values().stream().mapToDouble(j -> j).sum(), ROUNDING);
        assertEquals(1500, energy.restingJPerDay().mean(), ROUNDING);
        assertEquals(250, energy.otherJPerDay().mean(), ROUNDING);
        // 10 m and 20 m over two days each
        assertEquals(7.5, energy.travelMPerDay().mean(), ROUNDING);
    }

    @Test
    void stretchesAreCountedADayInBothDirectionsTogether() {
        List<Stretch> stretches = Stretch.of(Pole.outcome(habitat, 1, climbAndStay()));
        assertEquals(2, stretches.stream().mapToDouble(Stretch::metresPerDay).sum(), ROUNDING);
        assertTrue(stretches.stream().noneMatch(Stretch::onGround));
    }

    @Test
    void nothingFinishedIsNothingToMeasure() {
        Outcome none = new Outcome(habitat, twoReplications().settings(), List.of(), false);
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class, () -> Measures.of(none, 1));
        assertEquals("measures: finished replications = 0, allowed 1 or more", refused.getMessage());
    }
}
