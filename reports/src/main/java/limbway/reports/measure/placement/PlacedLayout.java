package limbway.reports.measure.placement;

import limbway.sim.experiment.placement.ExpectedTravel.Expected;
import limbway.sim.experiment.placement.Placing;

/**
 * One placing that was lived in.
 *
 * @param letter what it is called in tables and pictures: A is the best
 * @param placing which place is where
 * @param expected what was expected of it without a simulation
 * @param lived what was found
 * @param kept whether the selection never dropped it
 * @param onFront whether no other that was lived in is as good in everything and better in something: travel off the ground,
 *     waiting, and what each animal spends on moving
 */
public record PlacedLayout(
        String letter, Placing placing, Expected expected, LivedLayout lived, boolean kept, boolean onFront) {}
