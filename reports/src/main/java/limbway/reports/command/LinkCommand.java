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

import limbway.model.link.Candidates;
import limbway.model.link.LinkLimits;
import limbway.reports.data.FileNotebook;
import limbway.reports.data.Json;
import limbway.reports.data.LinkInfo;
import limbway.reports.data.NotebookQuestion;
import limbway.reports.measure.ElevatedTime;
import limbway.reports.measure.GroundTrips;
import limbway.reports.measure.criterion.Criteria;
import limbway.reports.page.LinkReport;
import limbway.reports.page.LinkText;
import limbway.reports.words.Cautions;
import limbway.reports.words.Figures;
import limbway.sim.experiment.RunSettings;
import limbway.sim.experiment.link.LinkFindings;
import limbway.sim.experiment.link.LinkQuestion;
import limbway.sim.experiment.link.LinkSearch;
import limbway.sim.experiment.trial.Notebook;

/** Tells which ropes or poles to add, and which supports hurt most if they fail. */
@Command(
        name = "link",
        description = {
            "Tells which ropes or poles to add, and which supports hurt most if they fail.",
            "Looks at every pair of places to which something can be tied, prices each link within the limits for the trips of a "
                    + "day, and lets the group live with the best of them under the same chance as without; what gains is checked once "
                    + "more under fresh chance.",
            ""
        },
        synopsisHeading = "Use: ",
        customSynopsis = "limbway link SCENARIO [options]",
        sortOptions = false,
        optionListHeading = "%nOptions:%n",
        footerHeading = "%nExamples:%n",
        footer = {
            "  limbway link yard.yaml --out yard-links",
            "  limbway link yard.yaml --variant \"one link missing\" --length 8",
            "  limbway link yard.yaml --links 2 --kind pole --slope 15",
            "  limbway link yard.yaml --fragile-only",
            "",
            "With --out, what was found is kept in DIR/notebook.tsv; the same command again goes on where it was stopped.",
            "Exit code: 0 done; 2 the input is wrong; 3 it could not be done, with what was saved.",
            "",
            "Ropes entangle; anchors and loads are for licensed people to judge.",
            Cautions.IN_SHORT
        })
final class LinkCommand implements Callable<Integer> {

    private static final int DEMAND_REPLICATIONS = 4;

    /** More would take hours; the example yards have about a hundred. Assumption. */
    private static final int MOST_PLACES = 1_000;

    /** More would take hours; the example yards have some hundreds. Assumption. */
    private static final int MOST_LINKS = 5_000;

    @Mixin
    private CommonOptions options;

    @Option(names = "--out", paramLabel = "DIR", description = "Also write a page with a plan and tables into DIR.")
    private Path out;

    @Mixin
    private LinkOptions limits;

    @Option(
            names = "--links",
            paramLabel = "N",
            defaultValue = "1",
            converter = Few.class,
            description = "The most links in one proposal, 1 to 3; without it 1.")
    private int links;

    @Option(
            names = "--check",
            paramLabel = "N",
            defaultValue = "5",
            converter = WholeNumber.class,
            description = "How many proposals are lived with; without it 5. The others are told as expected.")
    private int check;

    @Option(names = "--fragile-only", description = "Only tell what hurts most if it fails.")
    private boolean fragileOnly;

    @Option(
            names = "--falls",
            paramLabel = "N",
            defaultValue = "3",
            converter = WholeNumber.class,
            description = "How many of the worst failures are lived with; without it 3.")
    private int falls;

    @Option(
            names = "--replications",
            paramLabel = "N",
            defaultValue = "10",
            converter = WholeNumber.class,
            description = "How many times the days are lived with each; without it 10. An interval needs two.")
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

    /** Reads how many links go together. */
    static final class Few extends NumberInRange<Integer> {

        Few() {
            super("1, 2 or 3");
        }

        @Override
        Integer fitting(double number) {
            return number == 1 || number == 2 || number == 3 ? (Integer) (int) number : null;
        }
    }

    @Override
    public Integer call() throws Refusal, NotDone {
        LinkLimits may = limits.limits();
        if (replications < 2) {
            throw Refusal.of(
                    "one repetition gives no interval, so nothing could be said of any link",
                    "--replications " + replications,
                    "2 or more; 10 tell a difference of a few points",
                    "raise --replications");
        }
        if (replications > LinkSearch.MOST_REPLICATIONS) {
            throw Refusal.of(
                    "with so many repetitions the check under fresh chance would meet the chance of the search",
                    "--replications " + replications,
                    "2 to " + LinkSearch.MOST_REPLICATIONS,
                    "lower --replications");
        }
        try (Interruption interruption = Interruption.watch(spec.commandLine().getErr())) {
            Question question = Question.of(options);
            Candidates candidates = candidates(question, may);
            LinkInfo info = info(question, start.settings(replications, days), may);
            return out == null
                    ? answer(question, info, candidates, Optional.empty(), Notebook.none(), interruption)
                    : answerIn(OutFolder.prepare(out), question, info, candidates, interruption);
        }
    }

