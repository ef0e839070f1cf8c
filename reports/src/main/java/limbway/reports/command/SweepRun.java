package limbway.reports.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;

import limbway.model.study.Study;
import limbway.model.study.Variant;
import limbway.reports.measure.criterion.DesignCriterion;
import limbway.reports.measure.sweep.Swept;
import limbway.reports.measure.sweep.SweptCase;
import limbway.reports.measure.sweep.SweptFactor;
import limbway.reports.words.Figures;
import limbway.scenarios.Reading;
import limbway.scenarios.Sweep;
import limbway.scenarios.SweepPoint;
import limbway.sim.experiment.Assumptions;
import limbway.sim.experiment.Progress;
import limbway.sim.experiment.RunSettings;
import limbway.sim.experiment.trial.Notebook;
import limbway.sim.experiment.trial.Trial;
import limbway.sim.experiment.trial.Trials;
import limbway.sim.habitat.Habitat;

/** Lives in all layouts at all points of a sweep, one after the other; what a notebook knows is not lived again. */
final class SweepRun {

    private final Sweep sweep;
    private final List<SweepPoint> points;
    private final List<String> layouts;
    private final List<DesignCriterion> criteria;
    private final RunSettings settings;
    private final Trials trials;
    private final StatusLine line;
    private final BooleanSupplier stop;
    private final Map<String, Lived> compiled = new LinkedHashMap<>();
    private int done;
    private int lived;

    /** A layout that was made ready, with who lives there under what sky. */
    private record Lived(Study study, Habitat habitat) {}

    SweepRun(
            Sweep sweep,
            List<SweepPoint> points,
            List<String> layouts,
            List<DesignCriterion> criteria,
            RunSettings settings,
            Notebook notebook,
            StatusLine line,
            BooleanSupplier stop) {
        this.sweep = sweep;
        this.points = List.copyOf(points);
        this.layouts = List.copyOf(layouts);
        this.criteria = List.copyOf(criteria);
        this.settings = settings;
        this.trials = new Trials(List.copyOf(criteria), settings, notebook);
        this.line = line;
        this.stop = stop;
    }

    /** What came out; empty if it was stopped before the end. */
    Optional<Swept> run() throws Refusal {
        List<SweptCase> cases = new ArrayList<>();
        for (int number = 1; number <= points.size(); number++) {
            SweepPoint point = points.get(number - 1);
            Study study = study(point);
            for (String layout : layouts) {
                Optional<double[][]> values = live(point, study, layout);
                if (values.isEmpty()) {
                    line.end();
                    return Optional.empty();
                }
                done++;
                List<Double> positions = new ArrayList<>();
                for (int f = 0; f < sweep.plan().factors().size(); f++) {
                    positions.add(point.position(f));
                }
                cases.add(new SweptCase(number, layout, point.values(), positions, values.get()));
            }
        }
        line.end();
        List<SweptFactor> factors = sweep.plan().factors().stream()
                .map(factor -> new SweptFactor(factor.name(), factor.isRange(), factor.isAssumed(), factor.levels()))
                .toList();
        return Optional.of(new Swept(factors, layouts, criteria, cases));
    }

    /** How many layouts were finished. */
    int done() {
        return done;
    }

    private Study study(SweepPoint point) {
        if (sweep.read(point, layouts) instanceof Reading.Read read) {
            return read.study();
        }
        throw new IllegalStateException("sweep: a point that was sound no longer is: " + point.words());
    }

    private Optional<double[][]> live(SweepPoint point, Study study, String layout) throws Refusal {
        Assumptions assumptions = assumptions(point, study);
        Trial trial =
                new Trial(point.words() + " | " + layout, () -> habitat(study, layout, assumptions), assumptions.day());
        try {
            return stop.getAsBoolean() ? Optional.empty() : trials.of(trial, 1, settings.replications(), new Told());
        } catch (IllegalArgumentException e) {
            line.end();
            throw Refusal.of(
                    "the layout " + layout + " cannot be lived in with " + point.words(),
                    e.getMessage(),
                    "",
                    "see limbway check");
        }
    }

    /** Each number is in its range; together they may still contradict each other. */
    static Assumptions assumptions(SweepPoint point, Study study) throws Refusal {
        try {
            return Assumptions.standard().with(study.assumed());
        } catch (IllegalArgumentException e) {
            throw Refusal.of(
                    "assumed numbers do not go together with " + point.words(), e.getMessage(), "", "change the sweep");
        }
    }

    /** What stands as it stood at the point before is not compiled again. */
    private Habitat habitat(Study study, String layout, Assumptions assumptions) {
        Variant variant = study.find(layout).orElseThrow();
        Lived before = compiled.get(layout);
        boolean isSame = before != null
                && before.habitat().layout().equals(variant)
                && before.study().animals().equals(study.animals())
                && before.study().climate().equals(study.climate());
        Habitat habitat = isSame
                ? before.habitat().priced(assumptions.energy(), assumptions.sharpness())
                : new Habitat(variant, study.animals(), study.climate(), assumptions.energy(), assumptions.sharpness());
        compiled.put(layout, new Lived(study, habitat));
        return habitat;
    }

    /** Says how far the sweep is. */
    private final class Told implements Progress {

        @Override
        public void finished(int nowDone, int ofTotal) {
            lived++;
            line.say(line.elapsedS(), this::text);
        }

        @Override
        public boolean wantsStop() {
            line.say(line.elapsedS(), this::text);
            return stop.getAsBoolean();
        }

        private String text() {
            int all = points.size() * layouts.size();
            String left = "";
            if (lived >= settings.replications()) {
                double leftS = line.elapsedS() / lived * settings.replications() * (all - done);
                left = ", about " + Figures.decimals(Math.ceil(leftS), 0) + " s left";
            }
            return "sweep: " + done + " of " + all + " layouts" + left;
        }
    }
}
