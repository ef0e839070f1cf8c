package limbway.reports.command;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.function.BooleanSupplier;

import limbway.model.study.Variant;
import limbway.reports.data.CompareInfo;
import limbway.reports.measure.Aspect;
import limbway.reports.measure.Measures;
import limbway.reports.measure.criterion.Criteria;
import limbway.reports.measure.criterion.DesignCriterion;
import limbway.reports.measure.criterion.Givens;
import limbway.reports.page.CompareReport;
import limbway.reports.page.WorldsSection;
import limbway.sim.animal.DaySettings;
import limbway.sim.experiment.Assumptions;
import limbway.sim.experiment.Experiment;
import limbway.sim.experiment.Outcome;
import limbway.sim.experiment.comparison.Compared;
import limbway.sim.experiment.comparison.Comparison;
import limbway.sim.experiment.comparison.Stopped;
import limbway.sim.experiment.statistics.StoppingRule;
import limbway.sim.experiment.trial.Criterion;
import limbway.sim.experiment.trial.Notebook;
import limbway.sim.experiment.trial.Trial;
import limbway.sim.experiment.trial.Trials;
import limbway.sim.experiment.worlds.WorldSettings;
import limbway.sim.habitat.Habitat;

/** Lets the group live in the layouts until it is known how they differ, and then once more with needs and energy alone. */
final class Comparing {

    /** What a layout is called in a notebook begins with this. */
    private static final String WITH_WORTH = "with worth: ";

    private static final String ALONE = "needs and energy alone: ";

    private final Question question;
    private final CompareOptions options;
    private final Optional<WorldSettings> worlds;
    private final StoppingRule rule;
    private final List<Variant> layouts;
    private final List<DesignCriterion> criteria;

    private Comparing(
            Question question,
            CompareOptions options,
            Optional<WorldSettings> worlds,
            StoppingRule rule,
            List<Variant> layouts,
            List<DesignCriterion> criteria) {
        this.question = question;
        this.options = options;
        this.worlds = worlds;
        this.rule = rule;
        this.layouts = layouts;
        this.criteria = criteria;
    }

    /** Looks at everything that is asked for before anything is lived. */
    static Comparing of(Question question, CompareOptions options, WorldsOptions worlds) throws Refusal {
        List<DesignCriterion> criteria = new Criteria(options.thresholdM).all();
        List<String> names = criteria.stream().map(DesignCriterion::name).toList();
        for (String name : options.until) {
            if (!names.contains(name)) {
                throw Refusal.unknown("measure", name, names);
            }
        }
        List<Variant> layouts = ComparedLayouts.of(question.study(), options.variants);
        for (String name : options.until) {
            Optional<String> missing = Givens.missing(name, question.study(), layouts);
            if (missing.isPresent()) {
                throw Refusal.of(
                        "the difference in a measure without a value is never known",
                        "--until " + name + ", and " + missing.get(),
                        "measures that have a value in every layout",
                        "leave it out, or say in the scenario what is missing");
            }
        }
        return new Comparing(
                question,
                options,
                worlds.areWanted() ? Optional.of(worlds.settings(options.settings())) : Optional.empty(),
                options.rule(),
                layouts,
                criteria);
    }

    /** All that decides what is lived, for the notebook. */
    String notebookQuestion() {
        return info().question(criteria.stream().map(DesignCriterion::name).toList());
    }

    /** The report, or empty if it was interrupted before the first look. */
    Optional<CompareReport> run(Notebook notebook, StatusLine line, BooleanSupplier stop) throws Refusal {
        Optional<CompareReport> report = asAssumed(notebook, new CompareProgressLine(line, stop));
        if (worlds.isEmpty() || report.isEmpty() || !isWholeAsAssumed(report.get())) {
            return report;
        }
        return report.map(found -> WorldsAnswer.of(
                        question,
                        layouts,
                        required(),
                        worlds.get(),
                        options.settings(),
                        options.hasWorth(),
                        notebook,
                        new WorldsProgressLine(line, stop))
                .map(found::with)
                .orElse(found));
    }

    /** The criterion that layouts are ranked by, and those whose differences had to be known well. */
    private List<DesignCriterion> required() {
        List<DesignCriterion> required = new ArrayList<>(List.of(criteria.get(0)));
        criteria.stream()
                .skip(1)
                .filter(criterion -> options.until.contains(criterion.name()))
                .forEach(required::add);
        return required;
    }

