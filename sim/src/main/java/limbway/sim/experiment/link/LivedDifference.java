package limbway.sim.experiment.link;

import java.util.Optional;

import limbway.sim.experiment.statistics.Interval;

/**
 * What living in a changed layout made of it, against the layout as it stands under the same chance.
 *
 * @param offGround how much more of the travel is off the ground; empty where no repetition has both shares,
 *     because nobody travels with it or nobody travels without
 * @param fewerGroundTrips how many fewer trips a day touch the ground
 * @param firstReplication number of the first of the replications it rests on
 */
public record LivedDifference(Optional<Interval> offGround, Interval fewerGroundTrips, int firstReplication) {}
