package limbway.reports.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.Callable;
import java.util.stream.Stream;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

import limbway.reports.data.Json;
import limbway.reports.data.RunInfo;
import limbway.reports.measure.Audit;
import limbway.reports.measure.Measures;
import limbway.reports.measure.RouteCards;
import limbway.reports.page.Report;
import limbway.reports.words.Cautions;

/** Lets the group live in a layout for some days, many times over, and writes the report. */
@Command(
        name = "run",
        description = {
            "Lets the group live in one layout for some days, many times over, and writes a report.",
            "The report says how much of the travel stays off the ground, where the ground wins and why, and shows one "
                    + "repetition move by move. The other layouts of the file are run too, under the same chance, for "
                    + "comparison.",
            "Each layout is run once more with needs and energy alone, so that it shows what rests on the worth of places.",
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
            "  limbway run yard.yaml --worth off --warm-up 0",
            "",
            "Exit code: 0 done; 2 the input is wrong; 3 it could not be done, with what was saved.",
            "",
            Cautions.IN_SHORT
        })
final class RunCommand implements Callable<Integer> {

    @Mixin
    private CommonOptions options;

    @Mixin
    private RunOptions run;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Refusal, NotDone {
        Question question = Question.of(options);
        Path folder = OutFolder.prepare(run.out);
        Instant started = Instant.now();
        PrintWriter err = spec.commandLine().getErr();
        try (Interruption interruption = Interruption.watch(err)) {
            Living.Lived lived = Living.run(question, run, err, interruption);
            Report report = report(question, lived);
            try {
                ReportFiles.write(
                        folder, report, started, Instant.now(), run.settings().threads());
            } catch (IOException e) {
                throw OutFolder.notWritten(folder, e, saved(folder));
            }
            if (options.json != null) {
                OutFolder.write(options.json, Json.text(RunAnswer.of(report)));
            }
            RunLines.print(spec.commandLine().getOut(), report);
            spec.commandLine().getOut().println("report: " + folder.resolve("report.html"));
            return end(folder, lived, err);
        }
    }

    private Report report(Question question, Living.Lived lived) {
        List<Measures> measures = lived.outcomes().stream()
                .map(outcome -> Measures.of(outcome, run.thresholdM))
                .toList();
        List<Measures> others = measures.subList(1, measures.size());
        RunInfo info = new RunInfo(
                question.fileName(),
                question.study().title(),
                question.read().sha256Hex(),
                question.layout().name(),
                others.stream().map(Measures::layout).toList(),
                run.settings(),
                lived.outcomes().get(0).journals().size(),
                run.thresholdM,
                Version.current(),
                System.getProperty("java.version"),
                run.hasWorth(),
                UsedParameters.of(question, run.of(question.assumptions()), run.thresholdM),
                question.read().notes());
        return new Report(
                info,
                measures.get(0),
                others,
                lived.alone(),
                lived.leftOut(),
                Audit.of(lived.outcomes().get(0).habitat()),
                RouteCards.of(lived.outcomes().get(0)));
    }

    private static int end(Path folder, Living.Lived lived, PrintWriter err) {
        if (lived.complete()) {
            return ExitCode.DONE;
        }
        err.println("limbway: interrupted");
        err.println("  saved    a report in " + folder + ", which rests on " + lived.told());
        err.flush();
        return ExitCode.NOT_DONE;
    }

    private static String saved(Path folder) {
        List<String> names = Stream.of("report.html", "data/datapackage.json", "run.json", "charts")
                .filter(name -> Files.exists(folder.resolve(name)))
                .toList();
        return names.isEmpty() ? "nothing that can be used" : "in " + folder + ": " + String.join(", ", names);
    }
}
