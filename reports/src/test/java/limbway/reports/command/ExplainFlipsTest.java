package limbway.reports.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import limbway.reports.command.TinyScenario.Answer;

import static limbway.reports.command.TinyScenario.limbway;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** What explain names is pasted into the scenario as it is printed, and asked about again. */
class ExplainFlipsTest {

    private static final Path EXAMPLES = Path.of("../scenarios/examples");
    private static final String PASTED = "pasted";

    @TempDir
    Path folder;

    private JsonNode explain(Path scenario, String variant, String body, String from, String to, Object... more)
            throws IOException {
        Path file = folder.resolve("why.json");
        List<Object> words = new ArrayList<>(
                List.of("explain", scenario, "--body", body, "--from", from, "--to", to, "--json", file));
        if (!variant.isEmpty()) {
            words.addAll(List.of("--variant", variant));
        }
        words.addAll(List.of(more));
        Answer answer = limbway(words.toArray());
        assertEquals(0, answer.code(), answer.err());
        JsonNode root = new ObjectMapper().readTree(Files.readString(file));
        for (JsonNode flip : root.path("flips")) {
            assertTrue(answer.out().contains("\n    - " + flip.get("line").asText() + "\n"), answer.out());
        }
        return root;
    }

    /** The scenario with a layout more: the changes of another and a line. */
    private Path pasted(Path scenario, String variant, String line) throws IOException {
        String text = Files.readString(scenario);
        String changes = "";
        if (!variant.isEmpty()) {
            int start = text.indexOf("changes:", text.indexOf("- name: " + variant)) + "changes:".length();
            int end = text.indexOf("- name:", start);
            String block = text.substring(start, end < 0 ? text.length() : end).strip();
            changes = block.startsWith("[")
                    ? "- " + block.substring(1, block.lastIndexOf(']')).replace("}, {", "}\n      - {")
                    : block.lines().map(String::strip).collect(Collectors.joining("\n      "));
        }
        String more = "  - name: " + PASTED + "\n    changes:\n      " + changes + "\n      - " + line + "\n";
        return Files.writeString(folder.resolve("pasted.yaml"), text.stripTrailing() + "\n" + more);
    }

    /** The number of a line by which the change was sized, and the same a fiftieth nearer to what is there now. */
    private static String withLess(String line, JsonNode flip, double now) {
        Matcher last =
                Pattern.compile("(?<=at |diameter: |sag: )[0-9.]+(?=[},]| %)").matcher(line);
        assertTrue(last.find(), line);
        double then = Double.parseDouble(last.group());
        double less = now + 0.98 * (then - now);
        assertTrue(flip.get("amount").asDouble() > 0);
        return last.replaceFirst(String.format(Locale.ROOT, "%.4f", less));
    }

    /** Of each kind the first line pasted turns the trip, at the energies that were told. */
    private JsonNode assertPasted(Path scenario, String variant, String body, String from, String to)
            throws IOException {
        JsonNode flips = explain(scenario, variant, body, from, to).get("flips");
        Set<String> kinds = new HashSet<>();
        for (JsonNode flip : flips) {
            String line = flip.get("line").asText();
            if (!kinds.add(flip.get("kind").asText())) {
                continue;
            }
            JsonNode then = explain(pasted(scenario, variant, line), PASTED, body, from, to, "--flips", "off");
            assertEquals(
                    flip.get("offground_mj").asLong(),
                    then.get("cheapest_offground_mj").asLong(),
                    line);
            assertEquals(
                    flip.get("cheapest_mj").asLong(), then.get("cheapest_mj").asLong(), line);
            assertEquals(0, then.get("ground_temptation_mj").asLong(), line);
            assertTrue(then.get("p_offground").asDouble() >= 0.5, line);
            assertEquals(
                    flip.get("p_offground").asDouble(), then.get("p_offground").asDouble(), line);
        }
        return flips;
    }

    @Test
    void inTheYardLinesPastedTurnTheTripAndLessDoesNot() throws IOException {
        Path yard = EXAMPLES.resolve("yard.yaml");
        JsonNode flips = assertPasted(yard, "one link missing", "adult female", "nest-1", "hatch");
        assertTrue(flips.size() >= 3, flips.toString());
        // deck-1 ends at x = 6 and prop, 5 cm in radius, stands at 8.5: 2.45 m, and a female reaches 1.5 m
        JsonNode gap = flips.get(0);
        assertEquals("gap", gap.get("kind").asText());
        assertEquals("{move: prop, at: [7.55, 4.7]}", gap.get("line").asText());
        assertEquals(0.95, gap.get("amount").asDouble(), 1e-9);
        JsonNode less = explain(
                pasted(yard, "one link missing", "{move: prop, at: [7.569, 4.7]}"),
                PASTED,
                "adult female",
                "nest-1",
                "hatch",
                "--flips",
                "off");
        assertTrue(less.get("cheapest_offground_mj").isNull(), less.toString());
    }

