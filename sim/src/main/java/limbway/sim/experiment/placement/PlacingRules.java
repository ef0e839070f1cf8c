package limbway.sim.experiment.placement;

import java.util.OptionalDouble;

/**
 * What a place must satisfy.
 *
 * @param keeperReachM greatest height above the ground that a keeper reaches [m]; empty if nothing was said
 * @param hoist whether places are raised and lowered, so that any height is within reach of a keeper
 * @param apartM least distance between two of the places chosen [m], 0 or more
 * @param loadKg weight of what is put up [kg]; empty if nothing was said
 * @param shaded whether it must lie in shade at all hours of feeding
 * @param noHotter whether it may be no hotter at these hours than the places are now
 * @param barrierM least distance from barriers in plan [m], 0 or more
 */
public record PlacingRules(
        OptionalDouble keeperReachM,
        boolean hoist,
        double apartM,
        OptionalDouble loadKg,
        boolean shaded,
        boolean noHotter,
        double barrierM) {

    /**
     * No rule but that it is no hotter.
     *
     * @return the rules if nothing is said
     */
    public static PlacingRules standard() {
        return new PlacingRules(OptionalDouble.empty(), false, 0, OptionalDouble.empty(), false, true, 0);
    }
}
