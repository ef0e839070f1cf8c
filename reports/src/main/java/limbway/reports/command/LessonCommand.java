package limbway.reports.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.nio.file.Path;
import java.util.concurrent.Callable;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Spec;

import limbway.reports.data.Json;
import limbway.reports.page.LessonReport;
import limbway.reports.words.Cautions;

/** Makes a lesson about an enclosure for people who are new to it. */
@Command(
        name = "lesson",
        description = {
            "Makes a lesson about an enclosure for new staff: why an ape takes the ground.",
            "One page with six to ten steps, which opens in a browser without a network and can be printed: meet the "
                    + "enclosure, predict a trip, see both ways and what they cost, change one thing, compare whole days, find "
                    + "a trap, and say what the model cannot tell. Every number is of this enclosure: changes are made and "
                    + "compiled anew, days are lived in all layouts.",
            "Taught is the trip with most metres on the ground that one change can turn, or the one that is named. What the "
                    + "enclosure has no data for is left out, and the page says so.",
            ""
        },
        synopsisHeading = "Use: ",
        customSynopsis = "limbway lesson SCENARIO [options]",
        sortOptions = false,
        optionListHeading = "%nOptions:%n",
        footerHeading = "%nExamples:%n",
        footer = {
            "  limbway lesson yard.yaml --out yard-lesson",
            "  limbway lesson yard.yaml --variant \"one link missing\" --body \"adult female\" --from nest-1 --to hatch",
            "  limbway lesson yard.yaml --variants \"high and linked,one link missing\" --replications 10 --days 3",
            "",
            "Exit code: 0 done; 2 the input is wrong; 3 it could not be done.",
            "",
            Cautions.IN_SHORT
        })
final class LessonCommand implements Callable<Integer> {

    @Mixin
    private CommonOptions options;

    @Mixin
    private LessonOptions lesson;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Refusal, NotDone {
        Question question = Question.of(options);
        PrintWriter err = spec.commandLine().getErr();
        try (Interruption interruption = Interruption.watch(err)) {
            Teaching teaching = Teaching.of(question, lesson);
            Path folder = OutFolder.prepare(lesson.out);
            LessonReport report = teaching.run(err, interruption);
            try {
                LessonFiles.write(folder, report);
            } catch (IOException e) {
                throw OutFolder.notWritten(folder, e, "nothing that can be used");
            }
            if (options.json != null) {
                OutFolder.write(options.json, Json.text(LessonAnswer.of(report)));
            }
            PrintWriter out = spec.commandLine().getOut();
            LessonLines.of(report).forEach(out::println);
            out.println("lesson: " + folder.resolve("lesson.html"));
            out.flush();
            return ExitCode.DONE;
        }
    }
}
