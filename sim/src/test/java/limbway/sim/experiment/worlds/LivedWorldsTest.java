package limbway.sim.experiment.worlds;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.concurrent.ConcurrentSkipListMap;
import java.util.stream.DoubleStream;

import org.junit.jupiter.api.Test;

import limbway.model.enclosure.Bearing;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Material;
import limbway.model.enclosure.Resource;
import limbway.model.enclosure.ResourceKind;
import limbway.model.enclosure.Site;
import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportKind;
import limbway.model.geometry.Point;
import limbway.model.geometry.Polyline;
import limbway.model.study.Climate;
import limbway.model.study.Study;
import limbway.model.study.Variant;
import limbway.model.weather.MonthlyWeather;
import limbway.model.weather.ShiftedWeather;
import limbway.sim.Runs;
import limbway.sim.Yard;
import limbway.sim.experiment.Assumptions;
import limbway.sim.experiment.Outcome;
import limbway.sim.experiment.RunSettings;
import limbway.sim.experiment.screening.Factor;
import limbway.sim.experiment.trial.Criterion;
import limbway.sim.experiment.trial.Notebook;
import limbway.sim.habitat.Habitat;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

class LivedWorldsTest {

    private static final MonthlyWeather WARM = new MonthlyWeather(
            DoubleStream.generate(() -> 33).limit(12).boxed().toList(),
            DoubleStream.generate(() -> 24).limit(12).boxed().toList(),
            0.5,
            3);

    private final Habitat yard = Yard.furnished().build();
    private final Assumptions base = Assumptions.standard();
    private final RunSettings settings = new RunSettings(3, 1, 1, Runs.DATE, 1);

    /** The yard, and the same with its hatch up on a deck. */
    private final Variant high = raised();

    private Variant raised() {
        Enclosure e = yard.layout().enclosure();
        List<Resource> moved = e.resources().stream()
                .map(r -> r.id().equals("hatch")
                        ? new Resource("hatch", ResourceKind.FOOD, new Point(14.5, 3.5, 5), "deck-1", 3)
                        : r)
                .toList();
        Enclosure raised = new Enclosure(e.site(), e.ground(), e.supports(), e.platforms(), e.crowns(), moved);
        return new Variant("high", "", raised, yard.layout().feedings());
    }

    private Study study(Optional<Climate> climate) {
        return new Study("yard", climate, yard.animals(), yard.layout(), List.of(high), new TreeMap<String, Double>());
    }

    private static Criterion offGround() {
        return criterion("off", one -> {
            double all = 0;
            double off = 0;
            for (var trip : one.journals().get(0).trips()) {
                all += trip.way().lengthM();
                off += trip.way().offGroundM();
            }
            return all > 0 ? OptionalDouble.of(off / all) : OptionalDouble.empty();
        });
    }

    private static Criterion joules() {
        return criterion(
                "joules",
                one -> OptionalDouble.of(one.journals().get(0).trips().stream()
                        .mapToDouble(trip -> trip.way().milliJ() / 1000.0)
                        .sum()));
    }

    private static Criterion criterion(String name, java.util.function.Function<Outcome, OptionalDouble> value) {
        return new Criterion() {
            @Override
            public String name() {
                return name;
            }

            @Override
            public boolean isShare() {
                return true;
            }

            @Override
            public OptionalDouble of(Outcome one) {
                return value.apply(one);
            }
        };
    }

    /** Remembers, and counts what was asked in vain. */
    private static final class Memory implements Notebook {
        private final Map<String, double[]> known = new ConcurrentSkipListMap<>();
        private int notes;

        @Override
        public Optional<double[]> find(String key) {
            return Optional.ofNullable(known.get(key));
        }

        @Override
        public synchronized void note(String key, double[] values) {
            known.put(key, values);
            notes++;
        }
    }

    private LivedWorlds worlds(Optional<Climate> climate, Notebook notebook) {
        return new LivedWorlds(
                study(climate),
                List.of(yard.layout(), high),
                base,
                true,
                settings,
                List.of(offGround(), joules()),
                notebook);
    }

    private static ByLayout live(WorldModel model, Map<String, Double> values) {
        return assertInstanceOf(WorldModel.Lived.Values.class, model.live(values, 1, 1, () -> false))
                .values();
    }

    private static String found(WorldModel model, Map<String, Double> values) {
        return live(model, values).toString();
    }

    @Test
    void inputsAreDoubtfulNumbersMassesAndWarmth() {
        int doubtful = Factor.doubtful(base).size();
        assertEquals(
                doubtful + 4,
                PlausibleInputs.of(study(Optional.empty()), base, true).size());
        List<Factor> warm = PlausibleInputs.of(study(Optional.of(new Climate(WARM, 0))), base, true);
        assertEquals(doubtful + 5, warm.size());
        assertEquals("mass.flanged male", warm.get(doubtful).parameter().name());
        assertEquals(PlausibleInputs.WARMER, warm.get(doubtful + 4).parameter().name());
        List<String> bare = PlausibleInputs.of(study(Optional.empty()), base, false).stream()
                .map(f -> f.parameter().name())
                .toList();
        assertTrue(bare.size() < doubtful && bare.contains("energy.clamber-multiplier"));
        assertFalse(bare.contains("worth.company"));
    }

