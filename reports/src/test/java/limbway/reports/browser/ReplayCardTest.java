package limbway.reports.browser;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;

import limbway.reports.command.Limbway;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** A route card shows what its own command answers: both ways with all parts, the share, the sentence, what turns it. */
@ExtendWith(InBrowser.class)
class ReplayCardTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    /** A word as a shell reads it, in quotes or without. */
    private static final Pattern WORD = Pattern.compile("'([^']*)'|\"([^\"]*)\"|(\\S+)");

    @TempDir
    Path folder;

    @Test
    void aTripOverTheGroundWithWhatWouldTurnIt(Browsers browsers, SamplePages pages) throws IOException {
        try (OpenPage page = browsers.open(ReplayTest.yard(pages))) {
            JsonNode data = data(page);
            int number = twoWays(data, "ground");
            JsonNode said = assertAsExplained(page, data, number, "on");
            JsonNode flip = said.get("flips").get(0);
            Replay replay = Replay.on(page);
            assertEquals("- " + flip.get("line").asText(), replay.text(".rp-flip pre"));
            // the sentence begins with a capital letter
            String change = flip.get("change").asText().substring(1);
            assertTrue(replay.text(".rp-flip p").contains(change), replay.text(".rp-flip p"));
        }
    }

    @Test
    void aTripOffTheGround(Browsers browsers, SamplePages pages) throws IOException {
        try (OpenPage page = browsers.open(ReplayTest.yard(pages))) {
            JsonNode data = data(page);
            JsonNode said = assertAsExplained(page, data, twoWays(data, "above"), "off");
            assertTrue(said.get("p_offground").asDouble() > 0.5, said.toString());
        }
    }

    private static JsonNode data(OpenPage page) throws IOException {
        return JSON.readTree(String.valueOf(page.value("document.querySelector('script.replay-data').textContent")));
    }

    /** The first card with both ways whose cheaper way is of a kind. */
    private static int twoWays(JsonNode data, String kind) {
        JsonNode cards = data.get("layouts").get(0).get("cards");
        for (int i = 0; i < cards.size(); i++) {
            JsonNode ways = cards.get(i).get("ways");
            if (ways.size() == 2) {
                boolean first = ways.get(0).get("milliJ").asLong()
                        < ways.get(1).get("milliJ").asLong();
                if (ways.get(first ? 0 : 1).get("kind").asText().equals(kind)) {
                    return i;
                }
            }
        }
        throw new AssertionError("no card with both ways, the cheaper one of kind " + kind);
    }

    private JsonNode assertAsExplained(OpenPage page, JsonNode data, int number, String flips) throws IOException {
        Replay replay = Replay.on(page);
        page.value("window.limbwayReplays[0].showCard(0, " + number + ")");
        JsonNode said = explain(replay.text(".rp-card details pre"), flips);
        Map<String, List<String>> rows = new TreeMap<>();
        for (JsonNode mode : data.get("modes")) {
            String part = mode.get("part").asText() + "_mj";
            long over = said.get("parts_over_ground").get(part).asLong();
            long off = said.get("parts_offground").get(part).asLong();
            if (over > 0 || off > 0) {
                rows.put(mode.get("doing").asText(), List.of(energy(over), energy(off)));
            }
        }
        assertTrue(rows.size() > 1, rows.toString());
        long over = sum(said.get("parts_over_ground"));
        long off = said.get("cheapest_offground_mj").asLong();
        assertEquals(said.get("cheapest_mj").asLong(), Math.min(over, off));
        rows.put("Sum", List.of(energy(over), energy(off)));
        assertEquals(rows, table(page));
        assertEquals(
                List.of(energy(over), energy(off)),
                page.texts("[...document.querySelectorAll('.rp-bar-head strong')].map(e => e.textContent)"));
        JsonNode card = data.get("layouts").get(0).get("cards").get(number);
        assertEquals(
                said.get("p_offground").asDouble(), card.get("offGroundShare").asDouble());
        String sentence = said.get("sentence").asText();
        String capital = sentence.substring(0, 1).toUpperCase(Locale.ROOT) + sentence.substring(1);
        String whole = replay.text(".rp-card");
        assertTrue(whole.contains(capital), capital + " is missing in: " + whole);
        assertTrue(whole.contains(said.get("mend").asText()), whole);
        return said;
    }

    /** The table of the card: by its heads of rows, over the ground and off it. */
    private static Map<String, List<String>> table(OpenPage page) {
        assertEquals(
                List.of("Part", "over the ground", "off the ground"),
                page.texts("[...document.querySelectorAll('.rp-card thead th')].map(e => e.textContent)"));
        Map<String, List<String>> rows = new TreeMap<>();
        for (String row : page.texts("[...document.querySelectorAll('.rp-card tbody tr')].map(r =>"
                + " [...r.children].map(e => e.textContent).join('|'))")) {
            List<String> cells = List.of(row.split("\\|", -1));
            rows.put(cells.get(0), cells.subList(1, cells.size()));
        }
        return rows;
    }

    private static long sum(JsonNode parts) {
        long sum = 0;
        for (JsonNode part : parts) {
            sum += part.asLong();
        }
        return sum;
    }

    /** Runs the command that stands on the card. */
    private JsonNode explain(String command, String flips) throws IOException {
        Path scenario = Files.writeString(
                folder.resolve(ReplayTest.YARD), Words.of(ReplayTest.YARD).yaml());
        Path answer = folder.resolve("why.json");
        List<String> words = new ArrayList<>();
        Matcher word = WORD.matcher(command);
        while (word.find()) {
            words.add(word.group(1) != null ? word.group(1) : word.group(2) != null ? word.group(2) : word.group(3));
        }
        assertEquals(List.of("limbway", "explain"), words.subList(0, 2));
        assertTrue(words.get(2).endsWith(ReplayTest.YARD), command);
        assertFalse(words.contains("--json"), command);
        words.set(2, scenario.toString());
        words.addAll(List.of("--flips", flips, "--json", answer.toString()));
        StringWriter said = new StringWriter();
        PrintWriter writer = new PrintWriter(said);
        assertEquals(
                0, Limbway.run(writer, writer, words.subList(1, words.size()).toArray(String[]::new)), said.toString());
        return JSON.readTree(Files.readString(answer));
    }

    /** As the page writes it: joules below 10 kJ, then kilojoules. */
    private static String energy(long milliJ) {
        if (milliJ == 0) {
            return "–";
        }
        double joules = milliJ / 1000.0;
        return joules < 10_000
                ? spaced(joules, 0) + "\u00a0J"
                : spaced(joules / 1000, joules < 100_000 ? 1 : 0) + "\u00a0kJ";
    }

    private static String spaced(double value, int decimals) {
        String plain = new BigDecimal(value)
                .setScale(decimals, RoundingMode.HALF_UP)
                .toPlainString()
                .replaceAll("\\.0+$", "");
        return plain.replaceAll("(?<=\\d)(?=(\\d{3})+$)", "\u202f");
    }
}
