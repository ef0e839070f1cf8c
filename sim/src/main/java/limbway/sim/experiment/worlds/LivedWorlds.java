package limbway.sim.experiment.worlds;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.function.BooleanSupplier;

import limbway.model.study.Study;
import limbway.model.study.Variant;
import limbway.sim.chance.Name;
import limbway.sim.experiment.Assumptions;
import limbway.sim.experiment.Progress;
import limbway.sim.experiment.RunSettings;
import limbway.sim.experiment.trial.Criterion;
import limbway.sim.experiment.trial.Notebook;
import limbway.sim.experiment.trial.Trial;
import limbway.sim.experiment.trial.Trials;
import limbway.sim.habitat.Habitat;

/** Layouts of a study, lived in by its animals, whatever is assumed; values are looked up and noted in a notebook. */
public final class LivedWorlds implements WorldModel {

    private final Assumptions base;
    private final Trials trials;
    private final List<WeighedLayout> layouts;
    private final boolean withWorth;

    /**
     * Sets the layouts up; each is compiled when it is first lived in.
     *
     * @param study who lives there and under what weather
     * @param layouts what is lived in, in the order of the answers
     * @param base numbers that stay as they are unless they are varied
     * @param withWorth false to set every term of worth to 0 in every world
     * @param settings seed, days, date and warm-up; each layout is run on one thread
     * @param criteria what is asked about
     * @param notebook where values are looked up and noted
     */
    public LivedWorlds(
            Study study,
            List<Variant> layouts,
            Assumptions base,
            boolean withWorth,
            RunSettings settings,
            List<Criterion> criteria,
            Notebook notebook) {
        this.base = base;
        this.withWorth = withWorth;
        this.trials = new Trials(criteria, settings.onThreads(1), notebook);
        this.layouts = layouts.stream()
                .map(layout -> new WeighedLayout(study, layout, base))
                .toList();
    }

    @Override
    public Lived live(Map<String, Double> values, int first, int count, BooleanSupplier stop) {
        Assumptions assumed;
        try {
            assumed = assumed(values);
        } catch (IllegalArgumentException e) {
            return new Lived.Refused(e.getMessage());
        }
        try {
            // by what it is, not by its number: the same world of another question is found again
            String key = Long.toHexString(Name.key(written(values)));
            double[][][] found = new double[layouts.size()][][];
            for (int i = 0; i < found.length; i++) {
                WeighedLayout layout = layouts.get(i);
                Trial trial = new Trial(
                        "world " + key + " " + layout.name(), () -> ready(layout, values, assumed), assumed.day());
                Optional<double[][]> lived = trials.of(trial, first, count, stoppedBy(stop));
                if (lived.isEmpty()) {
                    return new Lived.GivenUp();
                }
                found[i] = lived.get();
            }
            return new Lived.Values(new ByLayout(found));
        } catch (NotReady e) {
            return new Lived.Refused(e.getMessage());
        }
    }

    /** A layout cannot be made ready in a world; what goes wrong later is a fault and must not pass for that. */
    private static final class NotReady extends RuntimeException {
        private static final long serialVersionUID = 1;

        NotReady(IllegalArgumentException cause) {
            super(cause.getMessage(), cause);
        }
    }

    private static Habitat ready(WeighedLayout layout, Map<String, Double> values, Assumptions assumed) {
        try {
            return layout.habitat(values, assumed);
        } catch (IllegalArgumentException e) {
            throw new NotReady(e);
        }
    }

    private Assumptions assumed(Map<String, Double> values) {
        Map<String, Double> ofModel = new TreeMap<>(values);
        ofModel.keySet().removeIf(PlausibleInputs::isOwn);
        Assumptions assumed = base.with(ofModel);
        return withWorth ? assumed : assumed.withoutWorth();
    }

    private String written(Map<String, Double> values) {
        StringBuilder text = new StringBuilder(withWorth ? "" : "without worth;");
        trials.criteria().forEach(criterion -> text.append(criterion.name()).append(';'));
        new TreeMap<>(values).forEach((name, value) -> text.append(name)
                .append('=')
                .append(Double.toHexString(value))
                .append(';'));
        return text.toString();
    }

    private static Progress stoppedBy(BooleanSupplier stop) {
        return new Progress() {
            @Override
            public void finished(int done, int total) {
                // whole worlds are counted, not replications
            }

            @Override
            public boolean wantsStop() {
                return stop.getAsBoolean();
            }
        };
    }
}
