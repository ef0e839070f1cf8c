package limbway.reports.command;

import java.nio.charset.StandardCharsets;
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
import limbway.reports.scene.EnclosureGlb;
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
            "  limbway graph yard.yaml --format glb --out yard-graph",
            "",
            "Exit code: 0 done; 2 the input is wrong; 3 it could not be done.",
            "",
            Cautions.IN_SHORT
        })
final class GraphCommand implements Callable<Integer> {

    private static final List<String> FORMATS = List.of("csv", "graphml", "glb");

    @Mixin
    private CommonOptions options;

    @Option(
            names = "--format",
            paramLabel = "FORMAT",
            defaultValue = "csv",
            description = "csv (three tables), graphml, or glb (the enclosure and its moves in space, "
                    + "for 3D viewers); without it csv.")
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
        for (Map.Entry<String, byte[]> file : files(habitat).entrySet()) {
            OutFolder.write(folder.resolve(file.getKey()), file.getValue());
            written.add(file.getKey());
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

    /** Names and contents, in the order of writing. */
    private Map<String, byte[]> files(Habitat habitat) {
        Map<String, byte[]> files = new LinkedHashMap<>();
        switch (format) {
            case "graphml" -> files.put("graph.graphml", GraphMl.text(habitat).getBytes(StandardCharsets.UTF_8));
            case "glb" -> files.put("enclosure.glb", EnclosureGlb.bytes(habitat));
            default -> {
                for (CsvTable table : GraphTables.of(habitat)) {
                    files.put(table.name() + ".csv", table.text().getBytes(StandardCharsets.UTF_8));
                }
            }
        }
        return files;
    }
}
