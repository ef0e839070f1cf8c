package limbway.reports.command;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

import javax.xml.parsers.DocumentBuilderFactory;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import limbway.model.body.BodyCatalogue;
import limbway.reports.command.TinyScenario.Answer;

import static limbway.reports.command.TinyScenario.limbway;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Each command from its words to its files. */
class CommandsTest {

    @TempDir
    Path folder;

    private Path scenario;

    @BeforeEach
    void write() throws IOException {
        scenario = TinyScenario.write(folder);
    }

    private static JsonNode json(Path file) throws IOException {
        return new ObjectMapper().readTree(Files.readString(file));
    }

    private Answer run(String out, Object... more) {
        Object[] args = Stream.concat(
                        Stream.of("run", scenario, "--out", folder.resolve(out), "--replications", 3, "--days", 1),
                        Stream.of(more))
                .toArray();
        return limbway(args);
    }

    @Test
    void checkListsTheGapAndEndsWithoutAnythingToMend() throws IOException {
        Path file = folder.resolve("check.json");
        Answer answer = limbway("check", scenario, "--json", file);
        assertEquals(0, answer.code(), answer.err());
        assertTrue(
                answer.out()
                        .contains(
                                "caution  ground-only: tray, for every animal: only over the ground from cup, roof, bed-1 "
                                        + "and 1 more, because prop and east are 2.5 m apart (juvenile reaches 1.1 m, others "
                                        + "no less). Mend: close the gap to 1.1 m or less, for example with a rope from prop to "
                                        + "east\n"),
                answer.out());
        JsonNode root = json(file);
        assertEquals(160, root.get("ground_m2").asDouble(), 1e-9);
        // 5 m to the highest thing, and what the female reaches above it
        double grossM3 = 160
                * (5
                        + BodyCatalogue.standard()
                                .find("adult female")
                                .orElseThrow()
                                .overheadReachM());
        assertEquals(grossM3, root.get("gross_m3").asDouble(), 1e-9);
        double femaleM3 = root.get("usable_m3").get("adult female and infant").asDouble();
        double juvenileM3 = root.get("usable_m3").get("juvenile").asDouble();
        assertTrue(grossM3 > femaleM3 && femaleM3 > juvenileM3 && juvenileM3 > 160, femaleM3 + ", " + juvenileM3);
        JsonNode details = root.get("usable").get("juvenile");
        assertTrue(details.get("standard_error_m3").asDouble() < 0.002 * juvenileM3, details.toString());
        assertTrue(answer.out().contains("\nwithin reach, of "), answer.out());
        JsonNode gap = root.get("findings").get(0);
        assertEquals("ground-only", gap.get("kind").asText());
        assertEquals("caution", gap.get("weight").asText());
        assertEquals("tray", gap.get("place").asText());
        assertEquals("adult female and infant", gap.get("body").asText());
        assertEquals(2.5, gap.get("figure").asDouble(), 1e-9);
        assertEquals("m", gap.get("unit").asText());
        assertTrue(gap.hasNonNull("text") && gap.hasNonNull("mend"));
        // the console tells it once, the file for each body
        assertEquals("juvenile", root.get("findings").get(1).get("body").asText());
        assertEquals("tray", root.get("findings").get(1).get("place").asText());
    }

    @Test
    void checkEndsWithOneWhereSomethingMustBeMended() throws IOException {
        Path dry = Files.writeString(
                folder.resolve("dry.yaml"),
                TinyScenario.TEXT.replace("  - {water: cup, on: west at 3, portions: 2 at once}\n", ""));
        Answer answer = limbway("check", dry);
        assertEquals(1, answer.code(), answer.err());
        assertTrue(answer.out()
                .startsWith("mend     none: there is no water for 2 animals. Mend: add places of kind water"));
    }

    @Test
    void aRunWithoutWaterSaysSoBeforeItsNumbers() throws IOException {
        scenario = Files.writeString(
                folder.resolve("dry.yaml"),
                TinyScenario.TEXT.replace("  - {water: cup, on: west at 3, portions: 2 at once}\n", ""));
        Answer answer = run("dry", "--alone");
        assertEquals(0, answer.code(), answer.err());
        assertTrue(answer.out().contains("the animals cannot have all they need in this layout"), answer.out());
        String page = Files.readString(folder.resolve("dry/report.html"));
        int said = page.indexOf("there is no water for 2 animals");
        assertTrue(said > 0 && said < page.indexOf("id=\"answer\""));
    }

