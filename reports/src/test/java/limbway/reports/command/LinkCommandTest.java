package limbway.reports.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Stream;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import limbway.model.enclosure.Support;
import limbway.model.parameter.Assumable;
import limbway.reports.command.TinyScenario.Answer;
import limbway.reports.words.Figures;
import limbway.scenarios.Reading;
import limbway.scenarios.ScenarioReader;
import limbway.sim.experiment.Assumptions;
import limbway.sim.experiment.Situations;

import static limbway.reports.command.TinyScenario.limbway;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

class LinkCommandTest {

    @TempDir
    Path folder;

    private Path scenario;

    @BeforeEach
    void write() throws IOException {
        scenario = TinyScenario.write(folder);
    }

    private Answer link(Object... more) {
        return limbway(Stream.concat(
                        Stream.of(
                                "link",
                                scenario,
                                "--replications",
                                2,
                                "--days",
                                1,
                                "--check",
                                2,
                                "--falls",
                                1,
                                "--warm-up",
                                0),
                        Stream.of(more))
                .toArray());
    }

    private static JsonNode json(Path file) throws IOException {
        return new ObjectMapper().readTree(Files.readString(file));
    }

    @Test
    void theMissingRopeIsFoundAndTheAnswerHasWhatOtherProgramsRelyOn() throws IOException {
        Path file = folder.resolve("answer.json");
        Answer answer = link("--json", file);
        assertEquals(0, answer.code(), answer.err());
        JsonNode root = json(file);
        JsonNode best = root.get("links").get(0);
        assertEquals(List.of("prop", "east"), List.of(name(best, "from"), name(best, "to")));
        assertTrue(best.get("length_m").asDouble() >= 2.58, best.toString());
        assertTrue(best.get("offground_gain").get("mean").asDouble() > 0.2, best.toString());
        assertTrue(best.get("flipped_trips_per_day").asDouble() > 1, best.toString());
        assertTrue(best.get("held_up").get("mean").asDouble() > 0.2, best.toString());
        boolean held = true;
        for (JsonNode link : root.get("links")) {
            boolean gains = link.get("lived_with").asBoolean()
                    && link.get("offground_gain").get("mean").asDouble() > 0;
            assertEquals(gains, link.get("checked_afresh").asBoolean(), link.toString());
            String verdict = link.get("held_up_verdict").asText();
            assertEquals(gains, verdict.equals("held up") || verdict.equals("did not hold up"), link.toString());
            assertTrue(held || !verdict.equals("held up"), link.toString());
            held = verdict.equals("held up");
        }
        for (JsonNode link : root.get("links")) {
            assertTrue(link.get("length_m").asDouble() > 0, link.toString());
            assertTrue(link.get("flipped_trips_per_day").isNumber(), link.toString());
            assertFalse(link.get("nobody_travels").asBoolean(), link.toString());
            JsonNode gain = link.get("offground_gain");
            boolean lived = link.get("lived_with").asBoolean();
            assertTrue(gain.get("mean").isNumber(), link.toString());
            assertEquals(lived, gain.get("lo").isNumber() && gain.get("hi").isNumber(), link.toString());
            if (!lived) {
                assertEquals(link.get("expected_gain"), gain.get("mean"), link.toString());
            }
        }
        for (JsonNode fall : root.get("fragile")) {
            assertTrue(
                    fall.get("support").isTextual()
                            && fall.get("offground_loss").isNumber(),
                    fall.toString());
        }
        // the sentence leads with the check that had no part in choosing
        assertTrue(
                best.get("sentence").asText().contains("by " + points(best.get("held_up"))),
                best.get("sentence").asText());
        JsonNode worst = root.get("fragile").get(0);
        assertTrue(worst.get("offground_loss").asDouble() > 0, worst.toString());
        assertEquals(4, root.get("fragile").size());
        assertTrue(answer.out().contains("off-ground share by"), answer.out());
        assertTrue(answer.out().contains("held up on fresh chance"), answer.out());
        assertTrue(answer.out().contains("- {add: {rope: link-1, from: prop"), answer.out());
    }

    private static String points(JsonNode interval) {
        return Figures.decimals(100 * interval.get("mean").asDouble(), 1) + " ("
                + Figures.decimals(100 * interval.get("lo").asDouble(), 1) + " to ";
    }

    private static String name(JsonNode link, String end) {
        String words = link.get(end).asText();
        return words.substring(0, words.indexOf(' '));
    }

    @Test
    void whatIsPastedIsWhatWasJudged() throws IOException {
        Path file = folder.resolve("answer.json");
        assertEquals(0, link("--json", file, "--kind", "pole").code());
        JsonNode best = json(file).get("links").get(0);
        String pasted = TinyScenario.TEXT + "  - name: pasted\n    changes:\n      "
                + best.get("changes").get(0).asText() + "\n";
        Path with = Files.writeString(folder.resolve("pasted.yaml"), pasted);
        Reading.Read read = (Reading.Read)
                ScenarioReader.read(with, new Assumable(Assumptions.standard().parameters(), Situations.all()));
        Support added = read.study().find("pasted").orElseThrow().enclosure().supports().stream()
                .filter(support -> support.id().equals("link-1"))
                .findFirst()
                .orElseThrow();
        assertEquals(best.get("length_m").asDouble(), added.axis().lengthM(), 0);
        assertEquals("beam", added.kind().word());
        assertTrue(read.study().find("pasted").orElseThrow().enclosure().supports().stream()
                .filter(support -> support.id().equals("east"))
                .noneMatch(support -> support.bearing().sways()));
    }

