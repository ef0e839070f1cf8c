package limbway.sim.experiment.screening;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.parameter.Parameter;
import limbway.model.parameter.Standing;
import limbway.sim.experiment.Assumptions;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

class TrajectoryTest {

    private static final int WALKS = 12;

    private final List<Factor> factors = Factor.doubtful(Assumptions.standard());

    @Test
    void eachTurnChangesOneFactorAndEachFactorChangesOnce() {
        for (int number = 0; number < WALKS; number++) {
            Trajectory walk = Trajectory.draw(factors, 7, number, 0);
            List<Map<String, Double>> points = walk.points(factors);
            assertEquals(factors.size() + 1, points.size());
            Set<String> changed = new HashSet<>();
            for (int turn = 0; turn < factors.size(); turn++) {
                Map<String, Double> before = points.get(turn);
                Map<String, Double> after = points.get(turn + 1);
                List<String> now = before.keySet().stream()
                        .filter(name -> !before.get(name).equals(after.get(name)))
                        .toList();
                assertEquals(
                        List.of(factors.get(walk.turns().get(turn)).parameter().name()), now);
                changed.addAll(now);
            }
            assertEquals(factors.size(), changed.size());
        }
    }

    @Test
    void everyFactorMovesByTwoThirdsOfItsRangeAndStaysInIt() {
        for (int number = 0; number < WALKS; number++) {
            List<Map<String, Double>> points =
                    Trajectory.draw(factors, 7, number, 0).points(factors);
            for (Factor factor : factors) {
                String name = factor.parameter().name();
                double first = factor.shareOf(points.get(0).get(name));
                double last = factor.shareOf(points.get(factors.size()).get(name));
                // only roundings of the way to the value and back
                assertEquals(2.0 / 3, Math.abs(last - first), 1e-12, name);
                assertTrue(Math.min(first, last) > -1e-12 && Math.max(first, last) < 1 + 1e-12, name);
            }
        }
    }

    @Test
    void inEachFourWalksAFactorSetsOutOnceFromEveryLevel() {
        for (int f = 0; f < factors.size(); f++) {
            for (int block = 0; block < WALKS / 4; block++) {
                List<Double> starts = new ArrayList<>();
                for (int i = 0; i < 4; i++) {
                    starts.add(Trajectory.draw(factors, 7, 4 * block + i, 0)
                            .starts()
                            .get(f));
                }
                assertEquals(
                        List.of(0.0, 1.0 / 3, 2.0 / 3, 1.0),
                        starts.stream().sorted().toList());
            }
        }
    }

    @Test
    void anotherFactorLeavesTheStartsAndTheOrderOfTheOthersAlone() {
        List<Factor> fewer = factors.subList(1, factors.size());
        Trajectory all = Trajectory.draw(factors, 7, 3, 0);
        Trajectory less = Trajectory.draw(fewer, 7, 3, 0);
        assertEquals(all.starts().subList(1, factors.size()), less.starts());
        assertEquals(all.turns().stream().filter(f -> f != 0).map(f -> f - 1).toList(), less.turns());
    }

    @Test
    void walksSeedsAndDrawsDiffer() {
        Trajectory walk = Trajectory.draw(factors, 7, 3, 0);
        assertEquals(walk, Trajectory.draw(factors, 7, 3, 0));
        assertNotEquals(walk, Trajectory.draw(factors, 7, 2, 0));
        assertNotEquals(walk, Trajectory.draw(factors, 8, 3, 0));
        assertNotEquals(walk.starts(), Trajectory.draw(factors, 7, 3, 1).starts());
    }

    /** The middle of 1 to 100 by equal factors is 10; of 1 to 20, by equal amounts, 10.5. */
    @Test
    @Tag("derived")
    void wideRangesAreTakenByEqualFactors() {
        Factor wide = new Factor(new Parameter("wide", "", "1", 5, 1, 100, Standing.ASSUMPTION, ""));
        Factor narrow = new Factor(new Parameter("narrow", "", "1", 5, 1, 20, Standing.ASSUMPTION, ""));
        // rounding of one exponential
        assertEquals(10, wide.at(0.5), 1e-13);
        assertEquals(0.5, wide.shareOf(10), 1e-15);
        assertEquals(10.5, narrow.at(0.5));
        assertEquals(0.5, narrow.shareOf(10.5));
    }

    @Test
    void whatIsPublishedIsNotVaried() {
        List<String> names = factors.stream().map(f -> f.parameter().name()).toList();
        assertFalse(names.contains("night.nest-building"));
        assertTrue(names.containsAll(List.of("energy.clamber-multiplier", "night.wake-before-sunrise", "need.water")));
    }
}