    @Test
    void explainNamesTheGapAndTheRoutes() throws IOException {
        Path file = folder.resolve("why.json");
        Answer answer =
                limbway("explain", scenario, "--body", "juvenile", "--from", "cup", "--to", "tray", "--json", file);
        assertEquals(0, answer.code(), answer.err());
        JsonNode root = json(file);
        assertTrue(root.get("cheapest_mj").asLong() > 0);
        assertTrue(root.get("cheapest_offground_mj").isNull());
        assertTrue(root.get("ground_temptation_mj").isNull());
        assertEquals(0, root.get("p_offground").asDouble());
        assertTrue(root.get("route").size() > 2);
        assertEquals(0, root.get("route_offground").size());
        assertTrue(root.get("sentence").asText().endsWith("prop and east are 2.5 m apart and this body reaches 1.1 m"));
        assertTrue(
                answer.out().contains("  off the ground:  no way\n  0 % of such trips are made off the ground.\n"),
                answer.out());
        assertTrue(
                answer.out()
                        .contains(
                                "  To try: close the gap to 1.1 m or less, for example with a rope from prop to east.\n"),
                answer.out());
        assertTrue(answer.out().contains(" s: west, "), answer.out());
        long parts = 0;
        for (JsonNode part : root.get("parts")) {
            parts += part.asLong();
        }
        assertEquals(root.get("cheapest_mj").asLong(), parts);
    }

    @Test
    void explainAgreesWithTheExportedGraph() throws IOException {
        Path file = folder.resolve("why.json");
        limbway(
                "explain",
                scenario,
                "--variant",
                "joined",
                "--body",
                "juvenile",
                "--from",
                "cup",
                "--to",
                "tray",
                "--json",
                file);
        Path out = folder.resolve("graph");
        assertEquals(
                0,
                limbway("graph", scenario, "--variant", "joined", "--out", out).code());
        List<String> moves = Files.readAllLines(out.resolve("moves.csv"));
        assertEquals(
                "from,to,mode,length_m,rise_m,gap_m,on_ground,mj:adult female and infant,mj:juvenile", moves.get(0));
        JsonNode root = json(file);
        JsonNode route = root.get("route_offground");
        long sum = 0;
        for (int i = 1; i < route.size(); i++) {
            String pair = route.get(i - 1).asInt() + "," + route.get(i).asInt() + ",";
            sum += moves.stream()
                    .filter(line -> line.startsWith(pair) && !line.endsWith(",") && line.contains(",false,"))
                    .mapToLong(line -> Long.parseLong(line.substring(line.lastIndexOf(',') + 1)))
                    .min()
                    .orElseThrow();
        }
        assertEquals(root.get("cheapest_offground_mj").asLong(), sum);
        assertEquals(
                "hold,x_m,y_m,z_m,on_ground,support",
                Files.readAllLines(out.resolve("holds.csv")).get(0));
        List<String> resources = Files.readAllLines(out.resolve("resources.csv"));
        assertEquals("resource,kind,hold", resources.get(0));
        assertTrue(resources.stream()
                .anyMatch(line -> line.equals("cup,water," + route.get(0).asInt())));
    }

    @Test
    void graphMlIsWellFormed() throws Exception {
        Path out = folder.resolve("graphml");
        assertEquals(
                0,
                limbway("graph", scenario, "--format", "graphml", "--out", out).code());
        var document = DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(out.resolve("graph.graphml").toFile());
        assertEquals("graphml", document.getDocumentElement().getTagName());
        assertTrue(document.getElementsByTagName("edge").getLength() > 100);
    }

    @Test
    void glbIsOneBinaryFileAndTheAnswerNamesIt() throws IOException {
        Path out = folder.resolve("glb");
        Path file = folder.resolve("graph.json");
        Answer answer = limbway("graph", scenario, "--format", "glb", "--out", out, "--json", file);
        assertEquals(0, answer.code(), answer.err());
        assertEquals("wrote enclosure.glb to " + out + "\n", answer.out());
        assertEquals("enclosure.glb", json(file).at("/files/0").asText());
        byte[] bytes = Files.readAllBytes(out.resolve("enclosure.glb"));
        assertEquals("glTF", new String(bytes, 0, 4, StandardCharsets.US_ASCII));
    }

