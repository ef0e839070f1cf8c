package limbway.reports.measure.placement;

import java.util.List;

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
 * @param onFront whether no other that was lived in is as good in travel off the ground, waiting at food and energy of moves of
 *     the mean animal, and better in one of them
 * @param hardestFor places in the study of the animals that spend more on moving here than in any other that was lived in
 */
public record PlacedLayout(
        String letter,
        Placing placing,
        Expected expected,
        LivedLayout lived,
        boolean kept,
        boolean onFront,
        List<Integer> hardestFor) {

    /** Keeps a copy of the list. */
    public PlacedLayout {
        hardestFor = List.copyOf(hardestFor);
    }
}