    @Test
    void eachInputReachesTheModel() {
        WorldModel cold = worlds(Optional.empty(), Notebook.none());
        WorldModel warm = worlds(Optional.of(new Climate(WARM, 0)), Notebook.none());
        String asStated = found(cold, Map.of());
        assertEquals(asStated, found(cold, Map.of("mass.adult female", 1.0)));
        assertNotEquals(asStated, found(cold, Map.of("mass.adult female", 1.1)));
        assertNotEquals(asStated, found(cold, Map.of("energy.clamber-multiplier", 3.0)));
        // without weather nobody minds; with it a warmer day is another day
        assertEquals(asStated, found(cold, Map.of(PlausibleInputs.WARMER, 3.0)));
        assertNotEquals(found(warm, Map.of()), found(warm, Map.of(PlausibleInputs.WARMER, 3.0)));
    }

    @Test
    void warmerWeatherIsWarmerAtEveryMoment() {
        Site site = yard.layout().enclosure().site();
        Instant noon = Instant.parse("2026-03-21T05:00:00Z");
        ShiftedWeather shifted = new ShiftedWeather(WARM, -2.5);
        assertEquals(WARM.at(site, noon).airC() - 2.5, shifted.at(site, noon).airC(), 1e-12);
        assertEquals(WARM.at(site, noon).irradiance(), shifted.at(site, noon).irradiance());
        assertTrue(shifted.origin().endsWith(", 2.5 K colder"), shifted.origin());
    }

    @Test
    void valuesThatTheModelRefusesAreToldWithItsWords() {
        WorldModel model = worlds(Optional.empty(), Notebook.none());
        WorldModel.Lived lived =
                model.live(Map.of("need.heat-from", 45.0, "need.heat-greatest", 40.0), 1, 1, () -> false);
        assertTrue(assertInstanceOf(WorldModel.Lived.Refused.class, lived).why().contains("heat"));
        assertInstanceOf(WorldModel.Lived.GivenUp.class, model.live(Map.of(), 1, 1, () -> true));
    }

    /** What goes wrong while a world is lived or judged is a fault of the program, not a world that does not work. */
    @Test
    void aFaultIsNotTakenForAWorldThatIsRefused() {
        Criterion faulty = criterion("faulty", one -> {
            throw new IllegalArgumentException("a fault");
        });
        WorldModel model = new LivedWorlds(
                study(Optional.empty()),
                List.of(yard.layout()),
                base,
                true,
                settings,
                List.of(faulty),
                Notebook.none());
        Exception fault = assertThrows(RuntimeException.class, () -> model.live(Map.of(), 1, 1, () -> false));
        assertTrue(fault.toString().contains("a fault"), fault.toString());
    }

    /** A pole that sways makes the graph depend on mass; then a world is compiled for its own bodies. */
    @Test
    void whereMassOpensASwayTheLayoutIsCompiledForEachMass() {
        assertTrue(new WeighedLayout(study(Optional.empty()), yard.layout(), base).isGraphFixed());
        Enclosure e = yard.layout().enclosure();
        List<Support> supports = new ArrayList<>(e.supports());
        // beside the diagonal rope, 2.4 m away in plan
        supports.add(new Support(
                "swaying",
                SupportKind.POLE,
                new Polyline(List.of(new Point(10, 10, 0), new Point(10, 10, 7))),
                0.08,
                0.08,
                Material.TIMBER,
                new Bearing(OptionalDouble.of(600), OptionalDouble.empty(), true)));
        Enclosure swaying = new Enclosure(e.site(), e.ground(), supports, e.platforms(), e.crowns(), e.resources());
        Variant layout = new Variant("swaying", "", swaying, yard.layout().feedings());
        WeighedLayout weighed = new WeighedLayout(study(Optional.empty()), layout, base);
        assertFalse(weighed.isGraphFixed());
        Map<String, Double> heavy = Map.of("mass.flanged male", 1.15);
        Habitat found = weighed.habitat(heavy, base);
        Habitat expected = new Habitat(
                layout,
                PlausibleInputs.animals(study(Optional.empty()), heavy),
                Optional.empty(),
                base.energy(),
                base.sharpness());
        assertEquals(expected.graph().moveCount(), found.graph().moveCount());
    }

    @Test
    void workThatWasStoppedGoesOnWhereItWas() {
        List<Factor> inputs = PlausibleInputs.of(study(Optional.empty()), base, true);
        WorldSettings few = new WorldSettings(10, 1, 0, 1, 0, 3, 1);
        Memory whole = new Memory();
        String expected = written(run(inputs, few, whole, Integer.MAX_VALUE).orElseThrow());
        Memory notebook = new Memory();
        assertTrue(run(inputs, few, notebook, 4).isEmpty());
        int noted = notebook.notes;
        assertTrue(noted > 0 && noted < whole.notes, "noted = " + noted);
        assertEquals(
                expected, written(run(inputs, few, notebook, Integer.MAX_VALUE).orElseThrow()));
        // nothing was lived in twice, and on other threads it is the same
        assertEquals(whole.notes, notebook.notes);
        WorldSettings threads = new WorldSettings(10, 1, 0, 1, 0, 3, 2);
        assertEquals(
                expected,
                written(run(inputs, threads, Notebook.none(), Integer.MAX_VALUE).orElseThrow()));
    }

    private Optional<WorldsFound> run(List<Factor> inputs, WorldSettings few, Notebook notebook, int stopAfter) {
        int[] done = {0};
        return PlausibleWorlds.run(
                inputs,
                List.of("low", "high"),
                List.of("off", "joules"),
                worlds(Optional.empty(), notebook),
                few,
                new WorldProgress() {
                    @Override
                    public void finished(Stage stage, int nowDone, int total) {
                        done[0]++;
                    }

                    @Override
                    public boolean wantsStop() {
                        return done[0] >= stopAfter;
                    }
                });
    }

    private static String written(WorldsFound found) {
        StringBuilder text = new StringBuilder();
        found.worlds().forEach(world -> text.append(world.number()).append(world.found()));
        return text.append(found.pairs()).toString();
    }
}