    private int answerIn(
            Path folder, Question question, LinkInfo info, Candidates candidates, Interruption interruption)
            throws Refusal, NotDone {
        try (FileNotebook notebook = FileNotebook.open(folder.resolve("notebook.tsv"), asked(info))) {
            return answer(question, info, candidates, Optional.of(folder), notebook, interruption);
        } catch (IOException e) {
            throw OutFolder.notWritten(folder, e, "what was noted before");
        } catch (UncheckedIOException e) {
            throw OutFolder.notWritten(folder, e.getCause(), "what was noted before");
        }
    }

    private Candidates candidates(Question question, LinkLimits may) throws Refusal {
        if (fragileOnly) {
            return Candidates.none();
        }
        int places = Candidates.places(
                question.layout().enclosure(), question.study().bodies(), may);
        if (places > MOST_PLACES) {
            throw Refusal.of(
                    "there are too many places to which a link could be tied",
                    Figures.count(places) + " places",
                    "at most " + Figures.count(MOST_PLACES) + ", because every pair of them is looked at",
                    "raise --spacing, or write down the part of the enclosure that is in question");
        }
        Candidates found =
                Candidates.of(question.layout().enclosure(), question.study().bodies(), may);
        if (found.all().size() > MOST_LINKS) {
            throw Refusal.of(
                    "there are too many links within the limits",
                    Figures.count(found.all().size()) + " links",
                    "at most " + Figures.count(MOST_LINKS) + ", because each is priced for all trips",
                    "lower --length, or raise --spacing");
        }
        if (!found.all().isEmpty()) {
            return found;
        }
        if (found.ties() < 2) {
            throw Refusal.of(
                    "there is nothing to tie a link to",
                    found.ties() + " places",
                    "two or more on poles, trunks, beams or decks that bear the heaviest animal",
                    "build a mast, or allow ropes and branches with --on-ropes");
        }
        if (found.highestTieM() < may.clearanceM()) {
            throw Refusal.of(
                    "the clearance lies above everything that a link could be tied to",
                    "--clearance " + may.clearanceM() + "; the highest place is at "
                            + Math.floor(10 * found.highestTieM()) / 10 + " m",
                    "a clearance below that",
                    "lower --clearance, or build higher");
        }
        throw Refusal.of(
                "no link keeps within the limits",
                found.pairs() + " pairs of places; taken away: " + LinkText.refused(found),
                "at least one pair that breaks none",
                "loosen the limit that took most: --length, --slope, --clearance or --spacing");
    }

    private LinkInfo info(Question question, RunSettings settings, LinkLimits may) {
        return new LinkInfo(
                question.fileName(),
                question.study().title(),
                question.read().sha256Hex(),
                question.layout().name(),
                settings,
                DEMAND_REPLICATIONS,
                may,
                fragileOnly ? 0 : links,
                Version.current(),
                System.getProperty("java.version"),
                UsedParameters.of(question, question.assumptions(), ElevatedTime.STANDARD_THRESHOLD_M),
                question.read().notes());
    }

    /** What decides about each thing that is noted; how many are noted does not matter. */
    private static String asked(LinkInfo info) {
        return new NotebookQuestion("; ", " ")
                .says("limbway link", info.limbwayVersion(), info.sha256Hex(), info.layout())
                .lives(info.settings())
                .has("trips from", info.demandReplications())
                .line();
    }

    private int answer(
            Question question,
            LinkInfo info,
            Candidates candidates,
            Optional<Path> folder,
            Notebook notebook,
            Interruption interruption)
            throws Refusal, NotDone {
        LinkQuestion asked = new LinkQuestion(
                question.layout(),
                question::habitat,
                question.assumptions().day(),
                info.settings(),
                info.demandReplications(),
                info.limits(),
                info.links(),
                check,
                falls,
                new Criteria().find(Criteria.OFF_GROUND).orElseThrow(),
                new GroundTrips());
        StatusLine line = new StatusLine(spec.commandLine().getErr(), System::nanoTime, Terminal.isWatched());
        Optional<LinkFindings> found;
        try {
            found = LinkSearch.run(asked, candidates, notebook, new LinkProgressLine(line, interruption::isWanted));
        } catch (IllegalArgumentException e) {
            throw Refusal.of("the layout cannot be lived in", e.getMessage(), "", "see limbway check");
        } finally {
            line.end();
        }
        if (found.isEmpty()) {
            throw new NotDone("limbway: interrupted\n  saved    "
                    + folder.map(dir -> "what was finished, in " + dir.resolve("notebook.tsv")
                                    + "; the same command again goes on from there")
                            .orElse("nothing; with --out the same command can go on where it was stopped")
                    + "\n");
        }
        LinkReport report = new LinkReport(info, question.layout().enclosure(), found.get());
        LinkLines.of(report).forEach(spec.commandLine().getOut()::println);
        if (options.json != null) {
            OutFolder.write(options.json, Json.text(LinkAnswer.of(report)));
        }
        if (folder.isPresent()) {
            try {
                LinkFiles.write(folder.get(), report);
            } catch (IOException e) {
                throw OutFolder.notWritten(folder.get(), e, "the answer above");
            }
            spec.commandLine().getOut().println("page: " + folder.get().resolve("link.html"));
        }
        spec.commandLine().getOut().flush();
        return ExitCode.DONE;
    }
}
