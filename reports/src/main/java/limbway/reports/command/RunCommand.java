package limbway.reports.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

import limbway.model.study.Variant;
import limbway.reports.data.Json;
import limbway.reports.data.RunInfo;
import limbway.reports.measure.Aspect;
import limbway.reports.measure.Audit;
import limbway.reports.measure.ElevatedTime;
import limbway.reports.measure.Measures;
import limbway.reports.page.Report;
import limbway.reports.words.Figures;
import limbway.reports.words.IntervalText;
import limbway.sim.animal.DaySettings;
import limbway.sim.experiment.Experiment;
import limbway.sim.experiment.Outcome;
import limbway.sim.experiment.RunSettings;

/** Lets the group live in a layout for some days, many times over, and writes the report. */
@Command(
        name = "run",
        description = {
            "Lets the group live in one layout for some days, many times over, and writes a report: how much of its",
            "travel stays off the ground, where the ground wins and why. The other layouts of the file are run too,",
            "under the same chance, for comparison.",
            ""
        },
        synopsisHeading = "Use: ",
        sortOptions = false,
        optionListHeading = "%nOptions:%n",
        footerHeading = "%nExamples:%n",
        footer = {
            "  limbway run yard.yaml --out yard-report",
            "  limbway run yard.yaml --variant \"high and linked\" --replications 50 --days 7 --date 2026-06-21",
            "",
            "Exit code: 0 done; 2 the input is wrong; 3 it could not be done, with what was saved.",
            "",
            HelpText.CAUTIONS_1,
            HelpText.CAUTIONS_2,
            HelpText.CAUTIONS_3
        })
final class RunCommand implements Callable<Integer> {

    @Mixin
    private CommonOptions options;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            defaultValue = "out",
            description = "Folder to write into; without it a folder called out.")
    private Path out;

    @Option(
            names = "--seed",
            paramLabel = "N",
            defaultValue = "1",
            converter = WholeNumber.class,
            description = "Start of all chance, 1 to 2147483647; without it 1.")
    private int seed;

    @Option(
            names = "--replications",
            paramLabel = "N",
            defaultValue = "20",
            converter = WholeNumber.class,
            description = "How many times the days are lived; without it 20.")
    private int replications;

    @Option(
            names = "--days",
            paramLabel = "N",
            defaultValue = "5",
            converter = WholeNumber.class,
            description = "Days in each repetition; without it 5.")
    private int days;

    @Option(
            names = "--date",
            paramLabel = "YYYY-MM-DD",
            defaultValue = "2026-03-21",
            converter = CalendarDate.class,
            description = "Date of the first day; without it 2026-03-21.")
    private LocalDate date;

    @Option(
            names = "--threads",
            paramLabel = "N",
            converter = WholeNumber.class,
            description = "Threads to use; without it as many as the machine has. The result is the same.")
    private Integer threads;

    @Option(
            names = "--threshold",
            paramLabel = "METRES",
            defaultValue = "1.0",
            converter = Metres.class,
            description = "Height above which an animal counts as up high; without it 1.0.")
    private double thresholdM;

    @Option(names = "--alone", description = "Leave the other layouts of the file out.")
    private boolean alone;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Refusal, NotDone {
        Question question = Question.of(options);
        Path folder = OutFolder.prepare(out);
        Instant started = Instant.now();
        int usedThreads = threads == null ? Runtime.getRuntime().availableProcessors() : threads;
        RunSettings settings = new RunSettings(seed, replications, days, date, usedThreads);
        try (Interruption interruption = Interruption.watch()) {
            List<Outcome> outcomes = run(question, settings, interruption);
            Report report = report(question, settings, outcomes);
            try {
                ReportFiles.write(folder, report, started, Instant.now(), usedThreads);
            } catch (IOException e) {
                throw OutFolder.notWritten(folder, e, "the files of the report that were written before it");
            }
            if (options.json != null) {
                OutFolder.write(options.json, Json.text(RunAnswer.of(report)));
            }
            return end(folder, report, settings, outcomes);
        }
    }

    /** Outcomes of the layout in question and then of the others; ends early if that is wanted. */
    private List<Outcome> run(Question question, RunSettings settings, Interruption interruption)
            throws Refusal, NotDone {
        List<Variant> layouts = new ArrayList<>(List.of(question.layout()));
        if (!alone) {
            question.study().layouts().stream()
                    .filter(layout -> !layout.equals(question.layout()))
                    .forEach(layouts::add);
        }
        ProgressLine progress =
                new ProgressLine(spec.commandLine().getErr(), interruption::isWanted, System::nanoTime, layouts.size());
        List<Outcome> outcomes = new ArrayList<>();
        for (Variant layout : layouts) {
            progress.nextLayout(layout.name());
            Outcome outcome = lived(question, layout, settings, progress);
            if (outcome.journals().isEmpty()) {
                break;
            }
            outcomes.add(outcome);
            if (!outcome.complete()) {
                break;
            }
        }
        if (outcomes.isEmpty()) {
            throw new NotDone("limbway: interrupted before the first repetition was finished\n  saved    nothing\n");
        }
        return outcomes;
    }

    private static Outcome lived(Question question, Variant layout, RunSettings settings, ProgressLine progress)
            throws Refusal {
        try {
            return Experiment.run(question.habitat(layout), settings, DaySettings.standard(), progress);
        } catch (IllegalArgumentException e) {
            throw Refusal.of(
                    "the layout " + layout.name() + " cannot be lived in", e.getMessage(), "", "see limbway check");
        }
    }

    private Report report(Question question, RunSettings settings, List<Outcome> outcomes) {
        List<Measures> measures = outcomes.stream()
                .map(outcome -> Measures.of(outcome, thresholdM))
                .toList();
        List<Measures> others = measures.subList(1, measures.size());
        RunInfo info = new RunInfo(
                question.fileName(),
                question.study().title(),
                question.read().sha256Hex(),
                question.layout().name(),
                others.stream().map(Measures::layout).toList(),
                settings,
                outcomes.get(0).journals().size(),
                thresholdM,
                Version.current(),
                System.getProperty("java.version"),
                UsedParameters.of(question, thresholdM),
                question.read().notes());
        return new Report(
                info, measures.get(0), others, Audit.of(outcomes.get(0).habitat()));
    }

    private int end(Path folder, Report report, RunSettings settings, List<Outcome> outcomes) {
        PrintWriter answer = spec.commandLine().getOut();
        Measures measures = report.measures();
        answer.println(measures.layout() + ": "
                + measures.offGround()
                        .overall()
                        .by(Aspect.DISTANCE)
                        .map(share -> IntervalText.percent(share.mean(), share.lo(), share.hi())
                                + " of the distance travelled is off the ground")
                        .orElse("nobody travelled"));
        ElevatedTime elevated = measures.elevated();
        elevated.share()
                .ifPresent(share -> answer.println(IntervalText.percent(share.mean(), share.lo(), share.hi())
                        + " of waking time is spent more than " + Figures.metres(elevated.thresholdM())
                        + " up, which is another number"));
        answer.println("report: " + folder.resolve("report.html"));
        Outcome last = outcomes.get(outcomes.size() - 1);
        int expected = alone ? 1 : 1 + report.info().otherLayouts().size();
        if (last.complete() && outcomes.size() == expected) {
            return ExitCode.DONE;
        }
        PrintWriter err = spec.commandLine().getErr();
        err.println("limbway: interrupted");
        err.println("  saved    a report of " + report.info().finishedReplications() + " of " + settings.replications()
                + " repetitions, in " + folder);
        err.flush();
        return ExitCode.NOT_DONE;
    }
}
