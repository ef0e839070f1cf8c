package limbway.reports.replay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Resource;
import limbway.model.study.Variant;
import limbway.reports.measure.Measures;
import limbway.reports.measure.RouteCards;
import limbway.reports.measure.UseOfPlaces;
import limbway.reports.scene.PaintedMesh;
import limbway.reports.scene.PaintedMeshes;
import limbway.reports.words.CardText;
import limbway.sim.experiment.Outcome;
import limbway.sim.habitat.Habitat;

/**
 * What is shown of one layout.
 *
 * @param outcome the run; its first finished repetition is filmed
 * @param use how much every place is used, over all repetitions
 * @param cards cards of its trips
 * @param text words of the cards
 * @param hasReasons whether the cards tell why a way is taken and what would mend or turn it
 */
public record ReplayLayout(Outcome outcome, UseOfPlaces use, RouteCards cards, CardText text, boolean hasReasons) {

    /**
     * What is shown of a run.
     *
     * @param measures the run
     * @param cards cards of its trips
     * @param scenario name of the scenario file, for commands
     * @return what to show
     */
    public static ReplayLayout of(Measures measures, RouteCards cards, String scenario) {
        Variant layout = measures.outcome().habitat().layout();
        return new ReplayLayout(measures.outcome(), measures.use(), cards, new CardText(scenario, layout), true);
    }

    /**
     * The same with cards that tell of the ways only, for readers who are still to find the reasons.
     *
     * @return a layout whose data has no reason, no mend and no change that turns a trip
     */
    public ReplayLayout withoutReasons() {
        return new ReplayLayout(outcome, use, cards, text, false);
    }

    Map<String, Object> json() {
        Habitat habitat = outcome.habitat();
        Enclosure enclosure = habitat.layout().enclosure();
        WayRows ways = new WayRows(habitat);
        List<Map<String, Object>> entries = new CardEntries(enclosure, ways, text, hasReasons).of(cards);
        Film film = new Film(
                outcome.journals().get(0), ways, trip -> cards.numberOf(trip).orElse(Film.NO_CARD));
        List<PaintedMesh> meshes = PaintedMeshes.of(enclosure);
        PlaceGrid grid = PlaceGrid.around(meshes, film.places());
        PlanShapes shapes = new PlanShapes(enclosure);
        Map<String, Object> layout = new LinkedHashMap<>();
        layout.put("name", habitat.layout().name());
        layout.put("origin", grid.origin());
        layout.put("stepM", grid.stepM());
        layout.put("bounds", grid.bounds());
        layout.put("parts", new MeshParts(grid).of(meshes));
        layout.put("axes", shapes.axes());
        layout.put("outlines", shapes.outlines());
        layout.put("places", places(habitat.graph().resources()));
        layout.put("viewpoints", Viewpoints.of(habitat.layout()));
        layout.put("animals", Cast.of(habitat.animals()));
        layout.put("film", film.json(outcome.settings(), grid));
        layout.put("sun", SunEntry.of(enclosure.site(), outcome.settings().date()));
        layout.put("use", UseEntry.of(use));
        layout.put("cards", entries);
        layout.put("cardsLeftOut", cards.leftOut());
        return layout;
    }

    private static List<Map<String, Object>> places(List<Resource> resources) {
        List<Map<String, Object>> places = new ArrayList<>();
        for (Resource resource : resources) {
            Map<String, Object> place = new LinkedHashMap<>();
            place.put("id", resource.id());
            place.put("kind", resource.kind().word());
            place.put("at", PlaceGrid.millimetres(resource.at()));
            places.add(place);
        }
        return places;
    }
}
