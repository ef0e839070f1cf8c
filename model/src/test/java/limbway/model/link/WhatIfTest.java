package limbway.model.link;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import limbway.model.alteration.Alteration;
import limbway.model.body.Body;
import limbway.model.body.BodyCatalogue;
import limbway.model.enclosure.Enclosure;
import limbway.model.energy.EnergySettings;
import limbway.model.graph.GraphSettings;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.model.route.ChoiceSharpness;
import limbway.model.route.Routes;
import limbway.model.scene.RandomEnclosure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

class WhatIfTest {

    private static final LinkLimits ROPES = new LinkLimits(LinkKind.ROPE, 0.05, 1.5, 10, 40, 2.5, 1.5, false);
    private static final EnergySettings ENERGY = EnergySettings.standard();

    private static List<Body> bodies(String... names) {
        return List.of(names).stream()
                .map(name -> BodyCatalogue.standard().find(name).orElseThrow())
                .toList();
    }

    /** Every body from every use hold to every resource. */
    static WhatIf whatIf(Enclosure enclosure, List<Body> bodies) {
        GraphSettings settings = GraphSettings.forBodies(bodies);
        RouteGraph graph = RouteGraph.compile(enclosure, settings);
        Map<Body, Routes> routes = new LinkedHashMap<>();
        List<Errand> errands = new ArrayList<>();
        for (Body body : bodies) {
            routes.put(body, new Routes(graph, MoveCosts.of(graph, body, ENERGY), new ChoiceSharpness(22)));
            for (int from = 0; from < graph.resources().size(); from++) {
                for (int hold : graph.useHolds(from)) {
                    for (int to = 0; to < graph.resources().size(); to++) {
                        errands.add(new Errand(body, hold, to, 1, 1));
                    }
                }
            }
        }
        return new WhatIf(enclosure, graph, settings, ENERGY, routes, errands);
    }

    @ParameterizedTest
    @Tag("derived")
    @ValueSource(ints = {1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12})
    void everyLinkCostsWhatCompilingAnewSaysToTheMillijoule(int seed) {
        Enclosure enclosure = RandomEnclosure.of(seed);
        List<Body> bodies = bodies("adult female", "flanged male");
        WhatIf whatIf = whatIf(enclosure, bodies);
        List<WayCosts> before = whatIf.before();
        List<Candidate> all = Candidates.of(enclosure, bodies, ROPES).all();
        int better = 0;
        int local = 0;
        for (int i = 0; i < all.size(); i += 1 + all.size() / 12) {
            Alteration.SupportAdded link = all.get(i).alteration("new");
            List<WayCosts> compiled = whatIf.compiled(link.applyTo(enclosure));
            assertEquals(compiled, whatIf.with(link), "RandomEnclosure.of(" + seed + "), " + all.get(i));
            better += compiled.equals(before) ? 0 : 1;
            local += whatIf.isLocal(link) ? 1 : 0;
        }
        System.out.println(seed + " candidates " + all.size() + " better " + better + " local " + local);
        assertTrue(all.isEmpty() || local > 0, "compiled anew for every one of " + all.size());
    }
}
