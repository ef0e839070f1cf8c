package limbway.reports.patterns;

import java.util.List;
import java.util.Optional;
import java.util.function.Function;

import limbway.model.graph.RouteGraph;
import limbway.model.route.Search;
import limbway.model.route.Way;
import limbway.sim.habitat.Habitat;

/** What ways cost between two resources, without letting anybody live. */
final class WayCosts {

    private WayCosts() {}

    /** Energy of the cheapest way off the ground [J]. */
    static Measurement offGround(Run run, String from, String to) {
        return cost(run, from, to, Search.Reached::offGround);
    }

    /** Energy of the cheapest way over the ground [J]. */
    static Measurement overGround(Run run, String from, String to) {
        return cost(run, from, to, Search.Reached::overGround);
    }

    private static Measurement cost(Run run, String from, String to, Function<Search.Reached, Optional<Way>> which) {
        return lives -> {
            Habitat habitat = lives.habitat(run);
            RouteGraph graph = habitat.graph();
            int start = graph.useHolds(graph.resourceNumber(from))[0];
            Search search = habitat.routes(habitat.bodies().get(0)).find(start, graph.resourceNumber(to));
            return search instanceof Search.Reached reached
                    ? which.apply(reached)
                            .map(way -> List.of(way.milliJ() / 1000.0))
                            .orElse(List.of())
                    : List.of();
        };
    }
}
