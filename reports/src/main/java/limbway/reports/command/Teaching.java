package limbway.reports.command;

import java.io.PrintWriter;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;

import limbway.model.body.Body;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.Resource;
import limbway.model.explain.PairWays;
import limbway.model.explain.flip.FlipAnswer;
import limbway.model.explain.flip.Flips;
import limbway.model.route.Search;
import limbway.model.shade.ShadeAudit;
import limbway.model.shade.ShadeCalendar;
import limbway.model.shade.ShadeRule;
import limbway.model.shade.ShadeSettings;
import limbway.model.shade.ShadeYear;
import limbway.model.study.Variant;
import limbway.reports.data.LessonInfo;
import limbway.reports.lesson.ChangeHunt;
import limbway.reports.lesson.Lesson;
import limbway.reports.lesson.LessonSource;
import limbway.reports.lesson.TaughtTrip;
import limbway.reports.lesson.TriedChange;
import limbway.reports.lesson.TripChoice;
import limbway.reports.lesson.TripWish;
import limbway.reports.measure.Audit;
import limbway.reports.measure.Measures;
import limbway.reports.measure.NeedsAlone;
import limbway.reports.measure.RouteCard;
import limbway.reports.measure.RouteCards;
import limbway.reports.measure.SafeBuilding;
import limbway.reports.page.LessonReport;
import limbway.reports.replay.ReplayLayout;
import limbway.sim.animal.DaySettings;
import limbway.sim.experiment.Experiment;
import limbway.sim.experiment.Outcome;
import limbway.sim.experiment.RunSettings;
import limbway.sim.habitat.Habitat;

/** Works out a lesson: lives the days, chooses the trip, tries changes, looks at shade. */
final class Teaching {

    private static final double THRESHOLD_M = 1;
    private static final int STEP_MIN = 15;
    private static final int LEAST_PLATFORMS = 2;

    private final Question question;
    private final LessonOptions options;
    private final Habitat taught;
    private final List<Variant> others;
    private final TripWish wish;

    private Teaching(Question question, LessonOptions options, Habitat taught, List<Variant> others, TripWish wish) {
        this.question = question;
        this.options = options;
        this.taught = taught;
        this.others = others;
        this.wish = wish;
    }

    /** What is to be taught; refused where a name is not there or no way joins the places that are named. */
    static Teaching of(Question question, LessonOptions options) throws Refusal {
        List<Variant> others = others(question, options.variants);
        Habitat taught = question.habitat();
        TripWish wish = wish(taught, options);
        return new Teaching(question, options, taught, others, wish);
    }

    private static List<Variant> others(Question question, List<String> wanted) throws Refusal {
        List<Variant> all = question.study().layouts().stream()
                .filter(layout -> !layout.equals(question.layout()))
                .toList();
        if (wanted == null) {
            return all;
        }
        Set<String> names = ComparedLayouts.named(question.study(), wanted);
        return all.stream().filter(layout -> names.contains(layout.name())).toList();
    }

    private static TripWish wish(Habitat habitat, LessonOptions options) throws Refusal {
        List<String> bodies = habitat.bodies().stream().map(Body::name).toList();
        if (options.body != null && !bodies.contains(options.body)) {
            throw Refusal.unknown("body in the group", options.body, bodies);
        }
        List<String> places =
                habitat.graph().resources().stream().map(Resource::id).toList();
        for (String place : new String[] {options.from, options.to}) {
            if (place != null && !places.contains(place)) {
                throw Refusal.unknown("resource", place, places);
            }
        }
        if (options.from != null && options.from.equals(options.to)) {
            throw Refusal.of(
                    "--from and --to are the same place", options.to, "two different places", "choose another");
        }
        Optional<Body> body = habitat.bodies().stream()
                .filter(one -> one.name().equals(options.body))
                .findFirst();
        TripWish wish = new TripWish(body, Optional.ofNullable(options.from), Optional.ofNullable(options.to));
        if (wish.isWhole()) {
            Search search = PairWays.find(
                    habitat.routes(body.orElseThrow()),
                    habitat.sharpness(),
                    places.indexOf(options.from),
                    places.indexOf(options.to));
            if (search instanceof Search.Unreachable none) {
                throw Refusal.of(
                        "there is no such trip to teach",
                        none.why(),
                        "two places that a way joins for this body",
                        "choose another trip; limbway check says what is missing");
            }
        }
        return wish;
    }

