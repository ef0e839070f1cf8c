package limbway.reports.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

import limbway.reports.data.FileNotebook;
import limbway.reports.data.Json;
import limbway.reports.page.PlaceReport;
import limbway.reports.words.Cautions;
import limbway.sim.experiment.trial.Notebook;

/** Tells where feeders, drinkers, nests or platforms should be. */
@Command(
        name = "place",
        description = {
            "Tells where feeders, drinkers, nests or platforms should be, and how sure that is.",
            "Judges all combinations of candidates by expected travel, lets the group live in the best of them under the same "
                    + "chance until one is selected with the stated confidence, and tries that one again under fresh chance "
                    + "beside the layout as it stands.",
            ""
        },
        synopsisHeading = "Use: ",
        customSynopsis = "limbway place SCENARIO [options]",
        sortOptions = false,
        optionListHeading = "%nOptions:%n",
        footerHeading = "%nExamples:%n",
        footer = {
            "  limbway place yard.yaml --out yard-place",
            "  limbway place yard.yaml --move hatch --keeper-reach 2.5",
            "  limbway place yard.yaml --add 1 --kind platform --spacing 0.5",
            "  limbway place yard.yaml --simulate 20 --confidence 99 --indifference 1 --budget 2000",
            "",
            "With --out, what was lived in is kept in DIR/notebook.tsv: the same command again goes on from there.",
            "Exit code: 0 done; 2 the input is wrong; 3 it could not be done, with what was saved.",
            "",
            Cautions.IN_SHORT
        })
final class PlaceCommand implements Callable<Integer> {

    @Mixin
    private CommonOptions options;

    @Mixin
    private PlaceOptions places;

    @Mixin
    private PlaceEffort effort;

    @Option(names = "--out", paramLabel = "DIR", description = "Also write a page with a picture and tables into DIR.")
    private Path out;

    @Mixin
    private StartOptions start;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Refusal, NotDone {
        Question question = Question.of(options);
        PlaceWish wish = PlaceWish.of(question, places);
        Path folder = out == null ? null : OutFolder.prepare(out);
        PlaceWork work = new PlaceWork(question, wish, effort, effort.settings(start));
        try (Interruption interruption = Interruption.watch(spec.commandLine().getErr())) {
            if (folder == null) {
                return answer(work, Notebook.none(), null, interruption);
            }
            try (FileNotebook notebook = FileNotebook.open(folder.resolve("notebook.tsv"), work.question())) {
                return answer(work, notebook, folder, interruption);
            }
        } catch (UncheckedIOException e) {
            throw OutFolder.notWritten(folder, e.getCause(), "what was noted before");
        } catch (IOException e) {
            throw OutFolder.notWritten(folder, e, "nothing");
        }
    }

    private int answer(PlaceWork work, Notebook notebook, Path folder, Interruption interruption)
            throws Refusal, NotDone {
        Optional<PlaceReport> found;
        StatusLine line = new StatusLine(spec.commandLine().getErr(), System::nanoTime, Terminal.isWatched());
        try {
            found = work.report(notebook, new PlaceProgressLine(line, work.atMost(), interruption::isWanted));
        } catch (IllegalArgumentException e) {
            throw Refusal.of("a layout cannot be lived in", e.getMessage(), "", "see limbway check");
        } finally {
            line.end();
        }
        if (found.isEmpty()) {
            throw new NotDone("limbway: interrupted\n  saved    "
                    + (folder == null
                            ? "nothing; with --out DIR the same command could go on later"
                            : "what was lived in, in " + folder.resolve("notebook.tsv")
                                    + "; the same command goes on from there")
                    + "\n");
        }
        PlaceReport report = found.get();
        PlaceLines.of(report).forEach(spec.commandLine().getOut()::println);
        if (options.json != null) {
            OutFolder.write(options.json, Json.text(PlaceAnswer.of(report)));
        }
        if (folder != null) {
            try {
                PlaceFiles.write(folder, report);
            } catch (IOException e) {
                throw OutFolder.notWritten(folder, e, "the answer above");
            }
            spec.commandLine().getOut().println("page: " + folder.resolve("place.html"));
        }
        spec.commandLine().getOut().flush();
        return ExitCode.DONE;
    }
}
