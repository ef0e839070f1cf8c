package limbway.reports.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import limbway.reports.command.TinyScenario.Answer;

import static limbway.reports.command.TinyScenario.limbway;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Two decks under a wide roof and one in the open, near the equator. */
class ShadeCommandTest {

    static final String TEXT = TinyScenario.TEXT.replace("resources:\n", """
                      - {platform: low, on: west at 2, size: [1.2, 1.2]}
                      - {platform: next, on: prop at 2, size: [1.2, 1.2]}
                      - {platform: open, on: east at 4.8, size: [1.2, 1.2]}
                    covers:
                      - {roof: lid, outline: [[0, 2], [11, 2], [11, 8], [0, 8]], height: 6}
                    resources:
                    """);

    @TempDir
    Path folder;

    private Path scenario;

    @BeforeEach
    void write() throws IOException {
        scenario = Files.writeString(folder.resolve("lid.yaml"), TEXT);
    }

    /** An audit in coarse steps: for laws that hold for any. */
    private JsonNode coarse(Object... args) throws IOException {
        List<Object> all = new ArrayList<>(List.of("--step", 60));
        all.addAll(List.of(args));
        return json(all.toArray());
    }

    private JsonNode json(Object... args) throws IOException {
        Path file = folder.resolve("answer.json");
        List<Object> all = new ArrayList<>(List.of("shade", scenario, "--json", file));
        all.addAll(List.of(args));
        Answer answer = limbway(all.toArray());
        assertTrue(answer.code() <= 1, answer.err());
        // on a slow machine it says how far it is
        assertEquals("", answer.err().replaceAll("(?m)^(sun and shade|roofs): \\d+ of \\d+ (days|tries)\\R", ""));
        JsonNode root = new ObjectMapper().readTree(Files.readString(file));
        assertEquals(answer.code() == 0, root.get("kept").asBoolean());
        return root;
    }

    @Test
    void theAnswerHasWhatOtherProgramsRelyOn() throws IOException {
        JsonNode root = json();
        assertEquals(2026, root.get("year").asInt());
        assertEquals(15, root.get("step_min").asInt());
        assertTrue(root.get("min_shaded").isInt());
        assertTrue(root.get("breach_minutes").asInt() > 0);
        assertTrue(root.get("first_breach").asText().matches("2026-\\d\\d-\\d\\dT\\d\\d:\\d\\d"), root.toString());
        assertTrue(root.get("worst_day").asText().matches("2026-\\d\\d-\\d\\d"));
        assertEquals(3, root.get("platforms").size());
        for (JsonNode platform : root.get("platforms")) {
            int sum = 0;
            for (JsonNode minutes : platform.get("shaded_minutes_by_month")) {
                sum += minutes.asInt();
            }
            assertEquals(12, platform.get("shaded_minutes_by_month").size());
            assertEquals(platform.get("shaded_minutes").asInt(), sum);
        }
        int breach = 0;
        for (JsonNode month : root.get("breach_minutes_by_month_and_hour")) {
            assertEquals(24, month.size());
            for (JsonNode minutes : month) {
                breach += minutes.asInt();
            }
        }
        assertEquals(root.get("breach_minutes").asInt(), breach);
        assertEquals(2, root.at("/rule/at_least").asInt());
        assertEquals(0.75, root.at("/rule/shaded_share").asDouble());
        assertEquals(0.3, root.at("/rule/most_beam").asDouble());
        assertEquals(5, root.at("/rule/lowest_sun_deg").asDouble());
        assertTrue(root.get("sun_minutes").asInt() > 4000 * 60);
        assertTrue(root.get("parameters").size() >= 4);
        JsonNode remedy = root.get("remedy");
        assertTrue(remedy.get("area_m2").asDouble() > 0);
        assertTrue(remedy.get("breach_minutes_left").asInt() < breach);
        assertEquals(
                remedy.get("ends_every_breach").asBoolean(),
                remedy.get("breach_minutes_left").asInt() == 0);
        assertEquals(3, remedy.get("closest_first").size());
        assertRemedyMendsWhatItSays(remedy);
    }

    /** The lines that are offered are read again, and leave as much breach as was told. */
    private void assertRemedyMendsWhatItSays(JsonNode remedy) throws IOException {
        StringBuilder lines = new StringBuilder("covers:\n");
        remedy.get("covers")
                .forEach(line -> lines.append("  ").append(line.asText()).append('\n'));
        Files.writeString(scenario, TEXT.replace("covers:\n", lines));
        double told = remedy.get("breach_minutes_left").asDouble();
        // corners are written to the centimetre, which moves shadows over sample points for some moments
        assertEquals(told, json().get("breach_minutes").asDouble(), 0.02 * told + 600);
    }

