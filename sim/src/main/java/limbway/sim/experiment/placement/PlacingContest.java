package limbway.sim.experiment.placement;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.sim.experiment.Progress;
import limbway.sim.experiment.statistics.KimNelson;
import limbway.sim.experiment.trial.Trial;
import limbway.sim.experiment.trial.Trials;

/**
 * The second layer: lets the group live in the layouts under the same chance, selects the best of them, and then lets it live
 * in that one and in the layout before under chance that the search never met.
 */
public final class PlacingContest {

    /** Replications in which it is counted who goes where have the numbers from 1 to this: trips are many, so few will do. */
    public static final int COUNTED = 4;

    /**
     * Replications in which layouts are compared have the numbers from here on: no chance of those in which was counted takes
     * part in the selection.
     */
    public static final int CONTEST_FIRST = 1_001;

    /** Replications of the check have the numbers from here on, all of the selection are below. */
    public static final int FRESH_FIRST = 1_000_001;

    /** So many replications are lived at a time; the selection does not depend on it. */
    private static final int BATCH = 4;

    private final Trials trials;
    private final Progress progress;

    /**
     * Sets up a contest.
     *
     * @param trials how layouts are lived in; the first criterion decides, greater is better
     * @param progress told of every finished replication; may end the work
     */
    public PlacingContest(Trials trials, Progress progress) {
        this.trials = trials;
        this.progress = progress;
    }

    /**
     * What came out.
     *
     * @param selected the selection
     * @param values what was found of each layout, by replication and criterion: as far as it was judged
     * @param before the same of the layout before, in as many replications as every layout lived
     */
    public record Outcome(KimNelson.Selected selected, List<List<double[]>> values, List<double[]> before) {

        /** Keeps copies of the lists. */
        public Outcome {
            values = values.stream().map(List::copyOf).toList();
            before = List.copyOf(before);
        }
    }

    /**
     * Selects the best.
     *
     * @param layouts the layouts, each with a key of its own
     * @param before the layout before
     * @param selection how the best is selected
     * @param firstStage replications of every layout before any is dropped
     * @param budget replications of all layouts together that may be used
     * @return what came out, or empty if it was ended
     */
    public Optional<Outcome> select(
            List<Trial> layouts, Trial before, KimNelson selection, int firstStage, int budget) {
        List<List<double[]>> known = new ArrayList<>();
        layouts.forEach(layout -> known.add(new ArrayList<>()));
        Optional<double[][]> asItStands = trials.of(before, CONTEST_FIRST, firstStage, progress);
        if (asItStands.isEmpty()) {
            return Optional.empty();
        }
        Optional<KimNelson.Selected> selected = selection.run(
                layouts.size(),
                budget,
                (system, first, count) -> {
                    Optional<double[][]> found = trials.of(layouts.get(system), CONTEST_FIRST + first, count, progress);
                    found.ifPresent(rows -> known.get(system).addAll(List.of(rows)));
                    return found.map(PlacingContest::first);
                },
                BATCH);
        return selected.map(end -> {
            List<List<double[]>> values = new ArrayList<>();
            for (int i = 0; i < layouts.size(); i++) {
                values.add(known.get(i).subList(0, end.replications().get(i)));
            }
            return new Outcome(end, values, List.of(asItStands.get()));
        });
    }

    /**
     * Lives in a layout with fresh chance.
     *
     * @param layout the layout
     * @param count replications, 1 or more
     * @return values by replication and criterion, or empty if it was ended
     */
    public Optional<double[][]> afresh(Trial layout, int count) {
        return trials.of(layout, FRESH_FIRST, count, progress);
    }

    /** Where nobody travelled nobody was off the ground. */
    private static double[] first(double[][] rows) {
        double[] values = new double[rows.length];
        for (int r = 0; r < values.length; r++) {
            values[r] = Double.isNaN(rows[r][0]) ? 0 : rows[r][0];
        }
        return values;
    }
}