    @Test
    void allFilesAreTheSameForAnyNumberOfThreadsAndWhenGoneOnWith() throws IOException {
        Path one = folder.resolve("one");
        Path two = folder.resolve("two");
        Answer first = link("--threads", 1, "--links", 2, "--out", one);
        Answer second = link("--threads", 7, "--links", 2, "--out", two);
        assertEquals(0, first.code(), first.err());
        assertEquals(first.out().replace(one.toString(), two.toString()), second.out());
        // cut the notebook in the middle of a line, as an interruption would
        String notes = Files.readString(two.resolve("notebook.tsv"));
        Files.writeString(two.resolve("notebook.tsv"), notes.substring(0, notes.length() / 2));
        Answer again = link("--threads", 2, "--links", 2, "--out", two);
        assertEquals(first.out().replace(one.toString(), two.toString()), again.out());
        List<Path> files;
        try (Stream<Path> all = Files.walk(one)) {
            files = all.filter(Files::isRegularFile)
                    .map(one::relativize)
                    .filter(file -> !file.toString().equals("notebook.tsv"))
                    .sorted()
                    .toList();
        }
        assertEquals(8, files.size(), files.toString());
        for (Path file : files) {
            assertArrayEquals(
                    Files.readAllBytes(one.resolve(file)), Files.readAllBytes(two.resolve(file)), file.toString());
        }
        assertTrue(Files.readString(one.resolve("link.html")).contains("Ropes entangle"));
    }

    @Test
    void onlyWhatMayFailIsTold() throws IOException {
        Path file = folder.resolve("answer.json");
        Answer answer = link("--fragile-only", "--json", file);
        assertEquals(0, answer.code(), answer.err());
        assertEquals(0, json(file).get("links").size());
        assertFalse(answer.out().contains("pairs of places"), answer.out());
    }

    @Test
    void whatHangsOnAMastIsToldToFallWithIt() throws IOException {
        Path file = folder.resolve("answer.json");
        assertEquals(0, link("--fragile-only", "--json", file).code());
        Map<String, String> with = new TreeMap<>();
        Map<String, String> lost = new TreeMap<>();
        for (JsonNode fall : json(file).get("fragile")) {
            with.put(fall.get("support").asText(), fall.get("falls_with_it").toString());
            lost.put(fall.get("support").asText(), fall.get("places_lost").toString());
        }
        assertEquals(Map.of("west", "[\"line\"]", "prop", "[\"line\"]", "east", "[]", "line", "[]"), with);
        assertEquals(
                Map.of(
                        "west", "[\"bed-1\",\"cup\",\"roof\"]",
                        "prop", "[\"bed-2\"]",
                        "east", "[\"tray\"]",
                        "line", "[]"),
                lost);
    }

    @Test
    void theExampleYardIsAnsweredInTheSameOrderForOneThreadAndTwo() throws IOException {
        Path yard = Path.of("..", "scenarios", "examples", "yard.yaml");
        List<JsonNode> answers = new ArrayList<>();
        for (int threads = 1; threads <= 2; threads++) {
            Path file = folder.resolve("yard-" + threads + ".json");
            Answer answer = limbway(
                    "link",
                    yard,
                    "--variant",
                    "one link missing",
                    "--length",
                    5,
                    "--spacing",
                    2,
                    "--replications",
                    2,
                    "--days",
                    1,
                    "--warm-up",
                    0,
                    "--check",
                    3,
                    "--falls",
                    1,
                    "--threads",
                    threads,
                    "--json",
                    file);
            assertEquals(0, answer.code(), answer.err());
            answers.add(json(file));
        }
        assertTrue(
                answers.get(0).get("links").size() >= 2,
                answers.get(0).get("links").toString());
        assertEquals(answers.get(0), answers.get(1));
    }

    @Test
    void limitsThatContradictEachOtherAreRefused() {
        assertEquals("""
                        limbway: the clearance lies above everything that a link could be tied to
                          found    --clearance 6.0; the highest place is at 5.0 m
                          allowed  a clearance below that
                          mend     lower --clearance, or build higher
                        """, refused("--clearance", 6));
        assertEquals("""
                        limbway: no link is longer than the least length and no longer than the greatest
                          found    --shortest 5.0 and --length 4.0
                          allowed  a greatest length above the least
                          mend     raise --length or lower --shortest
                        """, refused("--shortest", 5, "--length", 4));
        String none = refused("--length", 2);
        assertTrue(none.startsWith("limbway: no link keeps within the limits\n  found    "), none);
        assertTrue(none.contains(" too short or too long"), none);
        assertTrue(refused("--replications", 1).contains("one repetition gives no interval"));
        assertTrue(refused("--replications", 99_001).contains("allowed  2 to 99000"));
        assertTrue(refused("--kind", "cable").contains("rope or pole"));
        assertTrue(refused("--links", 4).contains("1, 2 or 3"));
    }

    private String refused(Object... options) {
        Answer answer = limbway(
                Stream.concat(Stream.of("link", scenario), Stream.of(options)).toArray());
        assertEquals(2, answer.code(), answer.out());
        return answer.err();
    }
}
