package limbway.reports.measure.criterion;

import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.sim.habitat.Habitat;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Motive;
import limbway.sim.journal.Stay;
import limbway.sim.journal.Trip;

/** For how long each animal was in each zone; sleep at night is left out. */
final class ZoneTimes {

    private final RouteGraph graph;
    private final double[][] seconds;

    private ZoneTimes(Habitat habitat) {
        graph = habitat.graph();
        seconds = new double[habitat.animals().size()][Zone.values().length];
    }

    /** Seconds by animal and zone. */
    static double[][] of(Habitat habitat, Journal journal) {
        ZoneTimes times = new ZoneTimes(habitat);
        for (Stay stay : journal.stays()) {
            if (stay.motive() != Motive.NIGHT) {
                times.add(stay.animal(), stay.hold(), stay.hold(), (stay.endMs() - stay.startMs()) / 1000.0);
            }
        }
        for (Trip trip : journal.trips()) {
            MoveCosts costs =
                    habitat.routes(habitat.animals().get(trip.animal()).body()).costs();
            for (int move : trip.way().moves()) {
                int from = times.graph.from(move);
                int to = times.graph.to(move);
                if (times.graph.moveOnGround(move)) {
                    times.seconds[trip.animal()][Zone.GROUND.ordinal()] += costs.seconds(move);
                } else {
                    times.add(trip.animal(), from, to, costs.seconds(move));
                }
            }
        }
        return times.seconds;
    }

    private void add(int animal, int from, int to, double lasts) {
        if (from == to && graph.onGround(from)) {
            seconds[animal][Zone.GROUND.ordinal()] += lasts;
            return;
        }
        double low = Math.min(graph.place(from).zM(), graph.place(to).zM());
        double high = Math.max(graph.place(from).zM(), graph.place(to).zM());
        for (Zone zone : Zone.values()) {
            if (zone != Zone.GROUND) {
                seconds[animal][zone.ordinal()] += lasts * share(zone, low, high);
            }
        }
    }

    /** Share of an even change of height that lies in a zone. */
    private static double share(Zone zone, double low, double high) {
        if (low == high) {
            return low >= zone.fromM() && low < zone.belowM() ? 1 : 0;
        }
        return Math.max(0, Math.min(high, zone.belowM()) - Math.max(low, zone.fromM())) / (high - low);
    }
}
