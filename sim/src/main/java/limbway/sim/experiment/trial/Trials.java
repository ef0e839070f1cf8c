package limbway.sim.experiment.trial;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import limbway.sim.experiment.Experiment;
import limbway.sim.experiment.Outcome;
import limbway.sim.experiment.Progress;
import limbway.sim.experiment.RunSettings;
import limbway.sim.habitat.Habitat;

/** Lives in layouts and keeps the value of each criterion in each replication; journals are dropped. */
public final class Trials {

    private final List<Criterion> criteria;
    private final RunSettings settings;
    private final Notebook notebook;

    /**
     * Sets up what trials have in common.
     *
     * @param criteria what is asked about
     * @param settings seed, days, date, threads and warm-up; its number of replications is not used
     * @param notebook where values are looked up and noted
     */
    public Trials(List<Criterion> criteria, RunSettings settings, Notebook notebook) {
        this.criteria = List.copyOf(criteria);
        this.settings = settings;
        this.notebook = notebook;
    }

    /**
     * What is asked about.
     *
     * @return criteria in the order of the values
     */
    public List<Criterion> criteria() {
        return criteria;
    }

    /**
     * Lives in a layout, as far as that was not done before.
     *
     * @param trial the layout
     * @param first number of the first replication, 1 or more; the same number means the same chance in every layout
     * @param count replications, 1 or more
     * @param progress told of every finished replication; may end the trial
     * @return values by replication and criterion, not a number where a replication gives none; empty if it was ended early,
     *     and then what was finished is noted
     * @throws IllegalArgumentException if the layout cannot be lived in
     */
    public Optional<double[][]> of(Trial trial, int first, int count, Progress progress) {
        double[][] values = new double[count][];
        int lastUnknown = 0;
        int firstUnknown = count;
        for (int i = 0; i < count; i++) {
            values[i] = notebook.find(key(trial, first + i))
                    .filter(found -> found.length == criteria.size())
                    .orElse(null);
            if (values[i] == null) {
                firstUnknown = Math.min(firstUnknown, i);
                lastUnknown = i;
            }
        }
        if (firstUnknown < count
                && !live(trial, first + firstUnknown, lastUnknown - firstUnknown + 1, values, first, progress)) {
            return Optional.empty();
        }
        return Optional.of(values);
    }

    private boolean live(Trial trial, int from, int count, double[][] values, int first, Progress progress) {
        Habitat habitat = trial.habitat().get();
        RunSettings wanted = settings.repetitions(from, count);
        return Experiment.forEach(habitat, wanted, trial.day(), progress, journal -> {
            int replication = journal.replication();
            double[] found = judge(new Outcome(habitat, wanted, List.of(journal), true));
            notebook.note(key(trial, replication), found);
            values[replication - first] = found;
        });
    }

    private double[] judge(Outcome one) {
        double[] found = new double[criteria.size()];
        Arrays.setAll(found, i -> {
            OptionalDouble value = criteria.get(i).of(one);
            return value.orElse(Double.NaN);
        });
        return found;
    }

    private static String key(Trial trial, int replication) {
        return trial.key() + " #" + replication;
    }
}
