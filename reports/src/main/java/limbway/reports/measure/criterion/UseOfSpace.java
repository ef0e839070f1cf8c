package limbway.reports.measure.criterion;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeSet;

import limbway.model.body.Body;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;
import limbway.model.graph.RouteGraph;
import limbway.sim.experiment.Outcome;
import limbway.sim.habitat.Habitat;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Stay;
import limbway.sim.journal.Trip;

/** How animals of one replication use the room that they can reach. */
final class UseOfSpace {

    private UseOfSpace() {}

    /**
     * Share of the usable room that was within reach of the ways that the animals took and the places at which they
     * stayed, in all days of the run, at night too; all bodies together, each over its own room.
     */
    static OptionalDouble usedShare(LayoutFacts facts, Outcome one) {
        double used = 0;
        double usable = 0;
        for (Body body : one.habitat().bodies()) {
            var room = facts.room(one.habitat(), body);
            used += room.alongM3(lines(one.habitat(), one.journals().get(0), body));
            usable += room.m3();
        }
        return usable > 0 ? OptionalDouble.of(used / usable) : OptionalDouble.empty();
    }

    /** Each way between two holds that bodies of a kind went, once, and each place where they stayed. */
    private static List<Segment> lines(Habitat habitat, Journal journal, Body body) {
        RouteGraph graph = habitat.graph();
        TreeSet<Long> pairs = new TreeSet<>();
        for (Trip trip : journal.trips()) {
            if (habitat.animals().get(trip.animal()).body().equals(body)) {
                for (int move : trip.way().moves()) {
                    pairs.add(pair(graph, graph.from(move), graph.to(move)));
                }
            }
        }
        for (Stay stay : journal.stays()) {
            if (habitat.animals().get(stay.animal()).body().equals(body)) {
                pairs.add(pair(graph, stay.hold(), stay.hold()));
            }
        }
        List<Segment> lines = new ArrayList<>();
        for (long pair : pairs) {
            Point one = graph.place((int) (pair / graph.holdCount()));
            Point other = graph.place((int) (pair % graph.holdCount()));
            lines.add(new Segment(one, other));
        }
        return lines;
    }

    private static long pair(RouteGraph graph, int one, int other) {
        return (long) Math.min(one, other) * graph.holdCount() + Math.max(one, other);
    }

    /** Spread of waking time over the zones. */
    static OptionalDouble spread(LayoutFacts facts, Outcome one) {
        Use use = use(facts, one);
        return SpreadIndex.of(use.seconds, use.expected);
    }

    /** Preference of what stands off the ground to the ground, two zones: at most 1/3. */
    static OptionalDouble offGroundElectivity(LayoutFacts facts, Outcome one) {
        Use use = use(facts, one);
        int ground = Zone.GROUND.ordinal();
        double[] seconds = {use.seconds[ground], ZoneChecks.sum(use.seconds) - use.seconds[ground]};
        double[] expected = {use.expected[ground], ZoneChecks.sum(use.expected) - use.expected[ground]};
        boolean isUnsized = (seconds[0] > 0 && expected[0] == 0) || (seconds[1] > 0 && expected[1] == 0);
        if (isUnsized) {
            return OptionalDouble.empty();
        }
        return Electivity.of(seconds, expected, 1);
    }

    /** Seconds in each zone, and those that its room lets expect. */
    private static final class Use {
        private final double[] seconds = new double[Zone.values().length];
        private final double[] expected = new double[Zone.values().length];
    }

    /** Each animal is expected by the room of its own body, weighted by the time that it was awake. */
    private static Use use(LayoutFacts facts, Outcome one) {
        Habitat habitat = one.habitat();
        double[][] times = ZoneTimes.of(habitat, one.journals().get(0));
        Use use = new Use();
        for (int animal = 0; animal < times.length; animal++) {
            double[] room = facts.zonesM3(habitat, habitat.animals().get(animal).body());
            double whole = ZoneChecks.sum(room);
            double awake = ZoneChecks.sum(times[animal]);
            for (int zone = 0; zone < room.length && whole > 0; zone++) {
                use.seconds[zone] += times[animal][zone];
                use.expected[zone] += awake * room[zone] / whole;
            }
        }
        mergeDown(use.seconds, use.expected);
        return use;
    }

    /** Time in a zone in which no room was found counts for the next lower one that has some. */
    private static void mergeDown(double[] seconds, double[] expected) {
        for (int zone = seconds.length - 1; zone > 0; zone--) {
            if (expected[zone] == 0) {
                seconds[zone - 1] += seconds[zone];
                seconds[zone] = 0;
            }
        }
        if (expected[0] == 0 && seconds[0] > 0) {
            for (int zone = 1; zone < seconds.length; zone++) {
                if (expected[zone] > 0) {
                    seconds[zone] += seconds[0];
                    seconds[0] = 0;
                    return;
                }
            }
            seconds[0] = 0;
        }
    }
}