    @Test
    void aTinyGapIsTurnedByAllKindsAndWhatHelpsNotIsTold() throws IOException {
        Path tiny = TinyScenario.write(folder);
        JsonNode flips = assertPasted(tiny, "", "juvenile", "cup", "tray");
        List<String> kinds = new ArrayList<>();
        flips.forEach(flip -> kinds.add(flip.get("kind").asText()));
        assertTrue(kinds.containsAll(List.of("gap", "link", "place")), kinds.toString());
        // as the command link names it
        assertTrue(flipOf("link", flips).get("line").asText().startsWith("{add: {rope: link-1, "), flips.toString());
        // 2.58 m between the axes, less both radii, less what a juvenile reaches: 2.5 - 1.1
        assertEquals(1.4, flips.get(0).get("amount").asDouble(), 0.0101);
    }

    /** A rope tied too high at one end; in the variant level, but slack. */
    @Test
    void anEndTiedLowerAndARopePulledTighterArePastedToo() throws IOException {
        Path scenario = Files.writeString(folder.resolve("detour.yaml"), """
                title: A rope tied too high
                site: {latitude: 1.5, longitude: 110.5, time-zone: Asia/Kuching}
                ground: {outline: [[0, 0], [40, 0], [40, 20], [0, 20]], surface: grass}
                supports:
                  - {pole: west, at: [14, 10], height: 8, diameter: 0.08, material: timber}
                  - {pole: east, at: [26, 10], height: 8, diameter: 0.08, material: timber}
                  - {rope: high, from: west at 2, to: east at 6, diameter: 0.05}
                resources:
                  - {food: tray, on: east at 2, portions: 2 at once}
                  - {nest: bed, on: west at 2}
                animals:
                  - {name: Sari, body: adult female}
                keepers:
                  - {feed: tray, at: "09:00", energy-kj: 4500}
                variants:
                  - name: slack
                    changes: [{move: high, from: west at 3, to: east at 3}, {alter: high, sag: 24 %}]
                """);
        JsonNode tied = flipOf("retie", assertPasted(scenario, "", "adult female", "bed", "tray"));
        assertShort(scenario, "", withLess(tied.get("line").asText(), tied, 6));
        JsonNode pulled = flipOf("tighten", assertPasted(scenario, "slack", "adult female", "bed", "tray"));
        assertShort(scenario, "slack", withLess(pulled.get("line").asText(), pulled, 24));
    }

    private static JsonNode flipOf(String kind, JsonNode flips) {
        for (JsonNode flip : flips) {
            if (flip.get("kind").asText().equals(kind)) {
                return flip;
            }
        }
        throw new AssertionError("no " + kind + " in " + flips);
    }

    private void assertShort(Path scenario, String variant, String less) throws IOException {
        JsonNode then =
                explain(pasted(scenario, variant, less), PASTED, "adult female", "bed", "tray", "--flips", "off");
        assertTrue(then.get("ground_temptation_mj").asLong() > 0, less + " turns it, too");
    }

    @Test
    void doorsAreAsTheyAreAtATime() throws IOException {
        Path cage = EXAMPLES.resolve("moat-and-cage.yaml");
        JsonNode root = explain(cage, "", "juvenile", "nest-1", "hatch", "--at", "19:30", "--flips", "off");
        assertEquals("19:30", root.get("at").asText());
        Answer wrong =
                limbway("explain", cage, "--body", "juvenile", "--from", "nest-1", "--to", "hatch", "--at", "7:30");
        assertEquals(2, wrong.code());
        assertTrue(wrong.err().contains("--at cannot be that"), wrong.err());
        assertTrue(wrong.err().contains("a time of day as HH:MM"), wrong.err());
    }

    @Test
    void aShutDoorTurnsTheAnswer() throws IOException {
        Path scenario = Files.writeString(folder.resolve("door.yaml"), """
                title: Two rooms
                site: {latitude: 1.5, longitude: 110.5, time-zone: Asia/Kuching}
                ground: {outline: [[0, 0], [16, 0], [16, 10], [0, 10]], surface: grass}
                supports:
                  - {pole: west, at: [3, 5], height: 3, diameter: 0.08, material: timber}
                barriers:
                  - {wall: between, line: [[8, 0], [8, 10]], top: 4}
                doors:
                  - {door: slide, in: between, from: [8, 4], to: [8, 6], height: 1.5, open: ["07:00-18:00"]}
                resources:
                  - {food: tray, at: [12, 5], portions: 2 at once}
                  - {nest: bed, on: west at 2}
                animals:
                  - {name: Anak, body: juvenile}
                keepers:
                  - {feed: tray, at: "09:00", energy-kj: 4500}
                """);
        JsonNode day = explain(scenario, "", "juvenile", "bed", "tray", "--at", "12:00");
        assertTrue(day.get("cheapest_mj").asLong() > 0, day.toString());
        assertEquals(explain(scenario, "", "juvenile", "bed", "tray").get("cheapest_mj"), day.get("cheapest_mj"));
        JsonNode night = explain(scenario, "", "juvenile", "bed", "tray", "--at", "18:30");
        assertTrue(night.get("cheapest_mj").isNull(), night.toString());
        assertTrue(night.path("flips").isMissingNode(), night.toString());
    }
}
