package limbway.reports.bench;

import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;

import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Level;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.TearDown;
import org.openjdk.jmh.annotations.Warmup;

import limbway.model.body.Body;
import limbway.model.body.BodyCatalogue;
import limbway.model.enclosure.Enclosure;
import limbway.model.geometry.Point;
import limbway.model.graph.GraphSettings;
import limbway.model.graph.RouteGraph;
import limbway.model.scene.Scene;

/**
 * Question: does the time to compile an enclosure grow faster than its size?
 *
 * <p>Beams of 1 to 3 m, thrown at random at one density, one for each 10 m² of ground, up to 8 m high.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.SingleShotTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Fork(value = 1, jvmArgs = "-Xmx12g")
@Warmup(iterations = 1)
@Measurement(iterations = 3)
public class CompileBenchmark {

    private static final double GROUND_M2_PER_BEAM = 10;
    private static final double BYTES_PER_MB = 1e6;

    /** Number of beams. */
    @Param({"1000", "10000", "100000"})
    public int beams;

    private Enclosure enclosure;
    private GraphSettings settings;
    private RouteGraph graph;

    /** Throws the beams. */
    @Setup
    public void build() {
        Body body = BodyCatalogue.standard().find("adult female").orElseThrow();
        settings = GraphSettings.forBodies(List.of(body));
        double sideM = Math.sqrt(beams * GROUND_M2_PER_BEAM);
        SplittableRandom chance = new SplittableRandom(1);
        Scene scene = Scene.yard(sideM, sideM);
        for (int i = 0; i < beams; i++) {
            Point a = new Point(
                    chance.nextDouble(3, sideM - 3), chance.nextDouble(3, sideM - 3), chance.nextDouble(2, 8));
            Point along =
                    new Point(chance.nextDouble(-1.5, 1.5), chance.nextDouble(-1.5, 1.5), chance.nextDouble(-1, 1));
            scene.beam("beam-" + i, 0.06, a, a.plus(along.times(1 + 1 / along.lengthM())));
        }
        enclosure = scene.build();
    }

    /**
     * Compiles.
     *
     * @return the graph
     */
    @Benchmark
    public RouteGraph compile() {
        graph = RouteGraph.compile(enclosure, settings);
        return graph;
    }

    /** Says how large the graph became, and what of the heap is in use with it. */
    @TearDown(Level.Trial)
    public void tell() {
        System.gc();
        Runtime heap = Runtime.getRuntime();
        double megabytes = (heap.totalMemory() - heap.freeMemory()) / BYTES_PER_MB;
        System.out.println("holds " + graph.holdCount() + ", moves " + graph.moveCount() + ", heap in use "
                + Math.round(megabytes) + " MB");
    }
}
