package limbway.reports.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

import limbway.model.study.Variant;
import limbway.reports.data.Json;
import limbway.reports.data.ScreenInfo;
import limbway.reports.measure.ElevatedTime;
import limbway.reports.measure.Movers;
import limbway.reports.measure.ScreenedAnswer;
import limbway.reports.page.ScreenReport;
import limbway.reports.words.Cautions;
import limbway.sim.experiment.Assumptions;
import limbway.sim.experiment.Outcome;
import limbway.sim.experiment.RunSettings;
import limbway.sim.experiment.screening.Factor;
import limbway.sim.experiment.screening.LivedModel;
import limbway.sim.experiment.screening.Screened;
import limbway.sim.experiment.screening.Screening;

/** Tells which assumptions move the answer. */
@Command(
        name = "screen",
        description = {
            "Tells which assumptions move the answer, and which do not.",
            "Walks through the ranges of all numbers that are not published, one at a time, and lets the group live in the "
                    + "layout at every point under the same chance. With --against the answer is the difference between two "
                    + "layouts: whether a comparison holds whatever is assumed.",
            ""
        },
        synopsisHeading = "Use: ",
        customSynopsis = "limbway screen SCENARIO [options]",
        sortOptions = false,
        optionListHeading = "%nOptions:%n",
        footerHeading = "%nExamples:%n",
        footer = {
            "  limbway screen yard.yaml --out yard-screen",
            "  limbway screen yard.yaml --variant \"high and linked\" --against \"as drawn\"",
            "  limbway screen yard.yaml --trajectories 30 --replications 10",
            "",
            "Exit code: 0 done; 2 the input is wrong; 3 it could not be done, with what was saved.",
            "",
            Cautions.IN_SHORT
        })
final class ScreenCommand implements Callable<Integer> {

    @Mixin
    private CommonOptions options;

    @Option(
            names = "--against",
            paramLabel = "NAME",
            description = "A second layout: the answer is then the first less the second.")
    private String against;

    @Option(names = "--out", paramLabel = "DIR", description = "Also write a page with charts and tables into DIR.")
    private Path out;

    @Option(
            names = "--trajectories",
            paramLabel = "N",
            defaultValue = "10",
            converter = WholeNumber.class,
            description = "Walks through the assumptions; without it 10. With fewer than two nothing can be told.")
    private int trajectories;

    @Option(
            names = "--replications",
            paramLabel = "N",
            defaultValue = "5",
            converter = WholeNumber.class,
            description = "How many times the days are lived at each point; without it 5.")
    private int replications;

    @Option(
            names = "--days",
            paramLabel = "N",
            defaultValue = "3",
            converter = WholeNumber.class,
            description = "Days in each repetition; without it 3.")
    private int days;

    @Mixin
    private StartOptions start;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Refusal, NotDone {
        Question question = Question.of(options);
        List<Variant> layouts = layouts(question);
        Path folder = out == null ? null : OutFolder.prepare(out);
        try (Interruption interruption = Interruption.watch(spec.commandLine().getErr())) {
            return answer(question, layouts, folder, interruption);
        }
    }

    /** The layout in question and the one that it is compared with. */
    private List<Variant> layouts(Question question) throws Refusal {
        List<Variant> layouts = new ArrayList<>(List.of(question.layout()));
        if (against != null) {
            List<String> known =
                    question.study().layouts().stream().map(Variant::name).toList();
            layouts.add(question.study()
                    .find(against)
                    .orElseThrow(() -> Refusal.unknown("layout to compare with", against, known)));
            if (layouts.get(0).equals(layouts.get(1))) {
                throw Refusal.of(
                        "a layout is compared with itself",
                        against,
                        "two layouts",
                        "name another one with --variant or --against");
            }
        }
        return layouts;
    }

    private int answer(Question question, List<Variant> layouts, Path folder, Interruption interruption)
            throws Refusal, NotDone {
        Optional<ScreenReport> found = screened(question, layouts, interruption);
        if (found.isEmpty()) {
            throw new NotDone("limbway: interrupted before the first walk was finished\n  saved    nothing\n");
        }
        ScreenReport report = found.get();
        ScreenLines.of(report).forEach(spec.commandLine().getOut()::println);
        if (options.json != null) {
            OutFolder.write(options.json, Json.text(ScreenAnswer.of(report)));
        }
        if (folder != null) {
            try {
                ScreenFiles.write(folder, report);
            } catch (IOException e) {
                throw OutFolder.notWritten(folder, e, "the answer above");
            }
            spec.commandLine().getOut().println("page: " + folder.resolve("screen.html"));
        }
        spec.commandLine().getOut().flush();
        if (report.trajectories() == trajectories) {
            return ExitCode.DONE;
        }
        spec.commandLine().getErr().println("limbway: interrupted");
        spec.commandLine()
                .getErr()
                .println("  saved    the answer above, which rests on " + report.trajectories() + " of " + trajectories
                        + " walks");
        spec.commandLine().getErr().flush();
        return ExitCode.NOT_DONE;
    }

    /** The report, or empty if it was interrupted before a walk came to its end. */
    private Optional<ScreenReport> screened(Question question, List<Variant> layouts, Interruption interruption)
            throws Refusal {
        Assumptions base = question.assumptions();
        RunSettings settings = start.settings(replications, days);
        StatusLine line = new StatusLine(spec.commandLine().getErr(), System::nanoTime, Terminal.isWatched());
        try {
            LivedModel model = model(question, layouts, base, settings);
            Optional<List<Outcome>> asItStands = model.outcomes(Map.of(), interruption::isWanted);
            if (asItStands.isEmpty()) {
                return Optional.empty();
            }
            List<Factor> factors = Factor.doubtful(base);
            Screened screened = Screening.run(
                    factors,
                    trajectories,
                    settings.seed(),
                    start.threads(),
                    model::another,
                    new ScreenProgressLine(line, interruption::isWanted));
            line.end();
            return screened.trajectories() == 0
                    ? Optional.empty()
                    : Optional.of(report(question, base, settings, screened, asItStands.get()));
        } catch (IllegalArgumentException e) {
            line.end();
            throw Refusal.of("a layout cannot be lived in", e.getMessage(), "", "see limbway check");
        }
    }

    private static LivedModel model(Question question, List<Variant> layouts, Assumptions base, RunSettings settings) {
        return new LivedModel(
                question.study(),
                layouts,
                base,
                settings,
                outcomes -> ScreenedAnswer.all(outcomes, ElevatedTime.STANDARD_THRESHOLD_M));
    }

    private ScreenReport report(
            Question question, Assumptions base, RunSettings settings, Screened screened, List<Outcome> asItStands) {
        ScreenInfo info = new ScreenInfo(
                question.fileName(),
                question.study().title(),
                question.read().sha256Hex(),
                question.layout().name(),
                Optional.ofNullable(against),
                settings,
                trajectories,
                ElevatedTime.STANDARD_THRESHOLD_M,
                Version.current(),
                System.getProperty("java.version"),
                UsedParameters.of(question, base, ElevatedTime.STANDARD_THRESHOLD_M),
                question.read().notes());
        List<Movers> answers = Stream.of(ScreenedAnswer.values())
                .map(answer -> Movers.of(
                        answer, screened, answer.byReplication(asItStands, ElevatedTime.STANDARD_THRESHOLD_M)))
                .toList();
        return new ScreenReport(
                info,
                answers,
                screened.factors().size(),
                screened.trajectories(),
                screened.evaluations(),
                screened.redrawn());
    }
}
