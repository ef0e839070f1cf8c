package limbway.sim.experiment.placement;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

import limbway.model.body.Body;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Resource;
import limbway.model.enclosure.ResourceKind;
import limbway.model.route.Routes;
import limbway.model.route.Search;
import limbway.model.route.Way;
import limbway.model.study.Variant;
import limbway.sim.habitat.Habitat;

/**
 * Expected travel between candidates and the places where animals come from, without a simulation: one graph with all
 * candidates in it, and on its trees the same choice between the way off the ground and the way over it as in the day.
 *
 * <p>An animal is taken to use the chosen place that costs it least. Doors count as open; ranks, queues and appetite are left
 * to the simulation.
 */
public final class ExpectedTravel {

    /** No id of a scenario holds a space, so candidates can be told from all that has a name. */
    private static final String PREFIX = "candidate ";

    private static final int STALLS = 1;

    private final Habitat habitat;
    private final List<CandidatePlace> candidates;
    private final List<Demand> demands;
    private final Leg[][] legs;

    /** Travel of one demand to and from one place; no legs if a body cannot go there and back. */
    private record Leg(double energyJ, double groundM, double allM) {

        Leg plus(Leg other) {
            return new Leg(energyJ + other.energyJ, groundM + other.groundM, allM + other.allM);
        }

        Leg times(double trips) {
            return new Leg(trips * energyJ, trips * groundM, trips * allM);
        }
    }

    /**
     * Compiles the layout with all candidates and walks all ways once.
     *
     * @param base the layout before
     * @param compile makes a layout ready to be lived in
     * @param candidates the candidates
     * @param demands who comes from where
     */
    public ExpectedTravel(
            Variant base, Function<Variant, Habitat> compile, List<CandidatePlace> candidates, List<Demand> demands) {
        this.candidates = List.copyOf(candidates);
        this.demands = List.copyOf(demands);
        this.habitat = compile.apply(withCandidates(base));
        this.legs = new Leg[demands.size()][];
        for (int d = 0; d < legs.length; d++) {
            legs[d] = new Leg[candidates.size()];
            for (int c = 0; c < legs[d].length; c++) {
                legs[d][c] = leg(demands.get(d), PREFIX + c);
            }
        }
    }

    private ExpectedTravel(ExpectedTravel all, List<Integer> kept) {
        this.habitat = all.habitat;
        this.demands = all.demands;
        this.candidates = kept.stream().map(all.candidates::get).toList();
        this.legs = new Leg[demands.size()][];
        for (int d = 0; d < legs.length; d++) {
            Leg[] row = all.legs[d];
            legs[d] = kept.stream().map(c -> row[c]).toArray(Leg[]::new);
        }
    }

    /**
     * The same with some of the candidates only.
     *
     * @param kept numbers of those that are kept, rising
     * @return travel in which they are numbered anew
     */
    public ExpectedTravel only(List<Integer> kept) {
        return new ExpectedTravel(this, kept);
    }

    private Variant withCandidates(Variant base) {
        Enclosure enclosure = base.enclosure();
        List<Resource> all = new ArrayList<>(enclosure.resources());
        for (int c = 0; c < candidates.size(); c++) {
            CandidatePlace candidate = candidates.get(c);
            // the kind decides nothing in the graph; food would be looked out for
            all.add(new Resource(PREFIX + c, ResourceKind.SHADE, candidate.at(), candidate.on(), STALLS));
        }
        return new Variant(base.name(), base.note(), enclosure.withResources(all), base.keeping(), base.added());
    }

    private Leg leg(Demand demand, String place) {
        Routes routes = habitat.routes(habitat.bodies().get(demand.body()));
        int other = habitat.graph().resourceNumber(demand.other());
        int here = habitat.graph().resourceNumber(place);
        Leg sum = new Leg(0, 0, 0);
        if (demand.toward() > 0) {
            Leg there = trip(routes, other, here);
            sum = there == null ? null : sum.plus(there.times(demand.toward()));
        }
        if (sum != null && demand.away() > 0) {
            Leg back = trip(routes, here, other);
            sum = back == null ? null : sum.plus(back.times(demand.away()));
        }
        return sum;
    }

