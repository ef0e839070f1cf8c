package limbway.reports.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import limbway.reports.command.TinyScenario.Answer;

import static limbway.reports.command.TinyScenario.limbway;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

class ReplayOfARunTest {

    private static final Path CAGE = Path.of("../scenarios/examples/moat-and-cage.yaml");
    private static final int MEGABYTE = 1_000_000;

    @TempDir
    Path folder;

    private String report(Path scenario, Object... more) throws IOException {
        Path out = folder.resolve("report");
        List<Object> words = new ArrayList<>(List.of(
                "run", scenario, "--out", out, "--replications", 1, "--warm-up", 0, "--worth", "off", "--alone"));
        words.addAll(List.of(more));
        Answer answer = limbway(words.toArray());
        assertEquals(0, answer.code(), answer.err());
        return Files.readString(out.resolve("report.html"));
    }

    private static String data(String page) {
        Matcher data = Pattern.compile("class=\"replay-data\">(.*?)</script>").matcher(page);
        assertTrue(data.find());
        return data.group(1);
    }

    /** The command of each card, run as it is printed, tells the numbers of the card; doors are open and shut. */
    @Test
    void theCommandOfACardTellsItsNumbers() throws IOException {
        JsonNode cards = new ObjectMapper().readTree(data(report(CAGE))).at("/layouts/0/cards");
        assertTrue(cards.size() > 10, "cards = " + cards.size());
        int withDoors = 0;
        // some of each: every command compiles the layout
        for (int c = 0; c < cards.size(); c++) {
            JsonNode card = cards.get(c);
            boolean shut = !card.get("at").isNull();
            if (shut ? withDoors < 3 : c % 12 == 0) {
                withDoors += shut ? 1 : 0;
                sameAsExplain(card);
            }
        }
        assertTrue(withDoors > 0, "some trip was made with a door shut");
    }

    private void sameAsExplain(JsonNode card) throws IOException {
        List<Object> words = new ArrayList<>();
        Matcher word = Pattern.compile("\"([^\"]*)\"|(\\S+)")
                .matcher(card.get("command").asText());
        while (word.find()) {
            words.add(word.group(1) == null ? word.group(2) : word.group(1));
        }
        assertEquals("limbway", words.remove(0));
        words.set(1, CAGE);
        Path file = folder.resolve("why.json");
        words.addAll(List.of("--flips", "off", "--json", file));
        Answer answer = limbway(words.toArray());
        assertEquals(0, answer.code(), card.get("command") + answer.err());
        JsonNode told = new ObjectMapper().readTree(Files.readString(file));
        assertEquals(told.get("sentence"), card.get("sentence"));
        assertEquals(told.get("mend"), card.get("mend"));
        assertEquals(told.get("p_offground"), card.get("offGroundShare"));
        assertEquals(told.get("at"), card.get("at"));
        int ways = 0;
        for (JsonNode way : card.get("ways")) {
            JsonNode parts =
                    told.get("above".equals(way.get("kind").asText()) ? "parts_offground" : "parts_over_ground");
            for (JsonNode part : way.get("parts")) {
                assertEquals(
                        parts.get(part.get("part").asText() + "_mj").asLong(),
                        part.get("milliJ").asLong());
            }
            ways++;
        }
        assertEquals(
                ways,
                (told.get("parts_offground").isNull() ? 0 : 1)
                        + (told.get("parts_over_ground").isNull() ? 0 : 1));
    }

    /** Sixteen poles in a square, joined by ropes all round, for eight animals. */
    private Path grove() throws IOException {
        StringBuilder text = new StringBuilder("""
                title: Grove
                site: {latitude: 1.5, longitude: 110.5, time-zone: Asia/Kuching}
                ground: {outline: [[0, 0], [40, 0], [40, 40], [0, 40]], surface: grass}
                supports:
                """);
        for (int i = 0; i < 16; i++) {
            text.append("  - {pole: p%d, at: [%d, %d], height: 7, diameter: 0.08, material: timber}%n"
                    .formatted(i, 5 + 10 * (i % 4), 5 + 10 * (i / 4)));
        }
        for (int i = 0; i < 16; i++) {
            if (i % 4 < 3) {
                text.append(
                        "  - {rope: east-%d, from: p%d at 6, to: p%d at 6, diameter: 0.05}%n".formatted(i, i, i + 1));
            }
            if (i < 12 && i % 4 != 1) {
                text.append(
                        "  - {rope: north-%d, from: p%d at 5, to: p%d at 5, diameter: 0.05}%n".formatted(i, i, i + 4));
            }
        }
        text.append("resources:\n");
        for (int i = 0; i < 4; i++) {
            text.append("  - {food: tray-%d, on: p%d at 4, portions: 2 at once}%n".formatted(i, 4 * i + i));
        }
        text.append("  - {food: heap, at: [20, 20, 0], portions: 3 at once}\n");
        text.append("  - {water: cup, on: p1 at 3, portions: 2 at once}\n");
        text.append("  - {water: pool, at: [10, 30, 0], portions: 2 at once}\n");
        text.append("  - {shade: roof, on: p6 at 5.5, portions: 4 at once}\n");
        for (int i = 0; i < 8; i++) {
            text.append("  - {nest: bed-%d, on: p%d at 6.5}%n".formatted(i, 2 * i));
        }
        text.append("animals:\n");
        List<String> bodies = List.of("adult female", "adolescent", "juvenile", "flanged male");
        for (int i = 0; i < 8; i++) {
            text.append("  - {name: Animal %d, body: %s}%n".formatted(i, bodies.get(i % 4)));
        }
        text.append("keepers:\n");
        for (String food : List.of("tray-0", "tray-1", "tray-2", "tray-3", "heap")) {
            text.append("  - {feed: %s, at: [\"08:00\", \"15:00\"], energy-kj: 5200}%n".formatted(food));
        }
        return Files.writeString(folder.resolve("grove.yaml"), text.toString().replace("\r", ""));
    }

    @Test
    void aDayOfEightAnimalsTakesLessThanAMegabyte() throws IOException {
        String data = data(report(grove()));
        assertTrue(data.length() < MEGABYTE, "bytes = " + data.length());
    }

    @Test
    void aPageWithThirtyDaysOfEightAnimalsTakesLessThanFiveMegabytes() throws IOException {
        String page = report(grove(), "--days", 30);
        assertTrue(page.length() < 5 * MEGABYTE, "bytes = " + page.length());
        JsonNode film = new ObjectMapper().readTree(data(page)).at("/layouts/0/film");
        assertEquals(30, film.get("days").asInt());
    }
}
