package limbway.sim.experiment.comparison;

import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.enclosure.ResourceKind;
import limbway.sim.Runs;
import limbway.sim.Yard;
import limbway.sim.animal.DaySettings;
import limbway.sim.experiment.Outcome;
import limbway.sim.experiment.Progress;
import limbway.sim.experiment.RunSettings;
import limbway.sim.experiment.statistics.PairedDifference;
import limbway.sim.experiment.statistics.StoppingRule;
import limbway.sim.experiment.trial.Criterion;
import limbway.sim.experiment.trial.Notebook;
import limbway.sim.experiment.trial.Trial;
import limbway.sim.experiment.trial.Trials;
import limbway.sim.habitat.Habitat;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Layouts of a small yard, compared under the same chance. */
class ComparisonTest {

    private static final Progress QUIET = (done, total) -> {};
    private static final StoppingRule RULE = new StoppingRule(0.02, 0.1, 10, 10);
    private static final List<Criterion> CRITERIA = List.of(
            criterion(
                    "offground_distance",
                    true,
                    one -> Runs.offGroundShare(one.journals().get(0))),
            criterion("trips", false, one -> one.journals().get(0).trips().size()));

    private interface Value {
        double of(Outcome one);
    }

    private static Criterion criterion(String name, boolean share, Value value) {
        return new Criterion() {
            @Override
            public String name() {
                return name;
            }

            @Override
            public boolean isShare() {
                return share;
            }

            @Override
            public OptionalDouble of(Outcome one) {
                return OptionalDouble.of(value.of(one));
            }
        };
    }

    private static Trials trials(int seed, int threads, Notebook notebook) {
        return new Trials(CRITERIA, new RunSettings(seed, 1, 1, Runs.DATE, threads, 0), notebook);
    }

    private static Trial trial(String name, Yard yard) {
        return new Trial(name, yard::build, DaySettings.standard());
    }

    private static final Trial AS_DRAWN = trial("as drawn", Yard.furnished());

    /** A rope from the feeder's side to the deck of the other feeder. */
    private static final Trial LINKED =
            trial("linked", Yard.furnished().rope("second diagonal", 26, 4, 5.5, 4, 16, 5.5));

    private static Compared compared(Trials trials, StoppingRule rule, int budget, Trial... layouts) {
        return new Comparison(trials, rule, Set.of("offground_distance"), budget, 1)
                .of(List.of(layouts), QUIET)
                .orElseThrow();
    }

    private static final class MapNotebook implements Notebook {
        private final Map<String, double[]> known = new HashMap<>();

        @Override
        public Optional<double[]> find(String key) {
            return Optional.ofNullable(known.get(key));
        }

        @Override
        public synchronized void note(String key, double[] values) {
            known.put(key, values);
        }
    }

    /**
     * A rope that nobody can reach changes nothing. A deck or a feeder up there would: a deck hides some of the sky, and
     * places of food are worth watching; that is a difference by the worth of places, not by chance.
     */
    @Test
    @Tag("derived")
    void anUnrelatedChangeMakesExactlyNoDifference() {
        Trial unrelated = trial("unrelated", Yard.furnished().rope("wire", 10, 9, 19, 20, 9, 19));
        assertNothingDiffers(AS_DRAWN, unrelated);
        // with chance of its own the very same layout seems to differ
        PairedDifference apart = PairedDifference.of(values(3, AS_DRAWN, 20), values(4, unrelated, 20))
                .orElseThrow();
        assertTrue(apart.spread() > 0.01, apart.toString());
    }

    @Test
    @Tag("derived")
    void withNeedsAndEnergyAloneAPlaceThatNobodyCanReachMakesExactlyNoDifference() {
        DaySettings bare = DaySettings.standard().withoutWorth();
        Yard more = Yard.furnished()
                .deck("cloud", 15, 10, 19)
                .on("cloud-tray", ResourceKind.FOOD, "cloud", 15, 10, 19, 1)
                .feed("cloud-tray", "10:07", 900);
        assertNothingDiffers(
                new Trial("as drawn", Yard.furnished()::build, bare), new Trial("cloud", more::build, bare));
    }

    private static void assertNothingDiffers(Trial one, Trial other) {
        Compared compared = compared(trials(3, 2, Notebook.none()), RULE, 10, one, other);
        assertEquals(2, compared.differences().size());
        for (Difference difference : compared.differences()) {
            assertEquals(0, difference.paired().mean());
            assertEquals(0, difference.paired().spread());
            assertEquals(1, difference.pHolm());
            assertEquals(1, difference.paired().correlation().orElseThrow(), 1e-12);
        }
        assertEquals(Stopped.PRECISE, compared.stopped());
    }

    private static double[] values(int seed, Trial layout, int replications) {
        double[][] values = trials(seed, 2, Notebook.none())
                .of(layout, 1, replications, QUIET)
                .orElseThrow();
        return Arrays.stream(values).mapToDouble(v -> v[0]).toArray();
    }

    /** Of our own output: which of the two spreads is smaller is not the same in every yard. */
    @Test
    @Tag("pinned")
    void theSameChanceMakesTheDifferenceOfARealChangeSurer() {
        PairedDifference common = PairedDifference.of(values(3, AS_DRAWN, 40), values(3, LINKED, 40))
                .orElseThrow();
        PairedDifference apart = PairedDifference.of(values(3, AS_DRAWN, 40), values(4, LINKED, 40))
                .orElseThrow();
        assertTrue(common.correlation().orElseThrow() > 0, common.toString());
        assertTrue(common.spread() < apart.spread(), common + " against " + apart);
    }

