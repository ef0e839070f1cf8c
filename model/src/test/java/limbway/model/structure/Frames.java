package limbway.model.structure;

import java.util.List;

import limbway.model.body.Body;
import limbway.model.body.BodyCatalogue;
import limbway.model.enclosure.Enclosure;
import limbway.model.energy.EnergySettings;
import limbway.model.graph.GraphSettings;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;

/** Condenses test enclosures for a body of the catalogue. */
final class Frames {

    static final List<Body> BODIES = BodyCatalogue.standard().names().stream()
            .map(name -> BodyCatalogue.standard().find(name).orElseThrow())
            .toList();

    private Frames() {}

    static Body body(String name) {
        return BodyCatalogue.standard().find(name).orElseThrow();
    }

    static PartGraph of(Enclosure enclosure, Body body) {
        RouteGraph graph = RouteGraph.compile(enclosure, GraphSettings.forBodies(BODIES));
        return PartGraph.of(graph, MoveCosts.of(graph, body, EnergySettings.standard()));
    }
}
