package limbway.reports.measure;

import java.util.List;
import java.util.Optional;

import limbway.sim.experiment.Outcome;

/**
 * Everything that is computed from one run.
 *
 * @param outcome the run
 * @param offGround shares of travel off the ground
 * @param elevated share of waking time above a height
 * @param heights waking time by height
 * @param groundUse pairs of resources between which a body used the ground, most metres first
 * @param groundTotals pairs of resources between which the ground was used, all animals together, most metres first
 * @param energy accounts of the animals
 * @param waiting how animals get in each other's way
 * @param budget how they divide their day
 * @param visibility how much visitors see of them; empty where there are no viewpoints
 * @param use where their waking time is spent
 */
public record Measures(
        Outcome outcome,
        OffGround offGround,
        ElevatedTime elevated,
        List<HeightBand> heights,
        List<PairUse> groundUse,
        List<PairTotal> groundTotals,
        List<AnimalEnergy> energy,
        Waiting waiting,
        Budget budget,
        Optional<Visibility> visibility,
        UseOfPlaces use) {

    /** Keeps copies of the lists. */
    public Measures {
        heights = List.copyOf(heights);
        groundUse = List.copyOf(groundUse);
        groundTotals = List.copyOf(groundTotals);
        energy = List.copyOf(energy);
    }

    /**
     * Computes all measures.
     *
     * @param outcome a run with at least one finished replication
     * @param thresholdM height above which an animal counts as elevated [m]
     * @return the measures
     * @throws IllegalArgumentException if no replication was finished
     */
    public static Measures of(Outcome outcome, double thresholdM) {
        if (outcome.journals().isEmpty()) {
            throw new IllegalArgumentException("measures: finished replications = 0, allowed 1 or more");
        }
        return new Measures(
                outcome,
                OffGround.of(outcome),
                ElevatedTime.of(outcome, thresholdM),
                HeightBand.of(outcome),
                GroundUse.of(outcome),
                PairTotal.of(outcome),
                AnimalEnergy.of(outcome),
                Waiting.of(outcome),
                Budget.of(outcome),
                Visibility.of(outcome),
                UseOfPlaces.of(outcome));
    }

    /**
     * Name of the layout.
     *
     * @return as in the scenario
     */
    public String layout() {
        return outcome.habitat().layout().name();
    }
}
