package limbway.reports.command;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;

import picocli.CommandLine.Command;
import picocli.CommandLine.Mixin;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Option;
import picocli.CommandLine.Spec;

import limbway.reports.data.CsvTable;
import limbway.reports.data.GraphMl;
import limbway.reports.data.GraphTables;
import limbway.reports.data.Json;
import limbway.reports.words.Cautions;
import limbway.sim.habitat.Habitat;

/** Writes the compiled enclosure for other programs. */
@Command(
        name = "graph",
        description = {
            "Writes the enclosure as the program sees it, for other programs.",
            "Holds (points where a body can hang, sit or stand), the moves between them with their energy for each "
                    + "body in whole millijoules, and the holds from which each resource is used.",
            ""
        },
        synopsisHeading = "Use: ",
        customSynopsis = "limbway graph SCENARIO [options]",
        sortOptions = false,
        optionListHeading = "%nOptions:%n",
        footerHeading = "%nExamples:%n",
        footer = {
            "  limbway graph yard.yaml --format csv --out yard-graph",
            "  limbway graph yard.yaml --format graphml --out yard-graph",
            "",
            "Exit code: 0 done; 2 the input is wrong; 3 it could not be done.",
            "",
            Cautions.IN_SHORT
        })
final class GraphCommand implements Callable<Integer> {

    private static final List<String> FORMATS = List.of("csv", "graphml");

    @Mixin
    private CommonOptions options;

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            defaultValue = "csv",
            description = "csv (three tables) or graphml; without it csv.")
    private String format;

    @Option(
            names = "--out",
            paramLabel = "DIR",
            defaultValue = "out",
            description = "Folder to write into; without it a folder called out.")
    private Path out;

    @Spec
    private CommandSpec spec;

    @Override
    public Integer call() throws Refusal, NotDone {
        if (!FORMATS.contains(format)) {
            throw Refusal.of(
                    "the graph cannot be written in that format",
                    format,
                    String.join(", ", FORMATS),
                    Refusal.guess(format, FORMATS, "choose one of these"));
        }
        Question question = Question.of(options);
        Habitat habitat = question.habitat();
        Path folder = OutFolder.prepare(out);
        List<String> written = new ArrayList<>();
        if (format.equals("csv")) {
            for (CsvTable table : GraphTables.of(habitat)) {
                OutFolder.write(folder.resolve(table.name() + ".csv"), table.text());
                written.add(table.name() + ".csv");
            }
        } else {
            OutFolder.write(folder.resolve("graph.graphml"), GraphMl.text(habitat));
            written.add("graph.graphml");
        }
        spec.commandLine().getOut().println("wrote " + String.join(", ", written) + " to " + folder);
        if (options.json != null) {
            Map<String, Object> root = new LinkedHashMap<>();
            root.put("scenario", question.fileName());
            root.put("layout", question.layout().name());
            root.put("holds", habitat.graph().holdCount());
            root.put("resources", habitat.graph().resources().size());
            root.put("files", written);
            OutFolder.write(options.json, Json.text(root));
        }
        return ExitCode.DONE;
    }
}
