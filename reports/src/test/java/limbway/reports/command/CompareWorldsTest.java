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

import static limbway.reports.command.TinyScenario.limbway;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

class CompareWorldsTest {

    @TempDir
    Path folder;

    private Path scenario;

    @BeforeEach
    void write() throws IOException {
        scenario = TinyScenario.write(folder);
    }

    private Answer compare(Object... more) {
        return limbway(Stream.concat(
                        Stream.of(
                                "compare",
                                scenario,
                                "--days",
                                1,
                                "--warm-up",
                                0,
                                "--batch",
                                10,
                                "--replications",
                                10,
                                "--worlds",
                                12,
                                "--world-reversals",
                                1),
                        Stream.of(more))
                .toArray());
    }

    @Test
    void worldsArePartOfTheAnswerAndGoOnAfterAStop() throws IOException {
        Path whole = folder.resolve("whole");
        Answer answer = compare("--out", whole, "--threads", 1);
        assertEquals(0, answer.code(), answer.err());
        assertTrue(answer.out().contains("joined has more than as drawn in "), answer.out());
        assertTrue(Files.readString(whole.resolve("compare.html")).contains("Plausible worlds"));
        assertTrue(Files.isRegularFile(whole.resolve("charts/worlds-1.svg")));
        assertTrue(Files.isRegularFile(whole.resolve("data/world_differences.csv")));
        JsonNode worlds = new ObjectMapper()
                .readTree(Files.readString(whole.resolve("compare.json")))
                .get("worlds");
        assertEquals(12, worlds.get("lived").asInt() + worlds.get("refused").asInt());
        JsonNode pair = worlds.get("pairs").get(0);
        assertEquals("offground_distance", pair.get("measure").asText());
        assertEquals(
                worlds.get("lived").asInt(),
                pair.get("a_more").asInt()
                        + pair.get("b_more").asInt()
                        + pair.get("equal").asInt());
        assertEquals(1, pair.get("reversals").size());

        // on other threads, and from the first part of the notebook: the same
        Path other = folder.resolve("other");
        Files.createDirectories(other);
        String notes = Files.readString(whole.resolve("notebook.tsv"));
        Files.writeString(other.resolve("notebook.tsv"), notes.substring(0, notes.length() * 2 / 3));
        Answer resumed = compare("--out", other, "--threads", 2);
        assertEquals(0, resumed.code(), resumed.err());
        assertTrue(resumed.err().contains("going on from "), resumed.err());
        for (String file : List.of("compare.html", "compare.json", "data/worlds.csv", "data/world_inputs.csv")) {
            assertEquals(Files.readString(whole.resolve(file)), Files.readString(other.resolve(file)), file);
        }
    }

    @Test
    void tooFewWorldsAreRefusedBeforeAnythingIsLived() {
        Answer answer = limbway("compare", scenario, "--worlds", 5);
        assertEquals(2, answer.code());
        assertEquals("""
                limbway: that is too few plausible worlds
                  found    --worlds 5
                  allowed  10 or more
                  mend     give at least --worlds 10; with 200 the share in which one layout has more is known to plus or minus 7 points
                """, answer.err());
    }
}
