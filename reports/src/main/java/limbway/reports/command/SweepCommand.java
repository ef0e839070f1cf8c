package limbway.reports.command;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.stream.Stream;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

import limbway.model.parameter.Assumable;
import limbway.model.study.Study;
import limbway.reports.data.DataFolder;
import limbway.reports.data.FileNotebook;
import limbway.reports.data.Json;
import limbway.reports.data.SweepInfo;
import limbway.reports.data.SweepTables;
import limbway.reports.data.WholeFile;
import limbway.reports.measure.ElevatedTime;
import limbway.reports.measure.criterion.Criteria;
import limbway.reports.measure.criterion.DesignCriterion;
import limbway.reports.measure.criterion.Givens;
import limbway.reports.measure.criterion.Wish;
import limbway.reports.measure.sweep.Swept;
import limbway.reports.words.Cautions;
import limbway.scenarios.Reading;
import limbway.scenarios.Sweep;
import limbway.scenarios.SweepFactor;
import limbway.scenarios.SweepPlan;
import limbway.scenarios.SweepPoint;
import limbway.scenarios.SweepReading;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.ProblemReport;
import limbway.sim.experiment.Assumptions;
import limbway.sim.experiment.RunSettings;
import limbway.sim.experiment.Situations;
import limbway.sim.experiment.statistics.LatinHypercube;
import limbway.sim.experiment.trial.Notebook;

/** Tries values of a scenario. */
@Command(
        name = "sweep",
        description = {
            "Tries values that the scenario lists under the key sweep.",
            "Lets the group live in the layouts at every point under the same chance, measures everything that layouts are "
                    + "judged by, and tells the best point and what each value does.",
            ""
        },
        synopsisHeading = "Use: ",
        customSynopsis = "limbway sweep SCENARIO [options]",
        sortOptions = false,
        optionListHeading = "%nOptions:%n",
        footerHeading = "%nExamples:%n",
        footer = {
            "  limbway sweep sweep-yard.yaml --out yard-sweep",
            "  limbway sweep sweep-yard.yaml --rank waiting_at_food_min --replications 10",
            "",
            "With --out, work that was interrupted is kept: the same command again goes on from there.",
            "",
            "Exit code: 0 done; 2 the input is wrong; 3 it could not be done, with what was saved.",
            "",
            Cautions.IN_SHORT
        })
final class SweepCommand implements Callable<Integer> {