    @Test
    void aStricterRuleIsNeverBrokenForLess() throws IOException {
        int usual = coarse().get("breach_minutes").asInt();
        assertTrue(coarse("--at-least", 3).get("breach_minutes").asInt() >= usual);
        assertTrue(coarse("--shaded-share", 100).get("breach_minutes").asInt() >= usual);
        assertTrue(coarse("--lowest-sun", 0).get("breach_minutes").asInt() >= usual);
        assertTrue(coarse("--lowest-sun", 60).get("breach_minutes").asInt() <= usual);
        // at noon both stand under the roof
        JsonNode high = coarse("--lowest-sun", 80);
        assertTrue(high.get("kept").asBoolean());
        assertTrue(high.get("first_breach").isNull() && high.get("worst_day").isNull());
        assertTrue(high.get("remedy").isNull());
        // one platform cannot be two
        JsonNode one = coarse("--platform", "open");
        assertEquals(one.get("sun_minutes"), one.get("breach_minutes"));
        assertEquals(1, one.get("platforms").size());
    }

    @Test
    void theTextFitsOnAScreenAndSaysTheRuleAndTheTime() {
        Answer answer = limbway("shade", scenario);
        assertEquals(1, answer.code(), answer.err());
        assertTrue(answer.out().startsWith("as drawn: the shade rule is broken: for "), answer.out());
        String flat = answer.out().replaceAll("\\s+", " ");
        assertTrue(flat.contains("75 % or more of it gets at most 30 % of the direct sunlight"), flat);
        assertTrue(flat.contains("Times are standard time of the site, UTC+08:00, without summer time"), flat);
        assertTrue(answer.out().contains("Jan   Feb   Mar"), answer.out());
        assertTrue(answer.out().lines().count() <= 45, answer.out());
        assertTrue(
                answer.out().lines().allMatch(line -> line.length() <= 110 || line.startsWith("  - {roof: ")),
                answer.out());
        Answer kept = limbway("shade", scenario, "--step", 60, "--lowest-sun", 80);
        assertEquals(0, kept.code());
        assertTrue(kept.out().startsWith("as drawn: the shade rule is kept: "), kept.out());
    }

    @Test
    void theFolderHasPageChartsAndTables() throws IOException {
        Path out = folder.resolve("out");
        assertEquals(
                1,
                limbway("shade", scenario, "--step", 60, "--out", out, "--threads", 1)
                        .code());
        String page = Files.readString(out.resolve("shade.html"));
        assertTrue(page.contains("Too little shade"), "the answer");
        assertFalse(page.contains("<script"));
        List<String> ids = Pattern.compile("\\bid=[\"']([^\"']*)[\"']")
                .matcher(page)
                .results()
                .map(found -> found.group(1))
                .toList();
        assertEquals(new LinkedHashSet<>(ids).size(), ids.size(), "names within the page");
        String withoutNames = page.replaceAll("xmlns(:\\w+)?=[\"'][^\"']*[\"']", "");
        assertFalse(withoutNames.contains("src=") || withoutNames.contains("://"), "no address");
        assertTrue(page.contains("content=\"default-src 'none'; script-src 'none'; style-src 'unsafe-inline'"));
        for (String chart : List.of(
                "shade-by-month-and-hour", "shade-by-platform", "sun-paths", "shade-map-year", "shade-map-day")) {
            assertTrue(Files.size(out.resolve("charts/" + chart + ".svg")) > 1000, chart);
            assertTrue(Files.size(out.resolve("charts/" + chart + ".png")) > 1000, chart);
            assertTrue(page.contains("id=\"" + chart + "\""), chart);
        }
        JsonNode data = new ObjectMapper().readTree(Files.readString(out.resolve("data/datapackage.json")));
        assertEquals("limbway-shade", data.get("name").asText());
        for (JsonNode table : data.get("resources")) {
            List<String> lines = Files.readAllLines(
                    out.resolve("data").resolve(table.get("path").asText()));
            List<String> fields = new ArrayList<>();
            table.at("/schema/fields")
                    .forEach(field -> fields.add(field.get("name").asText()));
            assertEquals(String.join(",", fields), lines.get(0));
            assertTrue(lines.size() > 12, table.get("path").asText());
        }
        assertTrue(Files.exists(out.resolve("shade.json")));
    }

    @Test
    void theNumberOfThreadsChangesNoByte() throws IOException {
        limbway("shade", scenario, "--step", 60, "--out", folder.resolve("one"), "--threads", 1);
        limbway("shade", scenario, "--step", 60, "--out", folder.resolve("two"), "--threads", 2);
        List<Path> files;
        try (Stream<Path> tree = Files.walk(folder.resolve("one"))) {
            files = tree.filter(Files::isRegularFile).sorted().toList();
        }
        assertTrue(files.size() > 15, "files = " + files.size());
        for (Path path : files) {
            Path twin = folder.resolve("two").resolve(folder.resolve("one").relativize(path));
            assertArrayEquals(Files.readAllBytes(path), Files.readAllBytes(twin), twin.toString());
        }
    }