    @Test
    @Tag("derived")
    void anyNumberOfThreadsGivesTheSame() {
        Compared one = compared(trials(5, 1, Notebook.none()), RULE, 20, AS_DRAWN, LINKED);
        for (int threads : new int[] {2, 7}) {
            Compared other = compared(trials(5, threads, Notebook.none()), RULE, 20, AS_DRAWN, LINKED);
            assertEquals(one.differences(), other.differences());
            assertArrayEquals(one.sample().of(1, 0), other.sample().of(1, 0));
        }
    }

    @Test
    @Tag("derived")
    void whatWasStoppedGoesOnAndEndsTheSame() {
        StoppingRule never = new StoppingRule(1e-9, 0.1, 10, 10);
        Compared whole = compared(trials(5, 2, Notebook.none()), never, 30, AS_DRAWN, LINKED);
        assertEquals(Stopped.BUDGET, whole.stopped());
        assertEquals(30, whole.replications());

        MapNotebook notebook = new MapNotebook();
        // in the second batch of the second layout
        Compared part = new Comparison(trials(5, 1, notebook), never, Set.of("offground_distance"), 30, 1)
                .of(List.of(AS_DRAWN, LINKED), new StopAfter(33))
                .orElseThrow();
        assertEquals(Stopped.INTERRUPTED, part.stopped());
        assertEquals(10, part.replications());
        assertTrue(notebook.known.size() >= 33, notebook.known.size() + " noted");

        Compared resumed = compared(trials(5, 2, notebook), never, 30, AS_DRAWN, LINKED);
        assertEquals(whole.differences(), resumed.differences());
        assertEquals(whole.stopped(), resumed.stopped());
        assertTrue(new Comparison(trials(5, 1, Notebook.none()), never, Set.of(), 30, 1)
                .of(List.of(AS_DRAWN, LINKED), new StopAfter(3))
                .isEmpty());
    }

    private static final class StopAfter implements Progress {
        private final int enough;
        private boolean stop;

        StopAfter(int enough) {
            this.enough = enough;
        }

        @Override
        public void finished(int done, int total) {
            assertEquals(60, total);
            stop = done >= enough;
        }

        @Override
        public boolean wantsStop() {
            return stop;
        }
    }

    @Test
    @Tag("derived")
    void itStopsWhenPreciseAndSaysWhatIsWidestWhenNot() {
        Compared wide =
                compared(trials(5, 2, Notebook.none()), new StoppingRule(1e-3, 0.1, 10, 10), 20, AS_DRAWN, LINKED);
        assertEquals(Stopped.BUDGET, wide.stopped());
        Difference widest = wide.widest().orElseThrow();
        double times = widest.paired().halfWidth() / 1e-3;
        assertEquals((long) Math.ceil(20 * times * times), widest.replicationsNeeded());
        assertTrue(widest.replicationsNeeded() > 20);
        assertEquals(0, widest.criterion(), "trips are not required");

        Compared precise =
                compared(trials(5, 2, Notebook.none()), new StoppingRule(0.5, 0.1, 10, 10), 20, AS_DRAWN, LINKED);
        assertEquals(Stopped.PRECISE, precise.stopped());
        assertEquals(10, precise.replications());
    }

    /** Nobody travels, so nothing is known: that is not precise, and the budget is spent. */
    @Test
    @Tag("derived")
    void aRequiredDifferenceWithoutValueIsNotPrecise() {
        List<Criterion> none = List.of(
                criterion("offground_distance", true, one -> Double.NaN),
                criterion("trips", false, one -> one.journals().get(0).trips().size()));
        MapNotebook made = new MapNotebook();
        for (int r = 1; r <= 20; r++) {
            made.note("as drawn #" + r, new double[] {Double.NaN, 5});
            // of the other layout one replication gives a value, which is too few
            made.note("linked #" + r, new double[] {r == 3 ? 0.4 : Double.NaN, 5});
        }
        Trials trials = new Trials(none, new RunSettings(5, 1, 2, Runs.DATE, 1, 1), made);
        Compared compared = compared(trials, RULE, 20, AS_DRAWN, LINKED);
        assertEquals(Stopped.BUDGET, compared.stopped());
        assertEquals(20, compared.replications());
        assertEquals(List.of(new Compared.Missing(0, 1, 0)), compared.missing());
        assertTrue(compared.widest().isEmpty());
    }

    @Test
    void aNotebookUnderAHeadingIsApart() {
        MapNotebook whole = new MapNotebook();
        whole.note("a #1", new double[] {1});
        Notebook apart = whole.under("only trips: ");
        assertTrue(apart.find("a #1").isEmpty());
        apart.note("a #1", new double[] {2});
        assertArrayEquals(new double[] {2}, apart.find("a #1").orElseThrow());
        assertArrayEquals(new double[] {1}, whole.find("a #1").orElseThrow());
    }

    @Test
    void whatCannotBeComparedIsRefused() {
        Trials trials = trials(1, 1, Notebook.none());
        assertThrows(IllegalArgumentException.class, () -> new Comparison(trials, RULE, Set.of(), 9, 1));
        assertThrows(IllegalArgumentException.class, () -> new Comparison(trials, RULE, Set.of("speed"), 10, 1));
    }

    @Test
    @Tag("derived")
    void aLayoutIsMadeReadyOnce() {
        int[] made = {0};
        Habitat habitat = Yard.furnished().build();
        Trial counted = new Trial(
                "counted",
                () -> {
                    made[0]++;
                    return habitat;
                },
                DaySettings.standard());
        compared(trials(5, 2, Notebook.none()), new StoppingRule(1e-9, 0.1, 10, 10), 20, AS_DRAWN, counted);
        assertEquals(1, made[0]);
    }
}
