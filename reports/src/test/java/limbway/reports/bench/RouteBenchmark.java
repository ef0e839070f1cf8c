package limbway.reports.bench;

import java.util.List;
import java.util.SplittableRandom;
import java.util.concurrent.TimeUnit;

import org.jgrapht.Graph;
import org.jgrapht.alg.shortestpath.DijkstraShortestPath;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
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
import limbway.model.graph.GraphSettings;
import limbway.model.graph.JGraphView;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.model.route.IncomingMoves;
import limbway.model.route.ReverseTree;
import limbway.model.scene.Scene;

/**
 * Question: how long does one reverse tree take, against reading its arrays once; and how much faster is walking a tree
 * than asking JGraphT's Dijkstra for the same way?
 *
 * <p>A yard of masts in a square with ropes between neighbours, about 5,000 holds and 25,000 moves.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Fork(2)
@Warmup(iterations = 5, time = 1)
@Measurement(iterations = 7, time = 1)
public class RouteBenchmark {

    private static final int ACROSS = 6;
    private static final double APART_M = 5;

    private IncomingMoves moves;
    private int[] target;
    private int[] sums;
    private ReverseTree tree;
    private RouteGraph graph;
    private Graph<Integer, DefaultWeightedEdge> reference;
    private final SplittableRandom chance = new SplittableRandom(1);

    /** Compiles the yard and says how large it became. */
    @Setup
    public void build() {
        Body body = BodyCatalogue.standard().find("adult female").orElseThrow();
        graph = RouteGraph.compile(yard().build(), GraphSettings.forBodies(List.of(body)));
        MoveCosts costs = MoveCosts.of(graph, body, EnergySettings.standard());
        moves = new IncomingMoves(graph, costs);
        target = graph.useHolds(0);
        sums = new int[graph.holdCount()];
        tree = ReverseTree.offGround(moves, target);
        reference = JGraphView.of(graph, costs);
        System.out.println("holds " + graph.holdCount() + ", moves " + moves.moveCount());
    }

    private static Scene yard() {
        double sideM = APART_M * (ACROSS + 1);
        Scene scene = Scene.yard(sideM, sideM);
        for (int i = 0; i < ACROSS; i++) {
            for (int j = 0; j < ACROSS; j++) {
                double x = APART_M * (i + 1);
                double y = APART_M * (j + 1);
                scene.pole("mast-" + i + "-" + j, x, y, 7);
                if (i > 0) {
                    scene.rope("east-" + i + "-" + j, new Point(x - APART_M, y, 6), new Point(x, y, 6.5));
                }
                if (j > 0) {
                    scene.rope("north-" + i + "-" + j, new Point(x, y - APART_M, 5), new Point(x, y, 5.5));
                }
            }
        }
        return scene.resource("food", ResourceKind.FOOD, new Point(APART_M, APART_M, 7), "mast-0-0");
    }

    /** Lower bound: every array read once, front to back. */
    @Benchmark
    public int[] sweep() {
        for (int hold = 0; hold < sums.length; hold++) {
            int least = Integer.MAX_VALUE;
            int end = moves.end(hold);
            for (int i = moves.start(hold); i < end; i++) {
                least = Math.min(least, (sums[moves.from(i)] & 1023) + moves.milliJ(i));
            }
            sums[hold] = least;
        }
        return sums;
    }

    /** The tree without moves on the ground. */
    @Benchmark
    public ReverseTree treeOffGround() {
        return ReverseTree.offGround(moves, target);
    }

    /** The tree with at least one move on the ground. */
    @Benchmark
    public ReverseTree treeOverGround() {
        return ReverseTree.overGround(moves, tree);
    }

    /** A trip: the cost read, and the way walked move by move. */
    @Benchmark
    public int walk() {
        int hold = chance.nextInt(graph.holdCount());
        int length = 0;
        while (tree.nextMove(hold) != ReverseTree.NO_MOVE) {
            hold = graph.to(tree.nextMove(hold));
            length++;
        }
        return length;
    }

    /** The same trip asked of JGraphT. */
    @Benchmark
    public double jgraphtDijkstra() {
        int hold = chance.nextInt(graph.holdCount());
        return new DijkstraShortestPath<>(reference).getPathWeight(hold, target[0]);
    }
}