    private Optional<CompareReport> asAssumed(Notebook notebook, CompareProgressLine progress) throws Refusal {
        try {
            List<Habitat> habitats = new ArrayList<>();
            for (Variant layout : layouts) {
                habitats.add(question.habitat(layout));
            }
            progress.next("comparing " + layouts.size() + " layouts");
            Assumptions assumptions = assumptions();
            Optional<Compared> compared = comparison(List.copyOf(criteria), notebook)
                    .of(trials(habitats, assumptions.day(), options.hasWorth() ? WITH_WORTH : ALONE), progress);
            Optional<Compared> alone = Optional.empty();
            if (compared.isPresent() && compared.get().stopped() != Stopped.INTERRUPTED && options.hasWorth()) {
                progress.next("the same with needs and energy alone");
                alone = comparison(shares(), notebook)
                        .of(
                                trials(habitats, assumptions.withoutWorth().day(), ALONE),
                                compared.get().replications(),
                                progress);
            }
            Optional<Compared> bare = alone.map(this::renamed);
            Optional<CompareReport> report = compared.map(
                    found -> new CompareReport(info(), criteria, renamed(found), bare, List.of(), List.of()));
            return report.map(found -> isWholeAsAssumed(found)
                    ? found.watching(watched(found.ranked(), habitats, assumptions.day(), progress))
                    : found);
        } catch (IllegalArgumentException e) {
            throw Refusal.of("a layout cannot be lived in", e.getMessage(), "", "see limbway check");
        }
    }

    /** The first repetition of the best layouts, lived once more as its journal was not kept; none if that was stopped. */
    private List<Measures> watched(
            List<Integer> ranked, List<Habitat> habitats, DaySettings day, CompareProgressLine progress) {
        progress.next("one repetition of each layout, to be watched");
        List<Measures> watched = new ArrayList<>();
        for (int layout : ranked.subList(0, Math.min(CompareReport.MOST_WATCHED, ranked.size()))) {
            Outcome lived =
                    Experiment.run(habitats.get(layout), options.settings().repetitions(1, 1), day, progress);
            if (!lived.complete()) {
                return List.of();
            }
            watched.add(Measures.of(lived, options.thresholdM));
        }
        return watched;
    }

    /** Whether nothing is missing in a report. */
    boolean isWhole(CompareReport report) {
        return isWholeAsAssumed(report) && (worlds.isEmpty() || hasWorlds(report));
    }

    /** What an interrupted report is without, to be added to a sentence. */
    String leftOut(CompareReport report) {
        List<String> missing = new ArrayList<>();
        if (report.alone().isEmpty() && options.hasWorth()) {
            missing.add("needs and energy alone");
        }
        if (worlds.isPresent() && !hasWorlds(report)) {
            missing.add("plausible worlds");
        }
        return missing.isEmpty() ? "" : " and leaves out " + String.join(" and ", missing);
    }

    private static boolean hasWorlds(CompareReport report) {
        return report.supplements().stream().anyMatch(part -> part.id().equals(WorldsSection.ID));
    }

    private boolean isWholeAsAssumed(CompareReport report) {
        return report.compared().stopped() != Stopped.INTERRUPTED
                && (report.alone().isPresent() || !options.hasWorth());
    }

    private Assumptions assumptions() {
        return options.hasWorth()
                ? question.assumptions()
                : question.assumptions().withoutWorth();
    }

    private Comparison comparison(List<Criterion> measured, Notebook notebook) {
        LinkedHashSet<String> required = new LinkedHashSet<>(options.until);
        required.retainAll(measured.stream().map(Criterion::name).toList());
        return new Comparison(
                new Trials(measured, options.settings(), notebook.under(heading(measured))),
                rule,
                required,
                options.replications,
                options.settings().seed());
    }

    /** The question of the notebook has all measures; where fewer are looked at, what is noted is noted apart. */
    private String heading(List<Criterion> measured) {
        List<String> names = measured.stream().map(Criterion::name).toList();
        List<String> all = criteria.stream().map(Criterion::name).toList();
        return names.equals(all) ? "" : "only " + String.join(", ", names) + ": ";
    }

    /** Travel off the ground, by distance first. */
    private List<Criterion> shares() {
        List<Criterion> shares = new ArrayList<>();
        for (Aspect aspect : Aspect.values()) {
            criteria.stream()
                    .filter(c -> c.name().equals("offground_" + aspect.word()))
                    .forEach(shares::add);
        }
        return shares;
    }

    private List<Trial> trials(List<Habitat> habitats, DaySettings day, String prefix) {
        return habitats.stream()
                .map(habitat -> new Trial(prefix + habitat.layout().name(), () -> habitat, day))
                .toList();
    }

    /** With the names of the layouts alone. */
    private Compared renamed(Compared found) {
        return new Compared(
                layouts.stream().map(Variant::name).toList(),
                found.criteria(),
                found.required(),
                found.sample(),
                found.differences(),
                found.stopped());
    }

    private CompareInfo info() {
        return new CompareInfo(
                question.fileName(),
                question.study().title(),
                question.read().sha256Hex(),
                layouts.stream().map(Variant::name).toList(),
                options.settings(),
                rule,
                List.copyOf(new LinkedHashSet<>(options.until)),
                options.hasWorth(),
                options.thresholdM,
                Version.current(),
                System.getProperty("java.version"),
                UsedParameters.of(question, assumptions(), options.thresholdM),
                question.read().notes());
    }
}
