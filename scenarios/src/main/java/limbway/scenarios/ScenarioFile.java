package limbway.scenarios;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.util.Optional;

import limbway.scenarios.format.SourceText;
import limbway.scenarios.problem.Place;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;

/** Reads the bytes of a file, or says in plain words why it cannot. */
final class ScenarioFile {

    private ScenarioFile() {}

    /** The bytes, or empty after a problem that points at {@code place}. */
    static Optional<byte[]> read(Path path, Place place, Problems problems) {
        if (Files.isDirectory(path)) {
            problems.add(Problem.at(place, "this is a folder, not a file").found(path.toString()));
            return Optional.empty();
        }
        try (InputStream stream = Files.newInputStream(path)) {
            byte[] bytes = stream.readNBytes(SourceText.MAX_BYTES + 1);
            if (bytes.length > SourceText.MAX_BYTES) {
                problems.add(SourceText.tooLarge(path.toString(), Math.max(bytes.length, Files.size(path))));
                return Optional.empty();
            }
            return Optional.of(bytes);
        } catch (NoSuchFileException e) {
            problems.add(Problem.at(place, "there is no such file")
                    .found(path.toString())
                    .mend("check the name and the folder"));
        } catch (IOException e) {
            problems.add(Problem.at(place, "this file cannot be read")
                    .found(path.toString())
                    .mend("check that it is a file and that you may read it"));
        }
        return Optional.empty();
    }
}
