package limbway.reports.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.function.BooleanSupplier;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

import limbway.reports.data.FileNotebook;
import limbway.reports.data.Json;
import limbway.reports.page.CompareReport;
import limbway.reports.page.CompareText;
import limbway.reports.words.Cautions;
import limbway.reports.words.Figures;
import limbway.sim.experiment.trial.Notebook;

/** Tells which layout is better, in what, and how sure that is. */
@Command(
        name = "compare",
        description = {
            "Tells which layout is better, in what, and how sure that is.",
            "Lets the group live in all layouts of the file under the same chance, again and again, until the differences are "
                    + "known well enough or the repetitions allowed are spent, and says which. Differences are taken "
                    + "repetition by repetition and corrected for the number of pairs of layouts.",
            "The travel off the ground is told once more with needs and energy alone, so that it shows what rests on the worth "
                    + "of places.",
            ""
        },
        synopsisHeading = "Use: ",
        customSynopsis = "limbway compare SCENARIO [options]",
        sortOptions = false,
        optionListHeading = "%nOptions:%n",
        footerHeading = "%nExamples:%n",
        footer = {
            "  limbway compare yard.yaml --out yard-compare",
            "  limbway compare yard.yaml --variants \"as drawn,high and linked\" --precision 1 --replications 400",
            "  limbway compare yard.yaml --worlds 200 --out yard-worlds",
            "  limbway compare yard.yaml --until offground_distance,waiting_at_food_min --relative 20",
            "",
            "Exit code: 0 done; 2 the input is wrong; 3 it could not be done, with what was saved.",
            "",
            Cautions.IN_SHORT
        })
final class CompareCommand implements Callable<Integer> {

    private static final String NOTEBOOK = "notebook.tsv";

    @Mixin
    private ScenarioOptions options;

    @Mixin
    private CompareOptions compare;

    @Mixin
    private WorldsOptions worlds;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Refusal, NotDone {
        try (Interruption interruption = Interruption.watch(spec.commandLine().getErr())) {
            Question question = Question.of(options);
            Comparing comparing = Comparing.of(question, compare, worlds);
            Path folder = compare.out == null ? null : OutFolder.prepare(compare.out);
            StatusLine line = new StatusLine(spec.commandLine().getErr(), System::nanoTime, Terminal.isWatched());
            Optional<CompareReport> report = compared(comparing, folder, line, interruption::isWanted);
            line.end();
            if (report.isEmpty()) {
                // said here, because the process may end as soon as the interruption is closed
                PrintWriter err = spec.commandLine().getErr();
                err.println("limbway: interrupted before the first look at the differences");
                err.println("  saved    " + (folder == null ? "nothing" : saved(folder)));
                err.flush();
                return ExitCode.NOT_DONE;
            }
            return tell(comparing, report.get(), folder);
        }
    }

    private Optional<CompareReport> compared(Comparing comparing, Path folder, StatusLine line, BooleanSupplier stop)
            throws Refusal, NotDone {
        if (folder == null) {
            return comparing.run(Notebook.none(), line, stop);
        }
        try (FileNotebook notebook = FileNotebook.open(folder.resolve(NOTEBOOK), comparing.notebookQuestion())) {
            if (notebook.found() > 0) {
                spec.commandLine()
                        .getErr()
                        .println("limbway: going on from " + notebook.found() + " repetitions in "
                                + folder.resolve(NOTEBOOK));
            }
            return comparing.run(notebook, line, stop);
        } catch (UncheckedIOException e) {
            throw OutFolder.notWritten(folder.resolve(NOTEBOOK), e.getCause(), "what it held before");
        } catch (IOException e) {
            throw OutFolder.notWritten(folder.resolve(NOTEBOOK), e, "nothing");
        }
    }

    private int tell(Comparing comparing, CompareReport report, Path folder) throws NotDone {
        PrintWriter out = spec.commandLine().getOut();
        CompareText.sentences(report).forEach(out::println);
        if (options.json != null) {
            OutFolder.write(options.json, Json.text(CompareAnswer.of(report)));
        }
        if (folder != null) {
            try {
                CompareFiles.write(folder, report);
            } catch (IOException e) {
                throw OutFolder.notWritten(folder, e, "the answer above, and " + saved(folder));
            }
            out.println("page: " + folder.resolve("compare.html"));
        }
        out.flush();
        if (comparing.isWhole(report)) {
            return ExitCode.DONE;
        }
        PrintWriter err = spec.commandLine().getErr();
        err.println("limbway: interrupted");
        err.println("  saved    the answer above, which rests on "
                + Figures.count(report.compared().replications()) + " repetitions of each layout"
                + comparing.leftOut(report)
                + (folder == null ? "" : "; " + saved(folder)));
        err.flush();
        return ExitCode.NOT_DONE;
    }

    private static String saved(Path folder) {
        return "every finished repetition, in " + folder.resolve(NOTEBOOK) + "; the same command goes on from there";
    }
}
