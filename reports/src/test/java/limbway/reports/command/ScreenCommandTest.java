package limbway.reports.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import limbway.reports.command.TinyScenario.Answer;
import limbway.sim.experiment.Assumptions;
import limbway.sim.experiment.screening.Factor;

import static limbway.reports.command.TinyScenario.limbway;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

class ScreenCommandTest {

    private static final int FACTORS = Factor.doubtful(Assumptions.standard()).size();

    @TempDir
    Path folder;

    private Path scenario;

    @BeforeEach
    void write() throws IOException {
        scenario = TinyScenario.write(folder);
    }

    private Answer screen(Object... more) {
        return limbway(Stream.concat(
                        Stream.of("screen", scenario, "--replications", 2, "--days", 1, "--trajectories", 2),
                        Stream.of(more))
                .toArray());
    }

    @Test
    void theAnswerHasWhatOtherProgramsRelyOn() throws IOException {
        Path json = folder.resolve("answer.json");
        Answer answer = screen("--json", json);
        assertEquals(0, answer.code(), answer.err());
        JsonNode root = new ObjectMapper().readTree(Files.readString(json));
        assertEquals(2, root.get("trajectories").asInt());
        assertEquals(3, root.get("warm_up_days").asInt());
        assertEquals(2 * (FACTORS + 1), root.get("evaluations").asInt());
        assertEquals(64, root.get("sha256").asText().length());
        assertTrue(root.get("against").isNull());
        String said = answer.out().replaceAll("\\n +", " ");
        assertTrue(said.startsWith("as drawn: " + root.get("sentence").asText()), said);
        for (String name : List.of("off_ground", "elevated")) {
            JsonNode effects = root.get(name).get("effects");
            assertEquals(FACTORS, effects.size());
            double before = Double.MAX_VALUE;
            for (JsonNode effect : effects) {
                double size = effect.get("mean_abs").asDouble();
                assertTrue(size <= before && Math.abs(effect.get("mean").asDouble()) <= size + 1e-9, effect.toString());
                before = size;
                // there is no weather
                if (effect.get("parameter").asText().startsWith("need.heat-")) {
                    assertEquals(0, size, effect.toString());
                }
            }
            assertTrue(effects.get(0).get("mean_abs").asDouble() > 0, name);
        }
    }

    @Test
    void allFilesAreTheSameForAnyNumberOfThreads() throws IOException {
        Path one = folder.resolve("one");
        Path two = folder.resolve("two");
        String against = "joined";
        Answer first = screen("--against", against, "--threads", 1, "--out", one);
        Answer second = screen("--against", against, "--threads", 2, "--out", two);
        assertEquals(0, first.code(), first.err());
        assertEquals(first.out().replace(one.toString(), two.toString()), second.out());
        List<Path> files;
        try (Stream<Path> all = Files.walk(one)) {
            files = all.filter(Files::isRegularFile)
                    .map(one::relativize)
                    .sorted()
                    .toList();
        }
        assertEquals(13, files.size(), files.toString());
        for (Path file : files) {
            assertArrayEquals(
                    Files.readAllBytes(one.resolve(file)), Files.readAllBytes(two.resolve(file)), file.toString());
        }
        assertTrue(first.out().contains("as drawn less joined: "), first.out());
        String page = Files.readString(one.resolve("screen.html"));
        assertTrue(page.contains("with the same sign in"), page.substring(0, 4000));
    }

    @Test
    void oneWalkIsNotEnoughAndIsSaidToBe() {
        Answer answer = limbway("screen", scenario, "--replications", 1, "--days", 1, "--trajectories", 1);
        assertEquals(0, answer.code(), answer.err());
        assertTrue(answer.out().contains("Nothing can be said yet"), answer.out());
    }

    @Test
    void aLayoutThatDoesNotExistIsRefused() {
        Answer answer = screen("--against", "joind");
        assertEquals(2, answer.code());
        assertEquals("""
                        limbway: there is no layout to compare with of that name
                          found    "joind"
                          allowed  as drawn, joined
                          mend     did you mean "joined"?
                        """, answer.err());
    }

    @Test
    void aLayoutIsNotComparedWithItself() {
        Answer answer = screen("--against", "as drawn");
        assertEquals(2, answer.code());
        assertTrue(answer.err().contains("a layout is compared with itself"), answer.err());
    }

    @Test
    void aPlaceThatCannotBeWrittenToIsToldBeforeAnythingIsRun() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "");
        Answer answer = screen("--out", file);
        assertEquals(3, answer.code());
        assertTrue(answer.err().contains("saved    nothing"), answer.err());
        assertEquals("", answer.out());
    }

    @Test
    void noWalksAreRefused() {
        assertEquals(2, limbway("screen", scenario, "--trajectories", 0).code());
    }
}