    /** Everything of the lesson; ends early if that is wanted, with nothing saved. */
    LessonReport run(PrintWriter err, Interruption interruption) throws Refusal, NotDone {
        RunSettings settings = options.settings();
        ProgressLine progress = new ProgressLine(
                err,
                interruption::isWanted,
                System::nanoTime,
                Terminal.isWatched(),
                others.size() + 2,
                settings.replications());
        StatusLine line = new StatusLine(err, System::nanoTime, Terminal.isWatched());
        List<Habitat> habitats = new ArrayList<>(List.of(taught));
        others.forEach(other -> habitats.add(question.habitat(other)));
        List<Measures> layouts = new ArrayList<>();
        for (Habitat habitat : habitats) {
            progress.nextLayout(habitat.layout().name());
            layouts.add(
                    Measures.of(lived(habitat, settings, question.assumptions().day(), progress), THRESHOLD_M));
        }
        progress.nextLayout(taught.layout().name() + ", needs and energy alone");
        NeedsAlone alone = NeedsAlone.of(
                lived(taught, settings, question.assumptions().withoutWorth().day(), progress), THRESHOLD_M);
        progress.end();
        Outcome outcome = layouts.get(0).outcome();
        say(line, interruption, "choosing a trip");
        Optional<TaughtTrip> trip = TripChoice.of(outcome, habitats.subList(1, habitats.size()), wish);
        if (trip.isEmpty()
                && (wish.body().isPresent()
                        || wish.from().isPresent()
                        || wish.to().isPresent())) {
            throw Refusal.of(
                    "there is no such trip to teach",
                    "no way that starts and ends so",
                    "two places that a way joins",
                    "choose another trip; limbway check says what is missing");
        }
        say(line, interruption, "trying changes");
        Changes changes = changes(trip);
        say(line, interruption, "looking at shade");
        LessonSource source = new LessonSource(
                layouts,
                alone,
                Audit.of(taught),
                shade(settings, interruption),
                trip,
                wish.body().isPresent() || wish.from().isPresent() || wish.to().isPresent(),
                changes.tried,
                changes.flips.turns());
        say(line, interruption, "writing");
        LessonReport report =
                new LessonReport(info(settings, layouts), Lesson.of(source), trip.flatMap(one -> replay(source, one)));
        line.end();
        return report;
    }

    private static void say(StatusLine line, Interruption interruption, String words) throws NotDone {
        if (interruption.isWanted()) {
            throw new NotDone("limbway: interrupted before the lesson was written\n  saved    nothing\n");
        }
        line.say(line.elapsedS(), () -> words);
    }

    private static Outcome lived(Habitat habitat, RunSettings settings, DaySettings day, ProgressLine progress)
            throws Refusal, NotDone {
        Outcome outcome;
        try {
            outcome = Experiment.run(habitat, settings, day, progress);
        } catch (IllegalArgumentException e) {
            throw Refusal.of(
                    "the layout " + habitat.layout().name() + " cannot be lived in",
                    e.getMessage(),
                    "",
                    "see limbway check");
        }
        if (!outcome.complete()) {
            progress.end();
            throw new NotDone("limbway: interrupted before the lesson was written\n  saved    nothing\n");
        }
        return outcome;
    }

    /** Changes to choose between, and what the answer about the trip hangs on. */
    private record Changes(List<TriedChange> tried, FlipAnswer flips) {}

    private Changes changes(Optional<TaughtTrip> trip) {
        if (trip.isEmpty()) {
            return new Changes(List.of(), new FlipAnswer(List.of(), List.of(), List.of(), 0));
        }
        SafeBuilding limits = new SafeBuilding(taught.layout().enclosure(), taught.bodies());
        FlipAnswer flips =
                Flips.find(trip.get().question(), taught.graph(), trip.get().reason(), limits);
        return new Changes(ChangeHunt.of(trip.get(), taught.graph(), flips, others, limits), flips);
    }

    private Optional<ShadeYear> shade(RunSettings settings, Interruption interruption) {
        Enclosure enclosure = taught.layout().enclosure();
        List<String> platforms =
                enclosure.platforms().stream().map(Platform::id).toList();
        return platforms.size() < LEAST_PLATFORMS
                ? Optional.empty()
                : ShadeAudit.of(
                        enclosure,
                        ShadeSettings.standard(),
                        ShadeRule.standard(),
                        ShadeCalendar.of(enclosure.site(), settings.date().getYear(), STEP_MIN),
                        platforms,
                        settings.threads(),
                        (done, total) -> !interruption.isWanted());
    }

    /** The ways of the trip to be played: only trips that were made have a card. */
    private Optional<LessonReport.Replay> replay(LessonSource source, TaughtTrip trip) {
        Measures measures = source.layouts().get(0);
        RouteCards cards = RouteCards.withoutFlips(measures.outcome());
        List<RouteCard> all = cards.cards();
        return IntStream.range(0, all.size())
                .filter(i -> all.get(i).body().equals(trip.body())
                        && all.get(i).from().equals(trip.from())
                        && all.get(i).to().equals(trip.to())
                        && all.get(i).atSecond().isEmpty())
                .boxed()
                .findFirst()
                .map(card -> new LessonReport.Replay(ReplayLayout.of(measures, cards, question.fileName()), card));
    }

    private LessonInfo info(RunSettings settings, List<Measures> layouts) {
        return new LessonInfo(
                question.fileName(),
                question.study().title(),
                question.read().sha256Hex(),
                layouts.stream().map(Measures::layout).toList(),
                settings,
                THRESHOLD_M,
                Version.current(),
                System.getProperty("java.version"),
                UsedParameters.of(question, question.assumptions(), THRESHOLD_M),
                question.read().notes());
    }
}
