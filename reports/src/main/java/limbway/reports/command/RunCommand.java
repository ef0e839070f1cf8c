package limbway.reports.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;

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
import limbway.reports.words.Cautions;
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
            "Lets the group live in one layout for some days, many times over, and writes a report.",
            "The report says how much of the travel stays off the ground, where the ground wins and why. The other "
                    + "layouts of the file are run too, under the same chance, for comparison.",
            ""
        },
        synopsisHeading = "Use: ",
        customSynopsis = "limbway run SCENARIO [options]",
        sortOptions = false,
        optionListHeading = "%nOptions:%n",
        footerHeading = "%nExamples:%n",
        footer = {
            "  limbway run yard.yaml --out yard-report",
            "  limbway run yard.yaml --variant \"high and linked\" --replications 50 --days 7 --date 2026-06-21",
            "",
            "Exit code: 0 done; 2 the input is wrong; 3 it could not be done, with what was saved.",
            "",
            Cautions.IN_SHORT
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
        try (Interruption interruption = Interruption.watch(spec.commandLine().getErr())) {
            List<Variant> layouts = layouts(question);
            List<Outcome> outcomes = run(question, layouts, settings, interruption);
            Report report = report(question, layouts, settings, outcomes);
            try {
                ReportFiles.write(folder, report, started, Instant.now(), usedThreads);
            } catch (IOException e) {
                throw OutFolder.notWritten(folder, e, saved(folder));
            }
            if (options.json != null) {
                OutFolder.write(options.json, Json.text(RunAnswer.of(report)));
            }
            return end(folder, report, outcomes, layouts.size());
        }
    }

    /** The layout in question and then, unless it is to be alone, the others. */
    private List<Variant> layouts(Question question) {
        List<Variant> layouts = new ArrayList<>(List.of(question.layout()));
        if (!alone) {
            question.study().layouts().stream()
                    .filter(layout -> !layout.equals(question.layout()))
                    .forEach(layouts::add);
        }
        return layouts;
    }

    /** Outcomes of the layouts in their order; ends early if that is wanted. */
    private List<Outcome> run(Question question, List<Variant> layouts, RunSettings settings, Interruption interruption)
            throws Refusal, NotDone {
        ProgressLine progress = new ProgressLine(
                spec.commandLine().getErr(),
                interruption::isWanted,
                System::nanoTime,
                Terminal.isWatched(),
                layouts.size(),
                settings.replications());
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
        progress.end();
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

    private Report report(Question question, List<Variant> layouts, RunSettings settings, List<Outcome> outcomes) {
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
                info,
                measures.get(0),
                others,
                layouts.subList(outcomes.size(), layouts.size()).stream()
                        .map(Variant::name)
                        .toList(),
                Audit.of(outcomes.get(0).habitat()));
    }

    private int end(Path folder, Report report, List<Outcome> outcomes, int layouts) {
        PrintWriter answer = spec.commandLine().getOut();
        Measures measures = report.measures();
        answer.println(measures.layout() + ": "
                + measures.offGround()
                        .overall()
                        .by(Aspect.DISTANCE)
                        .map(share -> IntervalText.percent(share.mean(), share.lo(), share.hi())
                                + " of the distance travelled is off the ground")
                        .orElse("nobody travelled"));
        if (report.audit().mustMend()) {
            answer.println("but the animals cannot have all they need in this layout: see limbway check");
        }
        ElevatedTime elevated = measures.elevated();
        elevated.share()
                .ifPresent(share -> answer.println(IntervalText.percent(share.mean(), share.lo(), share.hi())
                        + " of waking time is spent more than " + Figures.metres(elevated.thresholdM())
                        + " up (another measure; zoo studies report this one)"));
        answer.println("report: " + folder.resolve("report.html"));
        if (outcomes.size() == layouts && outcomes.stream().allMatch(Outcome::complete)) {
            return ExitCode.DONE;
        }
        PrintWriter err = spec.commandLine().getErr();
        err.println("limbway: interrupted");
        err.println("  saved    a report in " + folder + ", which rests on " + lived(outcomes, layouts));
        err.flush();
        return ExitCode.NOT_DONE;
    }

    /** What was finished before the end, for example {@code 3 of 20 repetitions of as drawn; 1 layout was not begun}. */
    private String lived(List<Outcome> outcomes, int layouts) {
        List<String> parts = new ArrayList<>();
        for (Outcome outcome : outcomes) {
            parts.add(outcome.journals().size() + " of " + replications + " repetitions of "
                    + outcome.habitat().layout().name());
        }
        int missing = layouts - outcomes.size();
        return String.join(", ", parts)
                + (missing == 0
                        ? ""
                        : missing == 1 ? "; 1 layout is left out" : "; " + missing + " layouts are left out");
    }

    private static String saved(Path folder) {
        List<String> names = Stream.of("report.html", "data/datapackage.json", "run.json", "charts")
                .filter(name -> Files.exists(folder.resolve(name)))
                .toList();
        return names.isEmpty() ? "nothing that can be used" : "in " + folder + ": " + String.join(", ", names);
    }
}
