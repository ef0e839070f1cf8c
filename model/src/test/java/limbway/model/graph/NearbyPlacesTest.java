package limbway.model.graph;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

import org.jgrapht.Graph;
import org.jgrapht.alg.shortestpath.DijkstraShortestPath;
import org.jgrapht.graph.DefaultWeightedEdge;
import org.jgrapht.graph.SimpleWeightedGraph;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import limbway.model.geometry.Point;

import static org.junit.jupiter.api.Assertions.assertTrue;

/** Ways by neighbours against straight ones, on open ground where the straight one is the truth. */
class NearbyPlacesTest {

    @ParameterizedTest
    @ValueSource(doubles = {30, 100, 300})
    void waysByNeighboursAreHardlyLonger(double sideM) {
        SplittableRandom chance = new SplittableRandom(3);
        List<Point> places = new ArrayList<>();
        for (int i = 0; i < 2000; i++) {
            places.add(new Point(chance.nextDouble(sideM), chance.nextDouble(sideM), 0));
        }
        Graph<Integer, DefaultWeightedEdge> graph = new SimpleWeightedGraph<>(DefaultWeightedEdge.class);
        for (int i = 0; i < places.size(); i++) {
            graph.addVertex(i);
        }
        NearbyPlaces nearby = new NearbyPlaces(places);
        for (int i = 0; i < places.size(); i++) {
            for (int j : nearby.around(i)) {
                DefaultWeightedEdge edge = graph.addEdge(i, j);
                if (edge != null) {
                    graph.setEdgeWeight(edge, places.get(i).distanceM(places.get(j)));
                }
            }
        }
        double worst = 0;
        double sum = 0;
        int count = 0;
        for (int i = 0; i < places.size(); i += 100) {
            var paths = new DijkstraShortestPath<>(graph).getPaths(i);
            for (int j = 0; j < places.size(); j++) {
                if (i != j) {
                    double excess = paths.getWeight(j) / places.get(i).distanceM(places.get(j)) - 1;
                    worst = Math.max(worst, excess);
                    sum += excess;
                    count++;
                }
            }
        }
        // in 32 directions a step misses its aim by less than 11.25 degrees: at worst 1 / (1 - 2 sin 5.625 deg) = 1.24
        double measured = worst;
        assertTrue(worst < 0.06, () -> "worst excess " + measured);
        assertTrue(sum / count < 0.01, "mean excess " + sum / count);
        assertTrue(worst > 0, "the ways are straight: nothing was left out");
    }
}
