package limbway.sim.day;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import limbway.model.enclosure.ResourceKind;
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

    /** Feedings at the same time are one event: nobody runs for the first bowl because it is first in the list. */
    static List<Delivery> of(List<Feeding> feedings, RouteGraph graph) {
        Map<Long, Map<Integer, Double>> byTime = new TreeMap<>();
        for (Feeding feeding : feedings) {
            int resource = graph.resourceNumber(feeding.resource());
            ResourceKind kind = graph.resources().get(resource).kind();
            if (kind != ResourceKind.FOOD) {
                throw new IllegalArgumentException(
                        "feeding at \"" + feeding.resource() + "\": kind of place = " + kind.word() + ", allowed food");
            }
            byTime.computeIfAbsent(Almanac.millis(feeding.at()), t -> new TreeMap<>())
                    .merge(resource, feeding.energyKj() * 1000, Double::sum);
        }
        List<Delivery> deliveries = new ArrayList<>();
        byTime.forEach((time, byPlace) -> {
            List<Portion> portions = new ArrayList<>();
            byPlace.forEach((resource, joule) -> portions.add(new Portion(resource, joule)));
            deliveries.add(new Delivery(time, List.copyOf(portions)));
        });
        return List.copyOf(deliveries);
    }
}
