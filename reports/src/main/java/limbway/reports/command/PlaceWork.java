package limbway.reports.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;

import limbway.model.study.Animal;
import limbway.model.study.Variant;
import limbway.reports.data.NotebookQuestion;
import limbway.reports.data.PlaceInfo;
import limbway.reports.measure.ElevatedTime;
import limbway.reports.measure.placement.PlacingAnswer;
import limbway.reports.measure.placement.PlacingCriteria;
import limbway.reports.page.PlaceReport;
import limbway.sim.experiment.Assumptions;
import limbway.sim.experiment.Progress;
import limbway.sim.experiment.RunSettings;
import limbway.sim.experiment.placement.PlacingContest;
import limbway.sim.experiment.placement.PlacingSearch;
import limbway.sim.experiment.placement.PlacingSearch.Proposal;
import limbway.sim.experiment.statistics.KimNelson;
import limbway.sim.experiment.trial.Criterion;
import limbway.sim.experiment.trial.Notebook;
import limbway.sim.experiment.trial.Trial;
import limbway.sim.experiment.trial.Trials;
import limbway.sim.habitat.Habitat;

/** The work of a placing, from candidates to a report. */
final class PlaceWork {

    private static final String BEFORE = "as it stands";

    private final Question question;
    private final PlaceWish wish;
    private final PlaceEffort effort;
    private final RunSettings settings;
    private final Assumptions assumptions;
    private final List<Criterion> criteria;

    PlaceWork(Question question, PlaceWish wish, PlaceEffort effort, RunSettings settings) {
        this.question = question;
        this.wish = wish;
        this.effort = effort;
        this.settings = settings;
        this.assumptions = effort.worth == OnOff.ON
                ? question.assumptions()
                : question.assumptions().withoutWorth();
        this.criteria = PlacingCriteria.of(question.study().animals());
    }

    /** All that decides what a repetition of a layout gives, in one line. */
    String question() {
        return new NotebookQuestion(" ", " ")
                .says("limbway", Version.current(), question.read().sha256Hex())
                .has("place", "\"" + question.layout().name() + "\"")
                .lives(settings)
                .has("worth", effort.worth)
                .says(String.join("+", wish.task().ids()) + (wish.task().withDeck() ? "+deck" : ""))
                .says(String.join(",", criteria.stream().map(Criterion::name).toList()))
                .line();
    }

    /** Repetitions that are lived at most. */
    int atMost() {
        return effort.budget + settings.replications() + 2 * effort.fresh;
    }

    /** The report, or empty if it was interrupted. */
    Optional<PlaceReport> report(Notebook notebook, Progress progress) throws Refusal {
        PlaceSpots.of(wish, question.layout());
        Habitat base = habitat(question.layout());
        Optional<PlaceSite> site = PlaceSite.of(question, wish, base, assumptions, settings, progress);
        if (site.isEmpty()) {
            return Optional.empty();
        }
        PlacingSearch.Found found =
                site.get().search(question.layout(), wish.task(), wish.rules().apartM(), effort.simulate);
        int needed = found.proposals().size() * settings.replications();
        if (effort.budget < needed) {
            throw Refusal.of(
                    "the budget is too small to begin",
                    effort.budget + " repetitions",
                    "at least " + needed + ": " + settings.replications() + " of each of "
                            + found.proposals().size() + " combinations",
                    "raise --budget, or lower --simulate");
        }
        return contest(base, site.get(), found, new Trials(criteria, settings, notebook), progress);
    }

    private Optional<PlaceReport> contest(
            Habitat base, PlaceSite site, PlacingSearch.Found found, Trials trials, Progress progress) {
        PlacingContest contest = new PlacingContest(trials, progress);
        Trial before = new Trial(BEFORE, () -> base, assumptions.day());
        List<Trial> layouts = new ArrayList<>();
        for (Proposal proposal : found.proposals()) {
            layouts.add(new Trial(
                    proposal.placing().key(),
                    once(() -> habitat(proposal.placing().applyTo(question.layout()))),
                    assumptions.day()));
        }
        Optional<PlacingContest.Outcome> outcome = contest.select(
                layouts,
                before,
                new KimNelson(effort.confidence, effort.indifference, settings.replications()),
                settings.replications(),
                effort.budget);
        Optional<double[][]> fresh =
                outcome.flatMap(end -> contest.afresh(layouts.get(end.selected().best()), effort.fresh));
        Optional<double[][]> freshBefore = fresh.flatMap(values -> contest.afresh(before, effort.fresh));
        return freshBefore.map(values -> new PlaceReport(
                info(site, found),
                PlacingAnswer.of(wish.task(), found.proposals(), outcome.orElseThrow(), fresh.orElseThrow(), values),
                question.layout(),
                question.study().animals().stream().map(Animal::name).toList()));
    }

    private Habitat habitat(Variant layout) {
        return new Habitat(
                layout,
                question.study().animals(),
                question.study().climate(),
                assumptions.energy(),
                assumptions.sharpness());
    }

    private static Supplier<Habitat> once(Supplier<Habitat> maker) {
        List<Habitat> made = new ArrayList<>(1);
        return () -> {
            if (made.isEmpty()) {
                made.add(maker.get());
            }
            return made.get(0);
        };
    }

    private PlaceInfo info(PlaceSite site, PlacingSearch.Found found) {
        return new PlaceInfo(
                question.fileName(),
                question.study().title(),
                question.read().sha256Hex(),
                question.layout().name(),
                settings,
                effort.worth == OnOff.ON,
                wish.rules(),
                site.spacingM(),
                site.considered(),
                site.out(),
                site.unreachable(),
                site.staying(),
                found.judged(),
                found.all(),
                effort.confidence,
                effort.indifference,
                effort.budget,
                Version.current(),
                System.getProperty("java.version"),
                UsedParameters.of(question, assumptions, ElevatedTime.STANDARD_THRESHOLD_M),
                question.read().notes());
    }
}
