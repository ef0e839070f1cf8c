package limbway.reports.command;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;

import limbway.model.study.Variant;
import limbway.reports.measure.NeedsAlone;
import limbway.sim.animal.DaySettings;
import limbway.sim.experiment.Assumptions;
import limbway.sim.experiment.Experiment;
import limbway.sim.experiment.Outcome;
import limbway.sim.experiment.RunSettings;
import limbway.sim.habitat.Habitat;

/** Lets the group live in the layouts one after the other, and once more with needs and energy alone. */
final class Living {

    /**
     * What was lived.
     *
     * @param layouts what was to be lived in
     * @param outcomes outcomes of the layouts in their order; fewer, or the last one not complete, after an early end
     * @param alone the same layouts with needs and energy alone; fewer after an early end, none if that was not asked
     * @param asked replications asked for
     * @param complete whether nothing is missing
     */
    record Lived(List<Variant> layouts, List<Outcome> outcomes, List<NeedsAlone> alone, int asked, boolean complete) {

        /** Keeps copies of the lists. */
        Lived {
            layouts = List.copyOf(layouts);
            outcomes = List.copyOf(outcomes);
            alone = List.copyOf(alone);
        }

        List<String> leftOut() {
            return layouts.subList(outcomes.size(), layouts.size()).stream()
                    .map(Variant::name)
                    .toList();
        }

        /** What was finished before an early end, for example {@code 3 of 20 repetitions of as drawn}. */
        String told() {
            List<String> parts = new ArrayList<>();
            for (Outcome outcome : outcomes) {
                parts.add(outcome.journals().size() + " of " + asked + " repetitions of "
                        + outcome.habitat().layout().name());
            }
            int missing = leftOut().size();
            if (missing > 0) {
                return String.join(", ", parts) + "; " + (missing == 1 ? "1 layout is" : missing + " layouts are")
                        + " left out";
            }
            return String.join(", ", parts) + "; with needs and energy alone " + alone.size() + " of " + layouts.size()
                    + (layouts.size() == 1 ? " layout" : " layouts");
        }
    }

    private final Question question;
    private final RunOptions options;
    private final RunSettings settings;
    private final ProgressLine progress;

    private Living(Question question, RunOptions options, ProgressLine progress) {
        this.question = question;
        this.options = options;
        this.settings = options.settings();
        this.progress = progress;
    }

    /** Lives in all layouts that are asked for; ends early if that is wanted. */
    static Lived run(Question question, RunOptions options, PrintWriter err, Interruption interruption)
            throws Refusal, NotDone {
        List<Variant> layouts = layouts(question, options);
        ProgressLine progress = new ProgressLine(
                err,
                interruption::isWanted,
                System::nanoTime,
                Terminal.isWatched(),
                layouts.size() * (options.hasWorth() ? 2 : 1),
                options.settings().replications());
        Lived lived = new Living(question, options, progress).run(layouts);
        progress.end();
        if (lived.outcomes().isEmpty()) {
            throw new NotDone("limbway: interrupted before the first repetition was finished\n  saved    nothing\n");
        }
        return lived;
    }

    /** The layout in question and then, unless it is to be alone, the others. */
    private static List<Variant> layouts(Question question, RunOptions options) {
        List<Variant> layouts = new ArrayList<>(List.of(question.layout()));
        if (!options.alone) {
            question.study().layouts().stream()
                    .filter(layout -> !layout.equals(question.layout()))
                    .forEach(layouts::add);
        }
        return layouts;
    }

    private Lived run(List<Variant> layouts) throws Refusal {
        Assumptions assumptions = options.of(question.assumptions());
        List<Outcome> outcomes = new ArrayList<>();
        boolean complete = true;
        for (Variant layout : layouts) {
            if (complete) {
                progress.nextLayout(layout.name());
                Outcome outcome = live(question.habitat(layout), assumptions.day());
                complete = outcome.complete();
                if (!outcome.journals().isEmpty()) {
                    outcomes.add(outcome);
                }
            }
        }
        List<NeedsAlone> alone = new ArrayList<>();
        for (Outcome outcome : options.hasWorth() ? outcomes : List.<Outcome>of()) {
            if (complete) {
                progress.nextLayout(outcome.habitat().layout().name() + ", needs and energy alone");
                Outcome bare =
                        live(outcome.habitat(), assumptions.withoutWorth().day());
                complete = bare.complete();
                if (complete) {
                    alone.add(NeedsAlone.of(bare, options.thresholdM));
                }
            }
        }
        return new Lived(layouts, outcomes, alone, settings.replications(), complete);
    }

    private Outcome live(Habitat habitat, DaySettings day) throws Refusal {
        try {
            return Experiment.run(habitat, settings, day, progress);
        } catch (IllegalArgumentException e) {
            throw Refusal.of(
                    "the layout " + habitat.layout().name() + " cannot be lived in",
                    e.getMessage(),
                    "",
                    "see limbway check");
        }
    }
}
