package limbway.sim.day;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import limbway.model.graph.RouteGraph;
import limbway.model.study.Feeding;

/**
 * All that the keepers put out at one time of every day.
 *
 * @param clockMs time of the day [ms]
 * @param portions what is put where
 */
record Delivery(long clockMs, List<Portion> portions) {

    /**
     * Food for one place.
     *
     * @param resource number of a food place
     * @param joule energy [J]
     */
    record Portion(int resource, double joule) {}

    /** Feedings of the same minute are one event: nobody runs for the first bowl because it is first in the list. */
    static List<Delivery> of(List<Feeding> feedings, RouteGraph graph) {
        Map<Long, List<Portion>> byTime = new TreeMap<>();
        for (Feeding feeding : feedings) {
            byTime.computeIfAbsent(Almanac.millis(feeding.at()), t -> new ArrayList<>())
                    .add(new Portion(graph.resourceNumber(feeding.resource()), feeding.energyKj() * 1000));
        }
        List<Delivery> deliveries = new ArrayList<>();
        byTime.forEach((time, portions) -> deliveries.add(new Delivery(time, List.copyOf(portions))));
        return List.copyOf(deliveries);
    }
}