    @Mixin
    private CommonOptions options;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            description = "Also write tables into DIR, and keep there what is finished.")
    private Path out;

    @Option(
            names = "--rank",
            paramLabel = "MEASURE",
            defaultValue = Criteria.OFF_GROUND,
            description = "The measure by which the best point is told; without it offground_distance.")
    private String rank;

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
        Criteria criteria = new Criteria();
        DesignCriterion rankedBy = ranked(criteria);
        Question question = Question.of(options);
        requireValue(question.study());
        Sweep sweep = sweep();
        List<String> layouts = options.variant == null ? sweep.plan().layouts() : List.of(options.variant);
        RunSettings settings = start.settings(replications, days);
        List<SweepPoint> points = points(sweep.plan(), settings.seed());
        check(sweep, points, layouts);
        List<String> idle = sweep.withoutEffect(layouts);
        SweepInfo info = new SweepInfo(
                question.fileName(),
                question.study().title(),
                question.read().sha256Hex(),
                sweep.plan().isFull(),
                layouts,
                settings,
                ElevatedTime.STANDARD_THRESHOLD_M,
                Version.current(),
                System.getProperty("java.version"),
                Stream.concat(question.read().notes().stream(), idle.stream()).toList());
        Path folder = out == null ? null : OutFolder.prepare(out);
        List<String> names = criteria.all().stream().map(DesignCriterion::name).toList();
        try (Interruption interruption = Interruption.watch(spec.commandLine().getErr());
                FileNotebook kept = folder == null ? null : FileNotebook.open(notebook(folder), info.question(names))) {
            StatusLine line = new StatusLine(spec.commandLine().getErr(), System::nanoTime, Terminal.isWatched());
            SweepRun run = new SweepRun(
                    sweep,
                    points,
                    layouts,
                    criteria.all(),
                    settings,
                    kept == null ? Notebook.none() : kept,
                    line,
                    interruption::isWanted);
            Optional<Swept> swept = run.run();
            if (swept.isEmpty()) {
                throw interrupted(run.done(), points.size() * layouts.size(), folder);
            }
            idle.forEach(sentence -> spec.commandLine().getOut().println("Note: " + sentence + "."));
            answer(info, swept.get(), rankedBy, folder);
            return ExitCode.DONE;
        } catch (IOException e) {
            throw OutFolder.notWritten(notebook(folder), e, "nothing");
        } catch (UncheckedIOException e) {
            throw OutFolder.notWritten(notebook(folder), e.getCause(), "what was noted before");
        }
    }

    private static Path notebook(Path folder) {
        return folder.resolve("notebook.tsv");
    }

    private DesignCriterion ranked(Criteria criteria) throws Refusal {
        List<String> known = criteria.all().stream()
                .filter(criterion -> criterion.wish() != Wish.NEITHER)
                .map(DesignCriterion::name)
                .toList();
        if (!known.contains(rank)) {
            throw Refusal.of(
                    "points cannot be ranked by this measure",
                    rank,
                    String.join(", ", known),
                    Refusal.guess(rank, known, "take a measure of which more or less is better"));
        }
        return criteria.find(rank).orElseThrow();
    }

    private void requireValue(Study study) throws Refusal {
        Optional<String> missing = Givens.missing(rank, study, study.layouts());
        if (missing.isPresent()) {
            throw Refusal.of(
                    "points cannot be ranked by a measure without a value",
                    "--rank " + rank + ", and " + missing.get(),
                    "measures that have a value",
                    "rank by another one, or say in the scenario what is missing");
        }
    }

    private Sweep sweep() throws Refusal {
        Assumable assumable = new Assumable(Assumptions.standard().parameters(), Situations.all());
        SweepReading reading = Sweep.read(options.scenario, assumable);
        if (reading instanceof SweepReading.Refused refused) {
            throw new Refusal(ProblemReport.text(refused.problems()));
        }
        return ((SweepReading.Read) reading).sweep();
    }

    private static List<SweepPoint> points(SweepPlan plan, int seed) {
        if (plan.isFull()) {
            return plan.combinations();
        }
        List<String> columns = plan.factors().stream().map(SweepFactor::name).toList();
        LatinHypercube spread = LatinHypercube.draw(seed, 1, columns, plan.count(), LatinHypercube.Within.RANDOM);
        List<SweepPoint> points = new ArrayList<>();
        for (int point = 0; point < plan.count(); point++) {
            List<Double> shares = new ArrayList<>();
            for (int column = 0; column < columns.size(); column++) {
                shares.add(spread.share(point, column));
            }
            points.add(plan.at(shares));
        }
        return points;
    }

    private static void check(Sweep sweep, List<SweepPoint> points, List<String> layouts) throws Refusal {
        List<Problem> problems = sweep.check(points, layouts);
        if (!problems.isEmpty()) {
            throw new Refusal(ProblemReport.text(problems));
        }
        if (sweep.plan().factors().stream().anyMatch(SweepFactor::isAssumed)) {
            for (SweepPoint point : points) {
                if (sweep.read(point, layouts) instanceof Reading.Read read) {
                    SweepRun.assumptions(point, read.study());
                }
            }
        }
    }

    private void answer(SweepInfo info, Swept swept, DesignCriterion rankedBy, Path folder) throws NotDone {
        SweepLines.of(info, swept, rankedBy).forEach(spec.commandLine().getOut()::println);
        String json = Json.text(SweepAnswer.of(info, swept, rankedBy));
        if (options.json != null) {
            OutFolder.write(options.json, json);
        }
        if (folder != null) {
            try {
                DataFolder.write(folder, info, SweepTables.of(swept));
                WholeFile.write(folder.resolve("sweep.json"), json);
            } catch (IOException e) {
                throw OutFolder.notWritten(folder, e, "the answer above");
            }
            spec.commandLine().getOut().println("tables: " + folder.resolve("data"));
        }
        spec.commandLine().getOut().flush();
    }

    private static NotDone interrupted(int done, int all, Path folder) {
        return new NotDone("limbway: interrupted after " + done + " of " + all + " layouts\n  saved    "
                + (folder == null
                        ? "nothing; with --out DIR it would have been kept\n"
                        : notebook(folder) + ": the same command again goes on from there\n"));
    }
}
