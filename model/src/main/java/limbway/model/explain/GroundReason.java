package limbway.model.explain;

import java.util.Optional;

import limbway.model.route.Way;

/** Why a trip between two resources leads over the ground, or does not need to. */
public sealed interface GroundReason {

    /** The way off the ground costs no more than any other. */
    record OffGroundIsCheapest() implements GroundReason {}

    /**
     * There is a way off the ground, but it costs more.
     *
     * @param offGround the cheapest way off the ground
     * @param overGround the cheaper way over it
     */
    record Dearer(Way offGround, Way overGround) implements GroundReason {}

    /**
     * Something is missing on every way off the ground.
     *
     * @param chain what is missing where least is
     */
    record Missing(Chain chain) implements GroundReason {}

    /**
     * A resource can be used from the ground only.
     *
     * @param resource id of the resource
     * @param nearest id of the support, platform or crown nearest to it, if there is any
     * @param awayM clear distance to that [m], 0 where there is none
     */
    record NothingToHold(String resource, Optional<String> nearest, double awayM) implements GroundReason {}

    /**
     * No chain of gaps of a size worth closing would join the two places.
     *
     * @param searchedM widest gap that was looked at [m]
     */
    record TooFar(double searchedM) implements GroundReason {}
}
