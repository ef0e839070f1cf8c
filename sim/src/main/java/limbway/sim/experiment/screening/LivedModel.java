package limbway.sim.experiment.screening;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;
import java.util.function.Function;
import java.util.function.Supplier;

import limbway.model.parameter.Parameter;
import limbway.model.study.Study;
import limbway.model.study.Variant;
import limbway.sim.experiment.Assumptions;
import limbway.sim.experiment.Experiment;
import limbway.sim.experiment.Outcome;
import limbway.sim.experiment.Progress;
import limbway.sim.experiment.RunSettings;
import limbway.sim.habitat.Habitat;

/**
 * Layouts that are lived in under changing assumptions, and always under the same chance.
 *
 * <p>A layout is compiled once, and its moves are priced anew only when what they cost has changed.
 */
public final class LivedModel implements ScreenedModel {

    private final Study study;
    private final List<Variant> layouts;
    private final Assumptions base;
    private final RunSettings settings;
    private final Function<List<Outcome>, double[]> measure;
    private final Compiled compiled;
    private List<Habitat> priced = List.of();

    /**
     * Sets a model up.
     *
     * @param study who lives there and under what weather
     * @param layouts what is lived in, one layout or several
     * @param base numbers that stay as they are unless they are varied
     * @param settings seed, replications, days and date; each layout is run on one thread
     * @param measure answers from the outcomes of the layouts in their order
     */
    public LivedModel(
            Study study,
            List<Variant> layouts,
            Assumptions base,
            RunSettings settings,
            Function<List<Outcome>, double[]> measure) {
        this(study, layouts, base, settings, measure, new Compiled(() -> layouts.stream()
                .map(layout -> new Habitat(layout, study.animals(), study.climate(), base.energy(), base.sharpness()))
                .toList()));
    }

    private LivedModel(
            Study study,
            List<Variant> layouts,
            Assumptions base,
            RunSettings settings,
            Function<List<Outcome>, double[]> measure,
            Compiled compiled) {
        this.study = study;
        this.layouts = List.copyOf(layouts);
        this.base = base;
        this.settings = settings.onThreads(1);
        this.measure = measure;
        this.compiled = compiled;
    }

    /** Layouts that are compiled at the first call and then shared by all who walk through them. */
    private static final class Compiled {

        private final Supplier<List<Habitat>> compiler;
        private List<Habitat> habitats = List.of();

        Compiled(Supplier<List<Habitat>> compiler) {
            this.compiler = compiler;
        }

        synchronized List<Habitat> habitats() {
            if (habitats.isEmpty()) {
                habitats = compiler.get();
            }
            return habitats;
        }
    }

    /**
     * A model of the same layouts for another thread; they are compiled once for both.
     *
     * @return a model that gives the same answers
     */
    public LivedModel another() {
        return new LivedModel(study, layouts, base, settings, measure, compiled);
    }

    @Override
    public Map<String, Double> used(Map<String, Double> wanted) {
        Map<String, Double> used = new LinkedHashMap<>();
        for (Parameter parameter : base.with(wanted).parameters()) {
            if (wanted.containsKey(parameter.name())) {
                used.put(parameter.name(), parameter.value());
            }
        }
        return used;
    }

    @Override
    public Optional<double[]> answers(Map<String, Double> values, BooleanSupplier stop) {
        return outcomes(values, stop).map(measure);
    }

    /**
     * What happens in each layout.
     *
     * @param values values by the names of parameters, in place of the base
     * @param stop asked now and then; true to give up
     * @return outcomes in the order of the layouts; empty if it was given up
     * @throws IllegalArgumentException if a layout cannot be lived in
     */
    public Optional<List<Outcome>> outcomes(Map<String, Double> values, BooleanSupplier stop) {
        Assumptions assumptions = base.with(values);
        List<Outcome> outcomes = new ArrayList<>();
        for (Habitat habitat : habitats(assumptions)) {
            Outcome outcome = Experiment.run(habitat, settings, assumptions.day(), stoppedBy(stop));
            if (!outcome.complete()) {
                return Optional.empty();
            }
            outcomes.add(outcome);
        }
        return Optional.of(outcomes);
    }

    private List<Habitat> habitats(Assumptions wanted) {
        if (priced.isEmpty()
                || !priced.get(0).energy().equals(wanted.energy())
                || !priced.get(0).sharpness().equals(wanted.sharpness())) {
            priced = compiled.habitats().stream()
                    .map(habitat -> habitat.priced(wanted.energy(), wanted.sharpness()))
                    .toList();
        }
        return priced;
    }

    private static Progress stoppedBy(BooleanSupplier stop) {
        return new Progress() {
            @Override
            public void finished(int done, int total) {
                // whole evaluations are counted, not replications
            }

            @Override
            public boolean wantsStop() {
                return stop.getAsBoolean();
            }
        };
    }
}
