package limbway.reports.lesson;

import java.util.OptionalLong;

import limbway.model.route.Search;
import limbway.model.route.Way;

/**
 * What both ways of the trip cost in one layout, as {@code explain} tells it.
 *
 * @param overMilliJ cheapest way over the ground [mJ]; empty where there is none
 * @param offMilliJ cheapest way off the ground [mJ]; empty where there is none
 * @param offGroundShare how many of such trips are made off the ground, 0 to 1
 */
public record Costs(OptionalLong overMilliJ, OptionalLong offMilliJ, double offGroundShare) {

    /**
     * The costs of what was found.
     *
     * @param search both ways, or that there is none
     * @return their energies
     */
    public static Costs of(Search search) {
        if (search instanceof Search.Reached ways) {
            return new Costs(
                    ways.overGround().map(Way::milliJ).map(OptionalLong::of).orElse(OptionalLong.empty()),
                    ways.offGround().map(Way::milliJ).map(OptionalLong::of).orElse(OptionalLong.empty()),
                    ways.offGroundShare());
        }
        return new Costs(OptionalLong.empty(), OptionalLong.empty(), 0);
    }

    /**
     * Whether the trip stays off the ground.
     *
     * @return true if no way is cheaper than the one off it
     */
    public boolean isOffGround() {
        return offMilliJ.isPresent() && (overMilliJ.isEmpty() || offMilliJ.getAsLong() <= overMilliJ.getAsLong());
    }

    /**
     * Whether the trip takes the ground.
     *
     * @return true if the way over it is the cheaper, or the only one
     */
    public boolean isOverGround() {
        return overMilliJ.isPresent() && !isOffGround();
    }
}