    @Test
    void whatIsOutOfRangeIsRefusedWithWhatIsAllowed() {
        refused("--step", "7", "minutes that divide an hour: 1, 2, 3, 4, 5, 6, 10, 12, 15, 20, 30 or 60");
        refused("--year", "1899", "a year from 1900 to 2200");
        refused("--at-least", "0", "a whole number from 1 to 2147483647");
        refused("--shaded-share", "0", "a percentage from 1 to 100, such as 75");
        refused("--most-beam", "100", "a percentage from 0 to 99, such as 30");
        refused("--lowest-sun", "90", "an angle from 0 to 89, in degrees");
        refused("--lowest-sun", "NaN", "an angle from 0 to 89, in degrees");
        refused("--year", "soon", "a year from 1900 to 2200");
    }

    private void refused(String option, String value, String allowed) {
        Answer answer = limbway("shade", scenario, option, value);
        assertEquals(2, answer.code());
        assertEquals(
                "limbway: " + option + " cannot be that\n  found    " + value + "\n  allowed  " + allowed
                        + "\n  mend     see limbway shade --help\n",
                answer.err());
    }

    @Test
    void anUnknownPlatformIsGuessed() {
        Answer answer = limbway("shade", scenario, "--platform", "opne");
        assertEquals(2, answer.code());
        assertEquals("""
                limbway: there is no platform of that name
                  found    "opne"
                  allowed  low, next, open
                  mend     did you mean "open"?
                """, answer.err());
    }

    @Test
    void aLayoutWithoutPlatformsBreaksTheRuleAndSaysWhy() throws IOException {
        Path bare = TinyScenario.write(folder);
        Answer answer = limbway("shade", bare, "--step", 60, "--out", folder.resolve("bare"));
        assertEquals(1, answer.code(), answer.err());
        assertTrue(answer.out().contains("there is no platform in this layout\n"), answer.out());
    }

    @Test
    void withWeatherTheHottestSupportsAreToldAndWithoutNot() throws IOException {
        assertTrue(coarse().get("heat").isNull());
        Files.writeString(
                scenario,
                TEXT.replace(
                                "ground: ",
                                "weather: {monthly-max: [30, 30, 31, 32, 32, 32, 32, 32, 31, 31, 31, 30], "
                                        + "monthly-min: [23, 23, 23, 24, 24, 24, 23, 23, 23, 23, 23, 23], wind: 1 m/s}\nground: ")
                        .replace(
                                "{pole: prop, at: [10, 5], height: 5, diameter: 0.08",
                                "{pole: prop, at: [10, 5], height: 5, diameter: 0.05"));
        JsonNode root = coarse();
        JsonNode heat = root.get("heat");
        assertEquals(4, heat.get("supports").size());
        double hottest = heat.at("/supports/0/hottest_c").asDouble();
        assertTrue(hottest > 35 && hottest < 80, "hottest = " + hottest);
        for (JsonNode support : heat.get("supports")) {
            // solid timber follows within a quarter of an hour up to 72 mm
            assertEquals(
                    support.get("diameter_m").asDouble() < 0.072,
                    support.get("follows_within_15_min").asBoolean());
        }
        for (JsonNode row : heat.get("comparison")) {
            assertTrue(row.get("surface_c").asDouble() > heat.get("air_c").asDouble(), row.toString());
        }
        assertTrue(heat.get("burns").asText().contains("skin of human adults"));
        assertTrue(root.get("parameters").findValuesAsText("name").contains("weather.wind"));
        Path out = folder.resolve("hot");
        Answer answer = limbway("shade", scenario, "--step", 60, "--out", out);
        String flat = answer.out().replaceAll("\\s+", " ");
        assertTrue(flat.contains("hottest supports on ") && flat.contains("white paint on steel"), flat);
        assertTrue(flat.contains("ISO 13732-1 from memory"), flat);
        assertTrue(flat.contains("on the side to the sun (thick: hours behind the sun)"), flat);
        // 4 supports, 24 hours
        assertEquals(
                1 + 4 * 24,
                Files.readAllLines(out.resolve("data/support_heat.csv")).size());
        assertTrue(Files.readString(out.resolve("shade.html")).contains("id=\"heat\""));
    }

    @Test
    void anInterruptedAuditSaysThatNothingIsSaved() {
        Thread.currentThread().interrupt();
        Answer answer = limbway("shade", scenario);
        assertEquals(3, answer.code(), answer.out());
        assertEquals("limbway: interrupted before the whole year was looked at\n  saved    nothing\n", answer.err());
        assertEquals("", answer.out());
    }
}
