package limbway.reports.measure;

import limbway.sim.experiment.Outcome;

/**
 * What comes out of a layout where nothing counts but needs and energy: the same days under the same chance, with every
 * term of the worth of places at 0. What differs from the run in question rests on those terms, which are assumptions.
 *
 * @param layout name of the layout
 * @param offGround shares of travel off the ground
 * @param elevated waking time above the threshold
 */
public record NeedsAlone(String layout, OffGround offGround, ElevatedTime elevated) {

    /**
     * Measures a run.
     *
     * @param outcome a run without worth, with at least one finished replication
     * @param thresholdM height above which an animal counts as elevated [m]
     * @return the measures
     */
    public static NeedsAlone of(Outcome outcome, double thresholdM) {
        return new NeedsAlone(
                outcome.habitat().layout().name(), OffGround.of(outcome), ElevatedTime.of(outcome, thresholdM));
    }
}
