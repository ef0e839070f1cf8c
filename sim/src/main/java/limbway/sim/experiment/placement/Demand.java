package limbway.sim.experiment.placement;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import limbway.model.enclosure.Resource;
import limbway.model.route.ReverseTree;
import limbway.model.route.Routes;
import limbway.sim.experiment.Outcome;
import limbway.sim.habitat.Habitat;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Trip;

/**
 * How often animals of one body go between a place that is placed and another one.
 *
 * @param body number of the body among those of the habitat
 * @param other id of the other place: a nest, shade, water
 * @param toward trips to the place that is placed, in any unit
 * @param away trips from it, in the same unit
 */
public record Demand(int body, String other, double toward, double away) {

    /**
     * The trips of a run; those between two of the places are left out, because both ends change.
     *
     * @param outcome days lived in the layout before
     * @param places ids of the places that are moved, or of all of their kind if places are added
     * @return one for each body and other place between which there were trips, in fixed order
     */
    public static List<Demand> lived(Outcome outcome, List<String> places) {
        Habitat habitat = outcome.habitat();
        List<Resource> resources = habitat.graph().resources();
        int[][] toward = new int[habitat.bodies().size()][resources.size()];
        int[][] away = new int[habitat.bodies().size()][resources.size()];
        for (Journal journal : outcome.journals()) {
            for (Trip trip : journal.trips()) {
                int body = habitat.bodies()
                        .indexOf(habitat.animals().get(trip.animal()).body());
                boolean from =
                        places.contains(resources.get(trip.fromResource()).id());
                boolean to = places.contains(resources.get(trip.toResource()).id());
                if (to && !from) {
                    toward[body][trip.fromResource()]++;
                } else if (from && !to) {
                    away[body][trip.toResource()]++;
                }
            }
        }
        List<Demand> demands = new ArrayList<>();
        for (int body = 0; body < toward.length; body++) {
            for (int r = 0; r < resources.size(); r++) {
                if (toward[body][r] + away[body][r] > 0) {
                    demands.add(new Demand(body, resources.get(r).id(), toward[body][r], away[body][r]));
                }
            }
        }
        return demands;
    }

    /**
     * One trip there and one back between every other place and every body, where nobody was seen to go.
     *
     * @param habitat the layout before
     * @param places ids of the places that are moved, or of all of their kind if places are added
     * @return one for each body and other place that the body can come to from somewhere
     */
    public static List<Demand> even(Habitat habitat, List<String> places) {
        List<Resource> resources = habitat.graph().resources();
        List<Demand> demands = new ArrayList<>();
        for (int body = 0; body < habitat.bodies().size(); body++) {
            Routes routes = habitat.routes(habitat.bodies().get(body));
            for (int r = 0; r < resources.size(); r++) {
                if (!places.contains(resources.get(r).id()) && isUsed(habitat, routes, r)) {
                    demands.add(new Demand(body, resources.get(r).id(), 1, 1));
                }
            }
        }
        return demands;
    }

    /** Whether some other place can be come to from here and gone back from. */
    private static boolean isUsed(Habitat habitat, Routes routes, int here) {
        for (int there = 0; there < habitat.graph().resources().size(); there++) {
            if (there != here && leads(habitat, routes, here, there) && leads(habitat, routes, there, here)) {
                return true;
            }
        }
        return false;
    }

    private static boolean leads(Habitat habitat, Routes routes, int from, int to) {
        return Arrays.stream(habitat.graph().useHolds(from))
                .anyMatch(hold -> routes.cheapestMilliJ(hold, to) != ReverseTree.UNREACHABLE);
    }
}
