package limbway.model.explain.flip;

import java.util.OptionalInt;

import limbway.model.body.Body;
import limbway.model.enclosure.Enclosure;
import limbway.model.energy.EnergySettings;
import limbway.model.graph.GraphSettings;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.model.route.ChoiceSharpness;

/**
 * One trip of one body in one layout.
 *
 * @param enclosure what stands there
 * @param settings how it is compiled, with every body of the group
 * @param body who travels
 * @param energy what moves cost
 * @param sharpness how strictly the cheaper way is taken
 * @param secondOfDay doors are as they are then [s after midnight]; empty with all doors open that ever are
 * @param from id of the resource to start at
 * @param to id of the resource to arrive at
 */
public record TripQuestion(
        Enclosure enclosure,
        GraphSettings settings,
        Body body,
        EnergySettings energy,
        ChoiceSharpness sharpness,
        OptionalInt secondOfDay,
        String from,
        String to) {

    /**
     * What moves cost on a graph at that time.
     *
     * @param graph a graph
     * @param prices what moves cost
     * @return the costs
     */
    public MoveCosts costs(RouteGraph graph, EnergySettings prices) {
        MoveCosts costs = MoveCosts.of(graph, body, prices);
        return secondOfDay.isPresent() ? costs.at(secondOfDay.getAsInt()) : costs;
    }

    /**
     * What the trip costs in another layout.
     *
     * @param other what stands there then
     * @return both costs, of the layout compiled anew
     */
    public TripCost in(Enclosure other) {
        RouteGraph graph = RouteGraph.compile(other, settings);
        return TripCost.of(
                graph, costs(graph, energy), sharpness, graph.resourceNumber(from), graph.resourceNumber(to));
    }
}
