package limbway.scenarios;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import limbway.scenarios.problem.ProblemReport;

import static org.junit.jupiter.api.Assertions.fail;

/** The bundled examples, and readings of which a test expects success or refusal. */
final class Examples {

    static final Path FOLDER = Path.of("examples");
    static final List<String> ALL =
            List.of("yard.yaml", "forest.yaml", "moat-and-cage.yaml", "shade-yard.yaml", "a-dozen-faults.yaml");

    private Examples() {}

    static Reading.Read read(String file) {
        return sound(ScenarioReader.read(FOLDER.resolve(file)));
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
