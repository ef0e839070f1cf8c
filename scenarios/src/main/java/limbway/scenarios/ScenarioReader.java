package limbway.scenarios;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Optional;

import limbway.model.parameter.Assumable;
import limbway.scenarios.format.Node;
import limbway.scenarios.format.SourceText;
import limbway.scenarios.format.YamlTree;
import limbway.scenarios.problem.Place;
import limbway.scenarios.problem.Problems;

/**
 * Reads a scenario into a study.
 *
 * <p>Whatever the bytes are, the answer is a {@link Reading}: no exception, no endless work.
 */
public final class ScenarioReader {

    private ScenarioReader() {}

    /**
     * Reads a scenario file, and the survey table that it names.
     *
     * @param path the file; messages name it as it is given here
     * @param assumable numbers and situations that it may set by name
     * @return the study, or every mistake
     */
    public static Reading read(Path path, Assumable assumable) {
        Problems problems = new Problems();
        String name = path.toString();
        Optional<byte[]> bytes = ScenarioFile.read(path, Place.startOf(name), SourceText.MAX_BYTES, problems);
        Path folder = path.resolveSibling("");
        return bytes.isEmpty()
                ? new Reading.Refused(problems.inOrder(name))
                : read(name, bytes.get(), folder, assumable, problems);
    }

    /**
     * Reads a scenario from text.
     *
     * @param name what messages call it
     * @param text the scenario
     * @param folder where tables with relative names are looked for
     * @param assumable numbers and situations that it may set by name
     * @return the study, or every mistake
     */
    public static Reading read(String name, String text, Path folder, Assumable assumable) {
        return read(name, text.getBytes(StandardCharsets.UTF_8), folder, assumable, new Problems());
    }

    static Reading read(String name, byte[] bytes, Path folder, Assumable assumable, Problems problems) {
        Optional<Node> root = SourceText.decode(name, bytes, SourceText.MAX_BYTES, problems)
                .flatMap(text -> YamlTree.parse(name, text, problems));
        return root.isEmpty()
                ? new Reading.Refused(problems.inOrder(name))
                : new StudyReader(name, bytes, folder, assumable, problems).read(root.get());
    }
}
