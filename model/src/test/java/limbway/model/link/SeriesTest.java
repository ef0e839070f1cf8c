package limbway.model.link;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.body.Body;
import limbway.model.body.BodyCatalogue;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.ResourceKind;
import limbway.model.energy.EnergySettings;
import limbway.model.geometry.Point;
import limbway.model.graph.GraphSettings;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.model.route.ChoiceSharpness;
import limbway.model.route.Routes;
import limbway.model.scene.Scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

class SeriesTest {

    private static final Body FEMALE =
            BodyCatalogue.standard().find("adult female").orElseThrow();

    /** Longer than from mast to mast, shorter than over one: only neighbours can be joined. */
    private static final LinkLimits LIMITS = new LinkLimits(LinkKind.ROPE, 0.05, 1, 9, 30, 2.5, 1, false);

    /** Masts in a row, food on the first and a nest on the last. */
    private static final class Row {

        private final Enclosure enclosure;
        private final RouteGraph graph;
        private final Map<Body, Routes> routes = new LinkedHashMap<>();
        private final WhatIf whatIf;
        private final Expectation expectation;
        private final List<Candidate> all;
        private final List<LinkEffect> effects = new ArrayList<>();

        Row(int masts) {
            Scene scene = Scene.yard(10 + 8 * masts, 12);
            for (int i = 0; i < masts; i++) {
                scene.pole("mast-" + i, 6 + 8 * i, 6, 6);
            }
            scene.resource("tray", ResourceKind.FOOD, new Point(6, 6, 5), "mast-0");
            scene.resource("nest", ResourceKind.NEST, new Point(6 + 8 * (masts - 1), 6, 5), "mast-" + (masts - 1));
            enclosure = scene.build();
            GraphSettings settings = GraphSettings.forBodies(List.of(FEMALE));
            graph = RouteGraph.compile(enclosure, settings);
            EnergySettings energy = EnergySettings.standard();
            ChoiceSharpness sharpness = new ChoiceSharpness(22);
            routes.put(FEMALE, new Routes(graph, MoveCosts.of(graph, FEMALE, energy), sharpness));
            List<Errand> errands = List.of(
                    new Errand(FEMALE, graph.useHolds(0)[0], 1, 3, 60),
                    new Errand(FEMALE, graph.useHolds(1)[0], 0, 3, 60));
            whatIf = new WhatIf(enclosure, graph, settings, energy, routes, errands);
            expectation = new Expectation(errands, routes, sharpness);
            all = Candidates.of(enclosure, List.of(FEMALE), LIMITS).all();
            all.forEach(link -> effects.add(whatIf.effect(link.alteration("new"))));
        }

        private Gain compiled(List<Integer> links) {
            Enclosure with = enclosure;
            for (int i = 0; i < links.size(); i++) {
                with = all.get(links.get(i)).alteration("new-" + i).applyTo(with);
            }
            return expectation.gain(whatIf.compiled(with));
        }
    }

    @Test
    @Tag("derived")
    void twoRopesThatAreWorthNothingSinglyWinTogetherAndAreFound() {
        Row row = new Row(3);
        for (LinkEffect effect : row.effects) {
            assertEquals(0, row.expectation.gain(effect.costs()).offGroundShare(), 1e-12);
        }
        Series series = new Series(row.graph, row.routes, row.whatIf, row.all, row.effects);
        List<List<Integer>> pairs = series.best(2);
        assertFalse(pairs.isEmpty());
        for (List<Integer> pair : pairs) {
            Gain gain = row.compiled(pair);
            // all six trips had no way off the ground and now nearly all take it
            assertTrue(gain.offGroundShare() > 0.9, gain.toString());
            assertEquals(6 * gain.offGroundShare(), gain.flippedTripsPerDay(), 1e-9);
            assertEquals(
                    gain.offGroundShare(),
                    row.expectation.gain(series.estimate(pair)).offGroundShare(),
                    0.02);
        }
    }

    @Test
    void threeInARowAreFoundAndNoTwoOfThemAreWorthAnything() {
        Row four = new Row(4);
        Series series = new Series(four.graph, four.routes, four.whatIf, four.all, four.effects);
        assertTrue(series.best(2).isEmpty());
        List<List<Integer>> triples = series.best(3);
        assertFalse(triples.isEmpty());
        assertTrue(four.compiled(triples.get(0)).offGroundShare() > 0.9);
        assertEquals(0, four.compiled(triples.get(0).subList(0, 2)).offGroundShare(), 1e-12);
    }
}
