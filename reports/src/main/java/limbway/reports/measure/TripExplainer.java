package limbway.reports.measure;

import java.util.Optional;
import java.util.OptionalInt;

import limbway.model.body.Body;
import limbway.model.explain.GroundReason;
import limbway.model.explain.GroundReasons;
import limbway.model.explain.PairWays;
import limbway.model.explain.flip.TripQuestion;
import limbway.model.graph.GraphSettings;
import limbway.model.route.Routes;
import limbway.model.route.Search;
import limbway.sim.habitat.Habitat;

/** Says for one body, with the doors as they are at one time, which ways lead from place to place, and why. */
public final class TripExplainer {

    private final Habitat habitat;
    private final Routes routes;
    private final OptionalInt atSecond;
    private Optional<GroundReasons> reasons = Optional.empty();

    /**
     * Looks up the ways of a body.
     *
     * @param habitat where it lives
     * @param body a body of the group
     * @param atSecond seconds after midnight, with doors as they are then; empty with all doors open that ever are
     */
    public TripExplainer(Habitat habitat, Body body, OptionalInt atSecond) {
        this.habitat = habitat;
        this.atSecond = atSecond;
        Routes open = habitat.routes(body);
        this.routes = atSecond.isEmpty()
                ? open
                : new Routes(habitat.graph(), open.costs().at(atSecond.getAsInt()), habitat.sharpness());
    }

    /**
     * Who travels.
     *
     * @return the body
     */
    public Body body() {
        return routes.body();
    }

    /**
     * The ways between two places.
     *
     * @param fromResource number of the resource to start at
     * @param toResource number of another resource
     * @return the cheapest way of each kind, or why there is none
     */
    public Search find(int fromResource, int toResource) {
        return PairWays.find(routes, routes.sharpness(), fromResource, toResource);
    }

    /**
     * Why ways lead over the ground, or do not.
     *
     * @param fromResource number of the resource to start at
     * @param toResource number of another resource
     * @param ways what {@link #find} found
     * @return the reason
     */
    public GroundReason reason(int fromResource, int toResource, Search.Reached ways) {
        if (reasons.isEmpty()) {
            reasons = Optional.of(new GroundReasons(habitat.layout().enclosure(), routes));
        }
        return reasons.get().of(fromResource, toResource, ways);
    }

    /**
     * The question what would turn trips between two places.
     *
     * @param from name of the resource to start at
     * @param to name of another resource
     * @return a question for the search of changes
     */
    public TripQuestion question(String from, String to) {
        return new TripQuestion(
                habitat.layout().enclosure(),
                GraphSettings.forBodies(habitat.bodies()),
                routes.body(),
                habitat.energy(),
                habitat.sharpness(),
                atSecond,
                from,
                to);
    }
}
