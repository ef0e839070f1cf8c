package limbway.reports.measure;

import java.util.List;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.route.Search;
import limbway.model.route.Way;
import limbway.model.study.Study;
import limbway.reports.Pole;
import limbway.reports.Yard;
import limbway.sim.experiment.Outcome;
import limbway.sim.habitat.Habitat;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Motive;
import limbway.sim.journal.Stay;
import limbway.sim.journal.Trip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

class UseOfPlacesTest {

    /** Nothing is lost or counted twice: all waking time is on some support or in some cell. */
    @Test
    void theTimesAddUpToTheWakingTimeOfAllAnimals() {
        Study study = Yard.study();
        Measures measures = Yard.measures(study.base(), study.animals());
        Outcome outcome = measures.outcome();
        double[] seconds = {0};
        for (Journal journal : outcome.journals()) {
            Whereabouts.visit(outcome.habitat(), journal, (lasting, from, to) -> seconds[0] += lasting);
        }
        double animalDays = (double) outcome.journals().size() * study.animals().size();
        double told = measures.use().ground().totalSecondsPerAnimalDay()
                + measures.use().supports().stream()
                        .mapToDouble(SupportUse::secondsPerAnimalDay)
                        .sum();
        // the same numbers added in another order
        assertEquals(seconds[0] / animalDays, told, 1e-6);
        assertTrue(measures.use().ground().totalSecondsPerAnimalDay() > 60);
        double last = Double.POSITIVE_INFINITY;
        for (SupportUse support : measures.use().supports()) {
            assertTrue(support.secondsPerAnimalDay() <= last, "longest first");
            last = support.secondsPerAnimalDay();
        }
    }

    /**
     * The pole stands at (5, 5), the water lies at (8, 5). The way from the foot of the pole leads along y = 5, right through
     * the cell with west edge 6, which gets the time of one metre of the walk. A stay of 30 s at the top of the pole counts
     * for the pole.
     */
    @Test
    @Tag("derived")
    void aWalkIsDividedAmongTheCellsItCrosses() {
        Habitat habitat = Pole.habitat();
        Search.Reached ways = (Search.Reached)
                habitat.routes(Pole.female()).find(habitat.graph().useHolds(Pole.NEST)[0], Pole.WATER);
        Way way = ways.cheapest();
        Trip trip = new Trip(1, 0, 0, Pole.NEST, Pole.WATER, Motive.THIRST, ways, way);
        int top = habitat.graph().useHolds(Pole.FOOD)[0];
        Stay stay = new Stay(1, 0, 0, 30_000, Pole.FOOD, top, Motive.HUNGER, false, 0, 0);
        Stay night = new Stay(1, 0, 0, 30_000, Pole.FOOD, top, Motive.NIGHT, false, 0, 0);
        Journal journal = new Journal(1, List.of(trip), List.of(stay, night), List.of(), List.of());
        UseOfPlaces use = UseOfPlaces.of(Pole.outcome(habitat, 1, journal));
        // two animals, one day
        assertEquals(1, use.supports().size());
        assertEquals("pole", use.supports().get(0).id());
        assertEquals(15, use.supports().get(0).secondsPerAnimalDay(), 1e-9);
        GroundCells cells = use.ground();
        assertEquals(way.seconds() / 2, cells.totalSecondsPerAnimalDay(), 1e-9);
        double inColumn = 0;
        for (int row = 0; row < cells.rows(); row++) {
            inColumn += cells.secondsPerAnimalDay((int) (6 - cells.westM()), row);
        }
        assertEquals(way.seconds() / way.lengthM() / 2, inColumn, 1e-9);
    }

    @Test
    void whereNobodyIsOnTheGroundThereIsNoCell() {
        UseOfPlaces use = UseOfPlaces.of(Pole.outcome(Pole.habitat(), 1, Pole.journal(1)));
        assertEquals(0, use.ground().columns());
        assertEquals(0, use.ground().totalSecondsPerAnimalDay());
        assertTrue(use.supports().isEmpty());
    }
}
