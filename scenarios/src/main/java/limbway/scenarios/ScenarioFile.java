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

    /**
     * The bytes of a file that a scenario names; a pipe or device, which may never end or never begin, is not opened.
     *
     * <p>A scenario itself may come through a pipe: whoever gives it on the command line knows what is written there.
     */
    static Optional<byte[]> readOrdinary(Path path, Place place, int mostBytes, Problems problems) {
        if (Files.exists(path) && !Files.isRegularFile(path) && !Files.isDirectory(path)) {
            problems.add(Problem.at(place, "this is no ordinary file")
                    .found(path.toString())
                    .mend("save the table as a file on a disk"));
            return Optional.empty();
        }
        return read(path, place, mostBytes, problems);
    }

    /** The bytes, or empty after a problem that points at {@code place}. */
    static Optional<byte[]> read(Path path, Place place, int mostBytes, Problems problems) {
        if (Files.isDirectory(path)) {
            problems.add(Problem.at(place, "this is a folder, not a file").found(path.toString()));
            return Optional.empty();
        }
        try (InputStream stream = Files.newInputStream(path)) {
            byte[] bytes = stream.readNBytes(mostBytes + 1);
            if (bytes.length > mostBytes) {
                problems.add(SourceText.tooLarge(path.toString(), Math.max(bytes.length, Files.size(path)), mostBytes));
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
