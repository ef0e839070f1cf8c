package limbway.reports.command;

import java.io.IOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Platform;
import limbway.model.heat.HeatSettings;
import limbway.model.shade.RoofAnswer;
import limbway.model.shade.RoofFamily;
import limbway.model.shade.RoofSearch;
import limbway.model.shade.ShadeAudit;
import limbway.model.shade.ShadeCalendar;
import limbway.model.shade.ShadeRule;
import limbway.model.shade.ShadeScene;
import limbway.model.shade.ShadeSettings;
import limbway.model.shade.ShadeYear;
import limbway.reports.data.Json;
import limbway.reports.data.ShadeInfo;
import limbway.reports.measure.ShadeMap;
import limbway.reports.measure.SupportHeat;
import limbway.reports.page.ShadeReport;
import limbway.reports.page.ShadeViews;
import limbway.reports.words.Cautions;
import limbway.scenarios.problem.Wording;

/** Looks at every day of a year whether enough rest platforms lie in shade. */
@Command(
        name = "shade",
        description = {
            "Looks at every day of a year whether enough rest platforms lie in shade at once.",
            "Common practice asks that at every hour of the year at least two do. The answer tells for how long too few "
                    + "do, when it happens first and worst, in which months and hours, which platforms have how much "
                    + "shade, and what would mend it.",
            ""
        },
        synopsisHeading = "Use: ",
        customSynopsis = "limbway shade SCENARIO [options]",
        sortOptions = false,
        optionListHeading = "%nOptions:%n",
        footerHeading = "%nExamples:%n",
        footer = {
            "  limbway shade yard.yaml",
            "  limbway shade yard.yaml --variant \"high and linked\" --out yard-shade",
            "  limbway shade yard.yaml --at-least 3 --platform deck-1 --platform deck-2 --platform deck-3",
            "",
            "Exit code: 0 the rule is kept; 1 it is broken; 2 the input is wrong; 3 it could not be done.",
            "",
            Cautions.IN_SHORT
        })
final class ShadeCommand implements Callable<Integer> {

    @Mixin
    private CommonOptions options;

    @Option(names = "--out", paramLabel = "DIR", description = "Also write a page with charts and tables into DIR.")
    private Path out;

    @Option(
            names = "--year",
            paramLabel = "YEAR",
            defaultValue = "2026",
            converter = NumberInRange.Year.class,
            description = "Year to look at, 1900 to 2200; without it 2026.")
    private int year;

    @Option(
            names = "--step",
            paramLabel = "MINUTES",
            defaultValue = "15",
            converter = NumberInRange.Step.class,
            description = "From one look to the next; without it 15. It must divide an hour.")
    private int stepMin;

    @Option(
            names = "--at-least",
            paramLabel = "N",
            defaultValue = "2",
            converter = WholeNumber.class,
            description = "Platforms that must lie in shade at once; without it 2.")
    private int atLeast;

    @Option(
            names = "--shaded-share",
            paramLabel = "PERCENT",
            defaultValue = "75",
            converter = NumberInRange.Share.class,
            description = "How much of a platform must lie in shade for it to count; without it 75.")
    private double shadedShare;

    @Option(
            names = "--most-beam",
            paramLabel = "PERCENT",
            defaultValue = "30",
            converter = NumberInRange.Beam.class,
            description = "How much of the direct sunlight may reach a point in shade; without it 30.")
    private double mostBeam;

    @Option(
            names = "--lowest-sun",
            paramLabel = "DEGREES",
            defaultValue = "5",
            converter = NumberInRange.Height.class,
            description = "Height of the sun from which shade is asked for; without it 5.")
    private double lowestSunDeg;

    @Option(
            names = "--platform",
            paramLabel = "NAME",
            description = "A platform to count, as often as there are such; without it all platforms and hammocks.")
    private List<String> platforms = new ArrayList<>();

    @Mixin
    private ThreadOptions threads;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Refusal, NotDone {
        Question question = Question.of(options);
        Enclosure enclosure = question.layout().enclosure();
        List<String> counted = counted(enclosure);
        Path folder = out == null ? null : OutFolder.prepare(out);
        try (Interruption interruption = Interruption.watch(spec.commandLine().getErr())) {
            return answer(question, counted, folder, interruption);
        }
    }

