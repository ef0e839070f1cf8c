package limbway.model.explain;

import java.util.Map;
import java.util.Optional;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Resource;
import limbway.model.graph.RouteGraph;
import limbway.model.route.Routes;
import limbway.model.route.Search;
import limbway.model.route.Way;

/** Says for one body why its ways lead over the ground. */
public final class GroundReasons {

    private final RouteGraph graph;
    private final Islands islands;

    /**
     * Prepares the answers for one body.
     *
     * @param enclosure what stands there
     * @param routes the ways of the body in it
     */
    public GroundReasons(Enclosure enclosure, Routes routes) {
        this.graph = routes.graph();
        this.islands = new Islands(enclosure, routes.graph(), routes.costs());
    }

    /**
     * The islands on which the answers rest.
     *
     * @return islands of the body
     */
    public Islands islands() {
        return islands;
    }

    /**
     * The reason for ways between two resources.
     *
     * @param fromResource number of the resource to start at
     * @param toResource number of the resource to arrive at
     * @param ways the ways that were found
     * @return the reason
     */
    public GroundReason of(int fromResource, int toResource, Search.Reached ways) {
        if (ways.offGround().isPresent()) {
            Way off = ways.offGround().get();
            Optional<Way> over = ways.overGround().filter(way -> way.milliJ() < off.milliJ());
            return over.isEmpty() ? new GroundReason.OffGroundIsCheapest() : new GroundReason.Dearer(off, over.get());
        }
        return missing(fromResource, toResource);
    }

    /**
     * What is missing off the ground between two resources that no way off the ground joins.
     *
     * @param fromResource number of the resource to start at
     * @param toResource number of the resource to arrive at
     * @return the reason
     */
    public GroundReason missing(int fromResource, int toResource) {
        int[] from = graph.useHolds(fromResource);
        int[] to = graph.useHolds(toResource);
        if (!islands.isUsedOffGround(to)) {
            return nothingToHold(toResource);
        }
        if (!islands.isUsedOffGround(from)) {
            return nothingToHold(fromResource);
        }
        Optional<Chain> chain = islands.between(from, to);
        return chain.isPresent() ? new GroundReason.Missing(chain.get()) : new GroundReason.TooFar(Islands.WIDEST_M);
    }

    private GroundReason nothingToHold(int number) {
        Resource resource = graph.resources().get(number);
        Optional<Map.Entry<String, Double>> nearest = islands.nearestTo(resource.at());
        return new GroundReason.NothingToHold(
                resource.id(),
                nearest.map(Map.Entry::getKey),
                nearest.map(Map.Entry::getValue).orElse(0.0));
    }
}
