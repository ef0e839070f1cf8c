package limbway.sim.experiment.trial;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.function.Function;

import org.junit.jupiter.api.Test;

import limbway.model.enclosure.ResourceKind;
import limbway.sim.Runs;
import limbway.sim.Yard;
import limbway.sim.animal.DaySettings;
import limbway.sim.experiment.Experiment;
import limbway.sim.experiment.Outcome;
import limbway.sim.experiment.Progress;
import limbway.sim.experiment.RunSettings;
import limbway.sim.habitat.Habitat;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

class TrialsTest {

    private static final DaySettings DAY = DaySettings.standard().withoutWorth();
    private static final RunSettings SETTINGS = new RunSettings(7, 1, 1, Runs.DATE, 1);
    private static final Progress QUIET = (done, total) -> {};

    /** Metres of all trips. */
    private static final Criterion METRES = criterion(
            "metres",
            one -> OptionalDouble.of(one.journals().get(0).trips().stream()
                    .mapToDouble(trip -> trip.way().lengthM())
                    .sum()));

    /** A value that even replications do not have. */
    private static final Criterion ODD = criterion(
            "odd",
            one -> one.journals().get(0).replication() % 2 == 1
                    ? OptionalDouble.of(one.journals().get(0).replication())
                    : OptionalDouble.empty());

    private static final class Memory implements Notebook {
        private final Map<String, double[]> known = new LinkedHashMap<>();
        private final List<String> noted = new ArrayList<>();

        @Override
        public Optional<double[]> find(String key) {
            return Optional.ofNullable(known.get(key));
        }

        @Override
        public synchronized void note(String key, double[] values) {
            known.put(key, values);
            noted.add(key);
        }
    }

    private final Habitat habitat = new Yard()
            .mast("a", 3, 5, 5)
            .mast("b", 9, 5, 5)
            .rope("line", 3, 5, 4, 9, 5, 4)
            .on("nest", ResourceKind.NEST, "a", 3, 5, 4, 1)
            .on("cup", ResourceKind.WATER, "b", 9, 5, 4, 1)
            .at("tray", ResourceKind.FOOD, 12, 5, 0, 1)
            .animal("A", "adult female", 1)
            .feed("tray", "09:00", 5000)
            .build();

    private final AtomicInteger made = new AtomicInteger();

    private final Trial trial = new Trial(
            "yard",
            () -> {
                made.incrementAndGet();
                return habitat;
            },
            DAY);

    private static Criterion criterion(String name, Function<Outcome, OptionalDouble> value) {
        return new Criterion() {
            @Override
            public String name() {
                return name;
            }

            @Override
            public boolean isShare() {
                return false;
            }

            @Override
            public OptionalDouble of(Outcome one) {
                return value.apply(one);
            }
        };
    }

    private static Trials trials(Notebook notebook) {
        return new Trials(List.of(METRES, ODD), SETTINGS, notebook);
    }

    private double[] direct(int replication) {
        Outcome outcome = Experiment.run(habitat, SETTINGS.repetitions(1, 5), DAY, QUIET);
        Outcome one = outcome.only(replication - 1);
        return new double[] {METRES.of(one).getAsDouble(), ODD.of(one).orElse(Double.NaN)};
    }

    @Test
    void valuesAreThoseOfARunByReplicationAndCriterion() {
        double[][] values = trials(Notebook.none()).of(trial, 2, 3, QUIET).orElseThrow();
        assertEquals(3, values.length);
        for (int i = 0; i < 3; i++) {
            assertArrayEquals(direct(2 + i), values[i]);
        }
        assertTrue(Double.isNaN(values[0][1]), "replication 2 has no value");
        assertEquals(3, values[1][1]);
        assertTrue(values[0][0] > 0 && values[0][0] != values[1][0], "replications differ");
    }

    @Test
    void whatIsKnownIsNotLivedAgain() {
        Memory memory = new Memory();
        double[][] first = trials(memory).of(trial, 1, 3, QUIET).orElseThrow();
        assertEquals(
                List.of("yard #1", "yard #2", "yard #3"),
                memory.noted.stream().sorted().toList());
        double[][] again = trials(memory).of(trial, 1, 3, QUIET).orElseThrow();
        assertEquals(1, made.get(), "the layout was made ready again");
        assertEquals(3, memory.noted.size());
        for (int i = 0; i < 3; i++) {
            assertArrayEquals(first[i], again[i]);
        }
    }

    @Test
    void moreReplicationsContinueAndAreTheSame() {
        Memory memory = new Memory();
        trials(memory).of(trial, 1, 2, QUIET);
        double[][] more = trials(memory).of(trial, 1, 4, QUIET).orElseThrow();
        assertEquals(4, memory.noted.size());
        for (int i = 0; i < 4; i++) {
            assertArrayEquals(direct(1 + i), more[i]);
        }
    }

    @Test
    void aHoleInTheMiddleIsFilled() {
        Memory memory = new Memory();
        trials(memory).of(trial, 1, 4, QUIET);
        memory.known.remove("yard #2");
        memory.noted.clear();
        double[][] values = trials(memory).of(trial, 1, 4, QUIET).orElseThrow();
        assertEquals(List.of("yard #2"), memory.noted);
        for (int i = 0; i < 4; i++) {
            assertArrayEquals(direct(1 + i), values[i]);
        }
    }

    @Test
    void anotherTrialHasItsOwnValues() {
        Memory memory = new Memory();
        trials(memory).of(trial, 1, 1, QUIET);
        trials(memory).of(new Trial("other", trial.habitat(), DAY), 1, 1, QUIET);
        assertEquals(List.of("yard #1", "other #1"), memory.noted);
        assertEquals(2, made.get());
    }

    @Test
    void aStoppedTrialGivesNothingButNotesWhatWasFinishedAndGoesOnFromThere() {
        Memory memory = new Memory();
        AtomicInteger finished = new AtomicInteger();
        Progress stops = new Progress() {
            @Override
            public void finished(int done, int total) {
                finished.set(done);
            }

            @Override
            public boolean wantsStop() {
                return finished.get() >= 2;
            }
        };
        RunSettings longer = new RunSettings(7, 1, 300, Runs.DATE, 1);
        Trials stopped = new Trials(List.of(METRES, ODD), longer, memory);
        assertTrue(stopped.of(trial, 1, 12, stops).isEmpty());
        int kept = memory.noted.size();
        assertTrue(kept >= 2 && kept < 12, kept + " replications kept");
        double[][] values = stopped.of(trial, 1, 12, QUIET).orElseThrow();
        assertEquals(12, memory.noted.size());
        double[][] atOnce = new Trials(List.of(METRES, ODD), longer, Notebook.none())
                .of(trial, 1, 12, QUIET)
                .orElseThrow();
        for (int i = 0; i < 12; i++) {
            assertArrayEquals(atOnce[i], values[i]);
        }
    }
}