    /** The exit code; whoever interrupts is told what was saved before the watch ends, because then the process does. */
    private int answer(Question question, List<String> counted, Path folder, Interruption interruption) throws NotDone {
        Optional<ShadeYear> audited = audit(question.layout().enclosure(), counted, interruption);
        if (audited.isEmpty()) {
            return interrupted("before the whole year was looked at", "nothing");
        }
        ShadeReport report = report(question, audited.get(), interruption);
        ShadeLines.of(report).forEach(spec.commandLine().getOut()::println);
        spec.commandLine().getOut().flush();
        if (options.json != null) {
            OutFolder.write(options.json, Json.text(ShadeAnswer.of(report)));
        }
        if (folder != null) {
            if (!write(folder, report, interruption)) {
                return interrupted("before the page was drawn", "the answer above" + inJson());
            }
            spec.commandLine().getOut().println("page: " + folder.resolve("shade.html"));
            spec.commandLine().getOut().flush();
        }
        if (report.roof() instanceof RoofAnswer.Interrupted) {
            return interrupted("while roofs were tried", "the answer above, without a roof" + inJson());
        }
        if (interruption.isWanted()) {
            return interrupted("when all was done", "everything");
        }
        return report.isKept() ? ExitCode.DONE : ExitCode.MUST_MEND;
    }

    private String inJson() {
        return options.json == null ? "" : ", and " + options.json;
    }

    private int interrupted(String when, String saved) {
        spec.commandLine().getErr().println("limbway: interrupted " + when + "\n  saved    " + saved);
        spec.commandLine().getErr().flush();
        return ExitCode.NOT_DONE;
    }

    private List<String> counted(Enclosure enclosure) throws Refusal {
        List<String> known = enclosure.platforms().stream().map(Platform::id).toList();
        for (String name : platforms) {
            if (!known.contains(name)) {
                throw Refusal.unknown("platform", name, known);
            }
        }
        if (new LinkedHashSet<>(platforms).size() < platforms.size()) {
            throw Refusal.of(
                    "a platform is named twice", Wording.list(platforms), "each platform once", "take one of them out");
        }
        LinkedHashSet<String> wanted = new LinkedHashSet<>(platforms.isEmpty() ? known : platforms);
        return known.stream().filter(wanted::contains).toList();
    }

    private Optional<ShadeYear> audit(Enclosure enclosure, List<String> counted, Interruption interruption) {
        StatusLine line = new StatusLine(spec.commandLine().getErr(), System::nanoTime, Terminal.isWatched());
        Optional<ShadeYear> audited = ShadeAudit.of(
                enclosure,
                ShadeSettings.standard(),
                new ShadeRule(atLeast, shadedShare, mostBeam, lowestSunDeg),
                ShadeCalendar.of(enclosure.site(), year, stepMin),
                counted,
                threads.count(),
                new ShadeProgressLine(line, "sun and shade", "days", interruption::isWanted));
        line.end();
        return audited;
    }

    private ShadeReport report(Question question, ShadeYear found, Interruption interruption) {
        Enclosure enclosure = question.layout().enclosure();
        ShadeInfo info = new ShadeInfo(
                question.fileName(),
                question.study().title(),
                question.read().sha256Hex(),
                question.layout().name(),
                Version.current(),
                System.getProperty("java.version"),
                UsedParameters.ofShade(question, found),
                question.read().notes());
        Optional<SupportHeat> heat = question.study()
                .weather()
                .map(weather -> SupportHeat.of(
                        enclosure,
                        ShadeScene.of(enclosure, ShadeSettings.standard()),
                        HeatSettings.standard(),
                        weather,
                        year));
        StatusLine line = new StatusLine(spec.commandLine().getErr(), System::nanoTime, Terminal.isWatched());
        RoofAnswer roof = RoofSearch.of(
                enclosure,
                ShadeSettings.standard(),
                found,
                RoofFamily.standard(),
                threads.count(),
                new ShadeProgressLine(line, "roofs", "tries", interruption::isWanted));
        line.end();
        return ShadeReport.of(info, enclosure, found, roof, heat);
    }

    /** Writes page, charts and tables; false if it was interrupted before it began to. */
    private static boolean write(Path folder, ShadeReport report, Interruption interruption) throws NotDone {
        ShadeMap map = ShadeMap.of(
                report.enclosure(),
                ShadeScene.of(report.enclosure(), ShadeSettings.standard()),
                report.year().rule(),
                report.year().calendar().year(),
                report.hardest().date(),
                interruption::isWanted);
        if (interruption.isWanted()) {
            return false;
        }
        ShadeViews views = ShadeViews.of(report.enclosure(), report.year(), map);
        try {
            ShadeFiles.write(folder, report, views);
        } catch (IOException e) {
            throw OutFolder.notWritten(folder, e, "the answer above");
        }
        return true;
    }
}
