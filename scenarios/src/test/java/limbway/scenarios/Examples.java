package limbway.scenarios;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;

import limbway.model.parameter.Assumable;
import limbway.model.parameter.Parameter;
import limbway.model.parameter.Situation;
import limbway.model.parameter.Standing;
import limbway.scenarios.problem.ProblemReport;

import static org.junit.jupiter.api.Assertions.fail;

/** The bundled examples, and readings of which a test expects success or refusal. */
final class Examples {

    static final Path FOLDER = Path.of("examples");
    static final List<String> ALL = List.of(
            "yard.yaml",
            "forest.yaml",
            "moat-and-cage.yaml",
            "shade-yard.yaml",
            "a-dozen-faults.yaml",
            "visitors-yard.yaml",
            "sweep-yard.yaml");

    /** What the examples set by name; the model's own list is not known here. */
    static final Assumable ASSUMABLE = new Assumable(
            List.of(
                    parameter("worth.bedding", "what bedding adds", "1", 0.1, 0, 0.3),
                    parameter("worth.ground-wariness", "what open ground takes", "1", 0.02, 0, 0.2),
                    parameter("worth.cover", "what cover adds", "1", 0.03, 0, 0.2),
                    parameter("need.tiring", "time in which an animal tires", "min", 240, 60, 600)),
            List.of(
                    new Situation("long settled", "It has lived here for years.", Map.of()),
                    new Situation(
                            "moved in lately",
                            "It came a few weeks ago.",
                            Map.of("worth.bedding", 0.05, "worth.cover", 0.1))));

    private static Parameter parameter(
            String name, String meaning, String unit, double value, double low, double high) {
        return new Parameter(name, meaning, unit, value, low, high, Standing.ASSUMPTION, "test");
    }

    private Examples() {}

    static Reading.Read read(String file) {
        return sound(ScenarioReader.read(FOLDER.resolve(file), ASSUMABLE));
    }

    static String text(String file) {
        try {
            return Files.readString(FOLDER.resolve(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    static Reading.Read sound(Reading reading) {
        if (reading instanceof Reading.Refused refused) {
            return fail(ProblemReport.text(refused.problems()));
        }
        return (Reading.Read) reading;
    }

    /** The whole printed answer for a scenario that must be refused. */
    static String refusal(Reading reading) {
        return reading instanceof Reading.Refused refused
                ? ProblemReport.text(refused.problems())
                : fail("was read, although it should have been refused");
    }
}
