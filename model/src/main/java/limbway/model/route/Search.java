package limbway.model.route;

import java.util.Optional;

/** What a body finds when it looks for a way from a hold to a resource. */
public sealed interface Search {

    /**
     * There is a way.
     *
     * @param cheapest the way that costs least; off the ground where both kinds cost the same
     * @param offGround the cheapest way without a move on the ground, if there is one
     * @param overGround the cheapest way with one, if there is one that does not come back to where it was
     * @param offGroundShare probability of taking the way off the ground, 0 to 1
     */
    record Reached(Way cheapest, Optional<Way> offGround, Optional<Way> overGround, double offGroundShare)
            implements Search {

        /**
         * What staying off the ground costs over the cheapest way.
         *
         * @return energy [mJ], 0 or more, or empty where no way stays off the ground
         */
        public Optional<Long> groundTemptationMilliJ() {
            return offGround.map(way -> way.milliJ() - cheapest.milliJ());
        }
    }

    /**
     * There is no way.
     *
     * @param why the reason in plain words
     */
    record Unreachable(String why) implements Search {}
}
