package limbway.sim.experiment.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Supplier;

import limbway.sim.experiment.Progress;
import limbway.sim.experiment.statistics.StoppingRule;
import limbway.sim.experiment.trial.Trial;
import limbway.sim.experiment.trial.Trials;
import limbway.sim.habitat.Habitat;

/**
 * Lets the group live in several layouts, batch by batch and always under the same chance, until their differences are known
 * well enough or the budget of replications is spent.
 *
 * <p>What is finished is in the notebook of the trials; the same comparison with the same notebook goes on from there.
 */
public final class Comparison {

    private final Trials trials;
    private final StoppingRule rule;
    private final Set<String> required;
    private final int budget;
    private final int seed;

    /**
     * Sets a comparison up.
     *
     * @param trials lives in the layouts
     * @param rule when differences are known well enough
     * @param required names of the criteria whose differences must be, some of those of the trials
     * @param budget most replications of each layout, at least those before the first look
     * @param seed start of the chance of medians and ratios, 1 to 2147483647
     * @throws IllegalArgumentException if the budget ends before the first look, or a required criterion is none of the trials'
     */
    public Comparison(Trials trials, StoppingRule rule, Set<String> required, int budget, int seed) {
        if (budget < rule.first()) {
            throw new IllegalArgumentException(
                    "comparison: budget = " + budget + ", allowed " + rule.first() + " or more");
        }
        for (String name : required) {
            if (trials.criteria().stream().noneMatch(c -> c.name().equals(name))) {
                throw new IllegalArgumentException("comparison: required criterion \"" + name + "\" is not measured");
            }
        }
        this.trials = trials;
        this.rule = rule;
        this.required = Set.copyOf(required);
        this.budget = budget;
        this.seed = seed;
    }

    /**
     * Compares.
     *
     * @param layouts two or more, of different keys
     * @param progress told of every finished replication and of the most there may be; may end the comparison
     * @return what was found; if it was ended early, from the batches that were finished, and empty if there are none
     * @throws IllegalArgumentException if a layout cannot be lived in
     */
    public Optional<Compared> of(List<Trial> layouts, Progress progress) {
        List<Trial> once = layouts.stream().map(Comparison::compiledOnce).toList();
        Sample sample = nothing(layouts.size());
        Stopped stopped = Stopped.BUDGET;
        boolean enough = false;
        while (!enough && sample.replications() < budget) {
            int next = rule.nextLook(sample.replications(), budget);
            Optional<Sample> batch = batch(once, sample.replications(), next, budget, progress);
            if (batch.isEmpty()) {
                stopped = Stopped.INTERRUPTED;
                enough = true;
            } else {
                sample = sample.followedBy(batch.get());
                if (isPrecise(names(layouts), sample)) {
                    stopped = Stopped.PRECISE;
                    enough = true;
                }
            }
        }
        return sample.replications() == 0 ? Optional.empty() : Optional.of(compared(layouts, sample, stopped));
    }

    /**
     * Compares under so many replications, however well the differences are known then.
     *
     * @param layouts two or more, of different keys
     * @param replications how many of each, 1 or more
     * @param progress told of every finished replication; may end the comparison
     * @return what was found, or empty if it was ended early
     * @throws IllegalArgumentException if a layout cannot be lived in
     */
    public Optional<Compared> of(List<Trial> layouts, int replications, Progress progress) {
        return batch(layouts, 0, replications, replications, progress)
                .map(sample -> compared(layouts, sample, Stopped.BUDGET));
    }

    private Optional<Sample> batch(List<Trial> layouts, int done, int next, int most, Progress progress) {
        List<double[][]> values = new ArrayList<>();
        for (int i = 0; i < layouts.size(); i++) {
            int before = layouts.size() * done + i * (next - done);
            Optional<double[][]> lived =
                    trials.of(layouts.get(i), done + 1, next - done, shifted(progress, before, layouts.size() * most));
            if (lived.isEmpty()) {
                return Optional.empty();
            }
            values.add(lived.get());
        }
        return Optional.of(new Sample(values));
    }

    private boolean isPrecise(List<String> names, Sample sample) {
        List<Difference> wanted = new Differences(names, trials.criteria(), sample, rule)
                .plain().stream()
                        .filter(d -> required.contains(
                                trials.criteria().get(d.criterion()).name()))
                        .toList();
        // a difference that is not known at all is not precise either
        int pairs = names.size() * (names.size() - 1) / 2;
        return wanted.size() == pairs * required.size() && wanted.stream().allMatch(Difference::isPrecise);
    }

    private Compared compared(List<Trial> layouts, Sample sample, Stopped stopped) {
        List<String> names = names(layouts);
        return new Compared(
                names,
                trials.criteria(),
                required,
                sample,
                new Differences(names, trials.criteria(), sample, rule).full(seed),
                stopped);
    }

    private static List<String> names(List<Trial> layouts) {
        return layouts.stream().map(Trial::key).toList();
    }

    private Sample nothing(int layouts) {
        List<double[][]> none = new ArrayList<>();
        for (int i = 0; i < layouts; i++) {
            none.add(new double[0][]);
        }
        return new Sample(none);
    }

    /** Batches ask for the same layout again and again. */
    private static Trial compiledOnce(Trial trial) {
        List<Habitat> known = new ArrayList<>();
        Supplier<Habitat> once = () -> {
            if (known.isEmpty()) {
                known.add(trial.habitat().get());
            }
            return known.get(0);
        };
        return new Trial(trial.key(), once, trial.day());
    }

    private static Progress shifted(Progress progress, int before, int most) {
        return new Progress() {
            @Override
            public void finished(int done, int total) {
                progress.finished(before + done, most);
            }

            @Override
            public boolean wantsStop() {
                return progress.wantsStop();
            }
        };
    }
}
