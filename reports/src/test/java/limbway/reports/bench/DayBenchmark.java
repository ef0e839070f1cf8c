package limbway.reports.bench;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.TimeUnit;

import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;

import limbway.model.body.Body;
import limbway.model.body.BodyCatalogue;
import limbway.model.enclosure.ResourceKind;
import limbway.model.energy.EnergySettings;
import limbway.model.geometry.Point;
import limbway.model.route.ChoiceSharpness;
import limbway.model.scene.Scene;
import limbway.model.study.Animal;
import limbway.model.study.Feeding;
import limbway.model.study.Variant;
import limbway.sim.animal.DaySettings;
import limbway.sim.chance.Chance;
import limbway.sim.day.RunPlan;
import limbway.sim.day.TickingReplication;
import limbway.sim.experiment.Experiment;
import limbway.sim.experiment.Outcome;
import limbway.sim.experiment.RunSettings;
import limbway.sim.habitat.Habitat;
import limbway.sim.journal.Journal;

/**
 * Question: how many animal-days does one core live through in a second, event by event, a trip being one event; and how
 * many under a clock that ticks every second, with the same animals, choices, stalls and food?
 *
 * <p>A yard of six masts with decks and ropes, five animals, fifteen resources. Aim: 10,000 a second or more.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.SECONDS)
@Fork(2)
@Warmup(iterations = 5, time = 2)
@Measurement(iterations = 10, time = 2)
public class DayBenchmark {

    private static final int DAYS = 100;
    private static final int ANIMALS = 5;
    private static final double DECK_Z = 5;
    private static final ResourceKind[] ALOFT = {
        ResourceKind.NEST, ResourceKind.FOOD, ResourceKind.SHADE, ResourceKind.NEST, ResourceKind.WATER
    };

    private Habitat habitat;

    /** Compiles the yard and looks up its ways, which is not measured. */
    @Setup
    public void build() {
        habitat = yard();
    }

    static Habitat yard() {
        Scene scene = Scene.yard(30, 20);
        double[][] masts = {{4, 4}, {15, 4}, {26, 4}, {26, 16}, {15, 16}, {4, 16}};
        for (int i = 0; i < masts.length; i++) {
            double x = masts[i][0];
            double y = masts[i][1];
            double[] next = masts[(i + 1) % masts.length];
            scene.pole("mast-" + i, x, y, 7).deck("deck-" + i, x - 1, y - 1, x + 1, y + 1, DECK_Z);
            scene.rope("rope-" + i, new Point(x, y, 5.5), new Point(next[0], next[1], 5.5));
            scene.resource("a-" + i, ALOFT[i % 5], new Point(x + 0.5, y, DECK_Z), "deck-" + i);
            scene.resource("b-" + i, ALOFT[(i + 3) % 5], new Point(x - 0.5, y, DECK_Z), "deck-" + i);
        }
        scene.food("hatch", 28, 10, 0);
        scene.resource("trough", ResourceKind.WATER, new Point(15, 10, 0), "");
        scene.resource("den", ResourceKind.RETREAT, new Point(2, 10, 0), "");
        List<Feeding> feedings = List.of(
                new Feeding("a-1", LocalTime.of(8, 0), 9000),
                new Feeding("hatch", LocalTime.of(12, 0), 9000),
                new Feeding("b-3", LocalTime.of(15, 30), 9000));
        Habitat habitat = new Habitat(
                new Variant("yard", "", scene.build(), feedings),
                List.of(
                        animal("A", "flanged male", 1),
                        animal("B", "adult female", 2),
                        animal("C", "adult female", 3),
                        animal("D", "adolescent", 4),
                        animal("E", "juvenile", 5)),
                Optional.empty(),
                EnergySettings.standard(),
                ChoiceSharpness.GROUP.standard());
        for (Body body : habitat.bodies()) {
            habitat.passages(body);
        }
        return habitat;
    }

    private static Animal animal(String name, String body, int rank) {
        return new Animal(name, BodyCatalogue.standard().find(body).orElseThrow(), rank);
    }

    /** A hundred days of the group, on one thread. */
    @Benchmark
    @OperationsPerInvocation(DAYS * ANIMALS)
    public Outcome animalDays() {
        RunSettings settings = new RunSettings(7, 1, DAYS, LocalDate.of(2025, 3, 1), 1, 0);
        return Experiment.run(habitat, settings, DaySettings.standard(), (done, total) -> {});
    }

    /** The same under a clock that ticks every second, needs brought up to date at every tick. */
    @Benchmark
    @OperationsPerInvocation(DAYS * ANIMALS)
    public Journal tickingAnimalDays() {
        return ticking(habitat, DAYS, 7, true);
    }

    /** The same, but at a tick nothing is done except asking each animal whether anything is due. */
    @Benchmark
    @OperationsPerInvocation(DAYS * ANIMALS)
    public Journal tickingAnimalDaysClockOnly() {
        return ticking(habitat, DAYS, 7, false);
    }

    static Journal ticking(Habitat habitat, int days, int seed, boolean keepsNeeds) {
        RunPlan plan = new RunPlan(habitat, DaySettings.standard(), LocalDate.of(2025, 3, 1), days);
        return new TickingReplication(plan, new Chance(seed, 1), keepsNeeds).run();
    }
}
