package limbway.model.explain;

import java.util.Optional;

import limbway.model.route.ChoiceSharpness;
import limbway.model.route.Routes;
import limbway.model.route.Search;
import limbway.model.route.Way;

/** The ways between two resources, wherever the animal is within the first. */
public final class PairWays {

    private PairWays() {}

    /**
     * Finds the least costly ways from any hold of one resource to another.
     *
     * @param routes the ways of a body
     * @param sharpness how strictly the cheaper way is taken
     * @param fromResource number of the resource to start at
     * @param toResource number of the resource to arrive at
     * @return the cheapest way of each kind, each from the hold where it is cheapest, or why there is none
     */
    public static Search find(Routes routes, ChoiceSharpness sharpness, int fromResource, int toResource) {
        Optional<Way> off = Optional.empty();
        Optional<Way> over = Optional.empty();
        int[] holds = routes.graph().useHolds(fromResource);
        for (int hold : holds) {
            if (routes.find(hold, toResource) instanceof Search.Reached reached) {
                off = cheaper(off, reached.offGround());
                over = cheaper(over, reached.overGround());
            }
        }
        if (off.isEmpty() && over.isEmpty()) {
            String from = routes.graph().resources().get(fromResource).id();
            String to = routes.graph().resources().get(toResource).id();
            return holds.length == 0
                    ? new Search.Unreachable("nothing that an animal can hold is within reach of " + from)
                    : new Search.Unreachable("no support, platform or ground leads this "
                            + routes.body().name() + " from " + from + " to " + to);
        }
        boolean offIsCheapest = over.isEmpty()
                || (off.isPresent() && off.get().milliJ() <= over.get().milliJ());
        double share = share(off, over, sharpness);
        return new Search.Reached(offIsCheapest ? off.get() : over.get(), off, over, share);
    }

    private static double share(Optional<Way> off, Optional<Way> over, ChoiceSharpness sharpness) {
        if (off.isEmpty()) {
            return 0;
        }
        return over.isEmpty() || off.get().milliJ() == 0
                ? 1
                : sharpness.shareOfFirst(off.get().milliJ(), over.get().milliJ());
    }

    private static Optional<Way> cheaper(Optional<Way> one, Optional<Way> other) {
        if (one.isEmpty() || other.isEmpty()) {
            return one.or(() -> other);
        }
        return other.get().milliJ() < one.get().milliJ() ? other : one;
    }
}
