package limbway.sim.day;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import limbway.model.enclosure.ResourceKind;
import limbway.model.graph.RouteGraph;
import limbway.model.study.Feeding;
import limbway.model.study.FeedingMethod;

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
     * @param method how it is put out
     * @param handlingMs time that each portion in hand costs before it can be eaten [ms]
     */
    record Portion(int resource, double joule, FeedingMethod method, long handlingMs) {

        static Portion of(int resource, Feeding feeding) {
            return new Portion(
                    resource,
                    feeding.energyKj() * 1000,
                    feeding.method(),
                    Math.round(feeding.handlingMin() * MS_PER_MIN));
        }

        /** More food at the same place and time: all of it lies as the last of it was put out. */
        Portion with(Portion later) {
            return new Portion(resource, joule + later.joule, later.method, later.handlingMs);
        }
    }

    private static final double MS_PER_MIN = 60_000;
    private static final long NONE = -1;

    /** Feedings at the same time are one event: nobody runs for the first bowl because it is first in the list. */
    static List<Delivery> of(List<Feeding> feedings, RouteGraph graph) {
        Map<Long, Map<Integer, Portion>> byTime = new TreeMap<>();
        for (Feeding feeding : feedings) {
            int resource = graph.resourceNumber(feeding.resource());
            ResourceKind kind = graph.resources().get(resource).kind();
            if (kind != ResourceKind.FOOD) {
                throw new IllegalArgumentException(
                        "feeding at \"" + feeding.resource() + "\": kind of place = " + kind.word() + ", allowed food");
            }
            byTime.computeIfAbsent(Almanac.millis(feeding.at()), t -> new TreeMap<>())
                    .merge(resource, Portion.of(resource, feeding), Portion::with);
        }
        List<Delivery> deliveries = new ArrayList<>();
        byTime.forEach((time, byPlace) -> {
            deliveries.add(new Delivery(time, List.copyOf(byPlace.values())));
        });
        return List.copyOf(deliveries);
    }

    /**
     * What lies where at an ordinary moment: the mean over the day, as if each delivery were eaten evenly until the next
     * one at that place.
     *
     * @param deliveries all that is put out in a day, in order of time
     * @param resources number of resources
     * @return for each resource energy [J], 0 where nothing is put out
     */
    static double[] ordinaryJ(List<Delivery> deliveries, int resources) {
        double[] ordinaryJ = new double[resources];
        long[] nextMs = new long[resources];
        Arrays.fill(nextMs, NONE);
        for (Delivery delivery : deliveries) {
            for (Portion portion : delivery.portions()) {
                if (nextMs[portion.resource()] == NONE) {
                    nextMs[portion.resource()] = delivery.clockMs() + Almanac.DAY_MS;
                }
            }
        }
        for (int i = deliveries.size() - 1; i >= 0; i--) {
            Delivery delivery = deliveries.get(i);
            for (Portion portion : delivery.portions()) {
                double lastsMs = nextMs[portion.resource()] - delivery.clockMs();
                ordinaryJ[portion.resource()] += portion.joule() / 2 * lastsMs / Almanac.DAY_MS;
                nextMs[portion.resource()] = delivery.clockMs();
            }
        }
        return ordinaryJ;
    }
}