    /** The expected trip from the hold of a place from which it costs least; null if there is no way. */
    private Leg trip(Routes routes, int from, int to) {
        int best = -1;
        int least = Integer.MAX_VALUE;
        for (int hold : habitat.graph().useHolds(from)) {
            int cost = routes.cheapestMilliJ(hold, to);
            if (cost < least) {
                least = cost;
                best = hold;
            }
        }
        if (best < 0 || !(routes.find(best, to) instanceof Search.Reached reached)) {
            return null;
        }
        double share = reached.offGroundShare();
        Leg off = share > 0 ? leg(reached.offGround().orElseThrow()).times(share) : new Leg(0, 0, 0);
        Leg over = share < 1 ? leg(reached.overGround().orElseThrow()).times(1 - share) : new Leg(0, 0, 0);
        return off.plus(over);
    }

    private static Leg leg(Way way) {
        return new Leg(way.milliJ() / 1000.0, way.lengthM() - way.offGroundM(), way.lengthM());
    }

    /**
     * Bodies that cannot make a trip to or from a candidate that they make now.
     *
     * @param candidate number of the candidate
     * @return names of bodies, each once, in their order; none if all get there and back
     */
    public List<String> cannotReach(int candidate) {
        List<String> names = new ArrayList<>();
        List<Body> bodies = habitat.bodies();
        for (int d = 0; d < legs.length; d++) {
            String name = bodies.get(demands.get(d).body()).name();
            if (legs[d][candidate] == null && !names.contains(name)) {
                names.add(name);
            }
        }
        return List.copyOf(names);
    }

    /**
     * The table in which choices are judged: served where it costs least energy, judged by metres on the ground over all metres.
     *
     * @param standing ids of places that serve the demands too, whatever is chosen; none if all of them are moved
     * @return demands by candidates
     */
    public DemandTable table(List<String> standing) {
        DemandTable table = new DemandTable(demands.size(), candidates.size());
        for (int d = 0; d < legs.length; d++) {
            for (int c = 0; c < candidates.size(); c++) {
                Leg leg = legs[d][c];
                if (leg != null) {
                    table.set(d, c, leg.energyJ(), leg.groundM(), leg.allM());
                }
            }
            Leg best = best(demands.get(d), standing);
            if (best != null) {
                table.setStanding(d, best.energyJ(), best.groundM(), best.allM());
            }
        }
        return table;
    }

    private Leg best(Demand demand, List<String> places) {
        Leg best = null;
        for (String place : places) {
            Leg leg = leg(demand, place);
            if (leg != null && (best == null || leg.energyJ() < best.energyJ())) {
                best = leg;
            }
        }
        return best;
    }

    /**
     * What is expected of a choice, or of the places as they stand.
     *
     * @param offGround share of travel off the ground, by distance
     * @param groundM metres on the ground for each trip
     * @param energyJ energy for each trip [J]
     */
    public record Expected(double offGround, double groundM, double energyJ) {}

    /**
     * What is expected of a choice.
     *
     * @param chosen numbers of candidates, rising
     * @param standing ids of places that serve the demands too
     * @return the expectation; the same share as the score of {@link #table} tells
     */
    public Expected of(List<Integer> chosen, List<String> standing) {
        Leg sum = new Leg(0, 0, 0);
        double trips = 0;
        for (int d = 0; d < legs.length; d++) {
            Leg best = best(demands.get(d), standing);
            for (int c : chosen) {
                Leg leg = legs[d][c];
                if (leg != null && (best == null || leg.energyJ() < best.energyJ())) {
                    best = leg;
                }
            }
            if (best != null) {
                sum = sum.plus(best);
                trips += demands.get(d).toward() + demands.get(d).away();
            }
        }
        double each = Math.max(1, trips);
        return new Expected(
                sum.allM() > 0 ? 1 - sum.groundM() / sum.allM() : 1, sum.groundM() / each, sum.energyJ() / each);
    }

    /**
     * How many trips each of the chosen serves.
     *
     * @param table the table of this travel
     * @param chosen numbers of candidates, rising
     * @return trips in the order of the chosen
     */
    public double[] served(DemandTable table, List<Integer> chosen) {
        int[] numbers = chosen.stream().mapToInt(c -> c).toArray();
        double[] trips = new double[numbers.length];
        for (int d = 0; d < demands.size(); d++) {
            int server = table.server(d, numbers);
            if (server >= 0) {
                trips[server] += demands.get(d).toward() + demands.get(d).away();
            }
        }
        return trips;
    }
}
