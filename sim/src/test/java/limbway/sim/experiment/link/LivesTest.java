package limbway.sim.experiment.link;

import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

import org.junit.jupiter.api.Test;

import limbway.model.link.Fall;
import limbway.model.link.Gain;
import limbway.sim.experiment.Outcome;
import limbway.sim.experiment.RunSettings;
import limbway.sim.experiment.trial.Criterion;
import limbway.sim.experiment.trial.Notebook;
import limbway.sim.habitat.Habitat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Everything was noted before, so nothing is lived. */
class LivesTest {

    private static Habitat never() {
        throw new IllegalStateException("nothing is to be lived");
    }

    private record Named(String name) implements Criterion {

        @Override
        public boolean isShare() {
            return true;
        }

        @Override
        public OptionalDouble of(Outcome one) {
            throw new IllegalStateException("nothing is to be judged");
        }
    }

    /** Half of the travel off the ground and 8 trips as it stands; nobody travels without the mast. */
    private static final class Noted implements Notebook {

        @Override
        public Optional<double[]> find(String key) {
            boolean asItStands = key.startsWith("as it stands");
            boolean last = key.endsWith("#1003");
            return Optional.of(
                    asItStands
                            ? new double[] {0.5, 8}
                            : key.startsWith("without mast")
                                    ? new double[] {Double.NaN, 0}
                                    : new double[] {last ? Double.NaN : 0.75, last ? 0 : 6});
        }

        @Override
        public void note(String key, double[] values) {
            throw new IllegalStateException("nothing is to be noted");
        }
    }

    private static LivedDifference difference(String key) {
        RunSettings settings = new RunSettings(1, 3, 1, LocalDate.of(2024, 3, 20), 1, 0);
        LinkQuestion question =
                new LinkQuestion(null, null, null, settings, 1, null, 1, 1, 1, new Named("share"), new Named("trips"));
        SearchProgress progress = new SearchProgress() {
            @Override
            public void at(String stage, int done, int total) {
                // nothing is lived
            }

            @Override
            public boolean wantsStop() {
                return false;
            }
        };
        return new Lives(question, LivesTest::never, new Noted(), progress)
                .difference(key, LivesTest::never, 1001, key)
                .orElseThrow();
    }

    @Test
    void whereNobodyTravelsThereIsADifferenceWithoutAShare() {
        LivedDifference none = difference("without mast");
        assertTrue(none.offGround().isEmpty());
        assertEquals(8, none.fewerGroundTrips().mean(), 0);
        Fragile fragile =
                new Fragile(new Fall("mast", Set.of(), null, Set.of()), new Gain(-0.3, -2), Optional.of(none));
        assertEquals(0.3, fragile.offGroundLoss(), 0);
        Proposal proposal = new Proposal(List.of(), new Gain(0.2, 1), Optional.of(none), Optional.empty());
        assertEquals(0.2, proposal.offGroundGain(), 0);
    }

    @Test
    void repetitionsInWhichNobodyTravelsAreLeftOutOfTheShare() {
        LivedDifference some = difference("with rope");
        assertEquals(0.25, some.offGround().orElseThrow().mean(), 0);
        assertEquals(2, some.offGround().orElseThrow().n());
        assertEquals((2 + 2 + 8) / 3.0, some.fewerGroundTrips().mean(), 1e-12);
        assertEquals(3, some.fewerGroundTrips().n());
    }
}