    @Test
    void runWritesTheReportItsChartsAndItsData() throws IOException {
        Path file = folder.resolve("run.answer.json");
        Answer answer = run("report", "--json", file);
        assertEquals(0, answer.code(), answer.err());
        Path out = folder.resolve("report");
        for (String name : List.of(
                "report.html", "run.json", "run-times.json", "data/datapackage.json", "data/displacements.csv")) {
            assertTrue(Files.size(out.resolve(name)) > 0, name);
        }
        for (String table : List.of(
                "trips",
                "stays",
                "reserves",
                "stocks",
                "measures",
                "ground_use",
                "support_use",
                "ground_cells",
                "route_cards")) {
            assertTrue(
                    Files.readAllLines(out.resolve("data").resolve(table + ".csv"))
                                    .size()
                            > 1,
                    table);
        }
        assertTrue(Files.exists(out.resolve("charts/enclosure.svg")));
        assertTrue(Files.exists(out.resolve("charts/enclosure.png")));
        JsonNode root = json(file);
        for (String aspect : List.of("distance", "time", "energy")) {
            for (String end : List.of("mean", "lo", "hi")) {
                assertTrue(root.at("/offground/" + aspect + "/" + end).isNumber(), aspect + " " + end);
                assertTrue(
                        root.at("/offground/by_body/juvenile/" + aspect + "/" + end)
                                .isNumber(),
                        aspect);
            }
        }
        assertEquals(1, root.at("/time_elevated/threshold_m").asDouble());
        assertTrue(root.at("/time_elevated/mean").isNumber());
        assertTrue(root.at("/waiting_min_per_day/mean").isNumber());
        assertTrue(root.at("/displacements_per_day/hi").isNumber());
        assertEquals(3, root.get("replications").asInt());
        assertEquals(1, root.get("days").asInt());
        double joined = root.at("/other_layouts/0/offground/distance/mean").asDouble();
        assertTrue(joined > root.at("/offground/distance/mean").asDouble());
        JsonNode record = json(out.resolve("run.json"));
        assertEquals(64, record.get("sha256").asText().length());
        assertTrue(record.get("parameters").size() > 30);
    }

    @Test
    void theNumberOfThreadsChangesNoByte() throws IOException {
        assertEquals(0, run("one", "--threads", 1).code());
        assertEquals(0, run("two", "--threads", 2).code());
        assertEquals(0, run("again", "--threads", 2).code());
        for (String other : List.of("two", "again")) {
            List<Path> files;
            try (Stream<Path> tree = Files.walk(folder.resolve("one"))) {
                files = tree.filter(Files::isRegularFile)
                        .filter(path -> !path.endsWith("run-times.json"))
                        .sorted()
                        .toList();
            }
            assertTrue(files.size() > 15, "files = " + files.size());
            for (Path path : files) {
                Path twin = folder.resolve(other).resolve(folder.resolve("one").relativize(path));
                assertArrayEquals(Files.readAllBytes(path), Files.readAllBytes(twin), twin.toString());
            }
        }
    }

    @Test
    void anotherSeedGivesAnotherRun() throws IOException {
        run("one", "--alone");
        run("other", "--alone", "--seed", 2);
        String one = Files.readString(folder.resolve("one/data/trips.csv"));
        String other = Files.readString(folder.resolve("other/data/trips.csv"));
        assertTrue(!one.equals(other));
    }

    @Test
    void anInterruptedRunSavesWhatIsFinishedOrSaysThatNothingIs() throws IOException {
        Thread.currentThread().interrupt();
        // so many that they cannot all be finished before the interruption is noticed
        Answer answer = limbway("run", scenario, "--out", folder.resolve("stopped"), "--replications", 5000);
        assertEquals(3, answer.code());
        if (Files.exists(folder.resolve("stopped/report.html"))) {
            assertTrue(answer.err().contains("limbway: interrupted\n  saved    a report in "), answer.err());
        } else {
            assertEquals(
                    "limbway: interrupted before the first repetition was finished\n  saved    nothing\n",
                    answer.err());
        }
    }
}
