package limbway.reports.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import limbway.reports.Pole;
import limbway.reports.command.TinyScenario.Answer;
import limbway.reports.measure.NeedsAlone;
import limbway.sim.experiment.Outcome;

import static limbway.reports.command.TinyScenario.limbway;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** What a run says of the worth of places, of its warm-up, of visitors and of what the scenario set. */
class WorthOfARunTest {

    private static final long DAY_S = 86_400;

    @TempDir
    Path folder;

    private Path scenario;

    @BeforeEach
    void write() throws IOException {
        scenario = TinyScenario.write(folder);
    }

    private Answer run(String out, Object... more) {
        return limbway(Stream.concat(
                        Stream.of(
                                "run",
                                scenario,
                                "--out",
                                folder.resolve(out),
                                "--json",
                                folder.resolve(out + ".json"),
                                "--replications",
                                2,
                                "--alone"),
                        Stream.of(more))
                .toArray());
    }

    private JsonNode json(String file) throws IOException {
        return new ObjectMapper().readTree(Files.readString(folder.resolve(file)));
    }

    private List<String> trips(String out) throws IOException {
        return Files.readAllLines(folder.resolve(out).resolve("data/trips.csv"));
    }

    @Test
    void aRunTellsItselfOnceMoreWithNeedsAndEnergyAlone() throws IOException {
        Answer answer = run("on", "--days", 1);
        assertEquals(0, answer.code(), answer.err());
        assertTrue(
                answer.out()
                        .contains(
                                "\nwith needs and energy alone, without what places are assumed to be worth beyond them: "),
                answer.out());
        JsonNode root = json("on.json");
        assertEquals("on", root.get("worth").asText());
        assertTrue(root.at("/worth_off/offground/distance/mean").isNumber());
        assertTrue(root.at("/worth_off/time_elevated/mean").isNumber());
        assertEquals("on", json("on/run.json").get("worth").asText());
        String page = Files.readString(folder.resolve("on/report.html"));
        assertTrue(page.contains("<caption>With and without the worth of places</caption>"));
    }

    /** What stands beside a run with worth is, to the last digit, the run without it. */
    @Test
    void whatStandsBesideIsTheRunWithWorthOff() throws IOException {
        run("on", "--days", 2);
        Answer answer = run("off", "--days", 2, "--worth", "off");
        assertEquals(0, answer.code(), answer.err());
        assertTrue(answer.out().contains("is off the ground, with needs and energy alone\n"), answer.out());
        JsonNode off = json("off.json");
        assertEquals("off", off.get("worth").asText());
        assertFalse(off.has("worth_off"));
        JsonNode beside = json("on.json").get("worth_off");
        assertEquals(off.get("offground"), beside.get("offground"));
        assertEquals(off.get("time_elevated"), beside.get("time_elevated"));
        assertNotEquals(json("on.json").get("time_elevated"), beside.get("time_elevated"));
        assertEquals("off", json("off/run.json").get("worth").asText());
        String page = Files.readString(folder.resolve("off/report.html"));
        assertTrue(page.contains("This run was made with needs and energy alone"));
        assertFalse(page.contains("<caption>With and without the worth of places</caption>"));
    }

    /** Three days of warm-up are the first three days of a run that begins three days earlier, left out. */
    @Test
    void warmedUpDaysAreTheLaterDaysOfALongerRun() throws IOException {
        run("warm", "--days", 2, "--date", "2026-03-24", "--warm-up", 3);
        run("long", "--days", 5, "--date", "2026-03-21", "--warm-up", 0);
        assertEquals(3, json("warm/run.json").get("warm_up_days").asInt());
        assertEquals(0, json("long.json").get("warm_up_days").asInt());
        List<String> expected = new ArrayList<>();
        for (String line : trips("long")) {
            String[] cells = line.split(",", 7);
            if (cells[1].equals("day")) {
                expected.add(line);
            } else if (Integer.parseInt(cells[1]) > 3) {
                cells[1] = Integer.toString(Integer.parseInt(cells[1]) - 3);
                cells[4] = threeDaysEarlier(cells[4]);
                cells[5] = threeDaysEarlier(cells[5]);
                expected.add(String.join(",", cells));
            }
        }
        assertTrue(expected.size() > 20, "trips = " + expected.size());
        assertEquals(expected, trips("warm"));
        run("cold", "--days", 2, "--date", "2026-03-24", "--warm-up", 0);
        assertNotEquals(trips("cold"), trips("warm"));
    }

    private static String threeDaysEarlier(String seconds) {
        int point = seconds.indexOf('.');
        String whole = point < 0 ? seconds : seconds.substring(0, point);
        return Long.parseLong(whole) - 3 * DAY_S + (point < 0 ? "" : seconds.substring(point));
    }

    @Test
    void whatTheScenarioSetIsMarkedAndMovesTheRun() throws IOException {
        run("plain", "--days", 1);
        Files.writeString(
                scenario,
                TinyScenario.TEXT + "situation: moved in lately\nassume: {worth.bedding: 0.17, need.tiring: 300}\n");
        Answer answer = run("set", "--days", 1);
        assertEquals(0, answer.code(), answer.err());
        assertEquals("", marked("plain"));
        assertEquals(
                "need.tiring=300.0 scale.familiar-at-start=0.2 scale.new-at-start=0.2 worth.bedding=0.17 "
                        + "worth.perimeter=0.08 worth.seclusion=0.06",
                marked("set"));
        assertNotEquals(trips("plain"), trips("set"));
    }

    private String marked(String out) throws IOException {
        List<String> marked = new ArrayList<>();
        for (JsonNode parameter : json(out + "/run.json").get("parameters")) {
            if (parameter.get("source").asText().startsWith("set by the scenario; otherwise ")) {
                marked.add(parameter.get("name").asText() + "=" + parameter.get("value"));
            }
        }
        return String.join(" ", marked.stream().sorted().toList());
    }

    @Test
    void whereVisitorsLookInTheRunTellsWhatTheySee() throws IOException {
        run("hidden", "--days", 1);
        assertFalse(json("hidden.json").has("visible"));
        assertFalse(Files.exists(folder.resolve("hidden/data/visibility.csv")));
        Files.writeString(
                scenario,
                TinyScenario.TEXT.replace(
                        "variants:\n",
                        "visitors:\n  - {viewpoint: terrace, at: [8, -2, 1.6], from: \"09:00\", to: \"17:00\"}\nvariants:\n"));
        Answer answer = run("shown", "--days", 1);
        assertEquals(0, answer.code(), answer.err());
        JsonNode visible = json("shown.json").get("visible");
        double seen = visible.at("/overall/mean").asDouble();
        assertTrue(seen > 0);
        assertEquals(1, seen + visible.at("/out_of_sight/mean").asDouble(), 1e-9);
        assertTrue(visible.at("/by_viewpoint/terrace/mean").isNumber());
        assertTrue(visible.at("/by_animal/Anak/overall/mean").isNumber());
        assertTrue(
                Files.readAllLines(folder.resolve("shown/data/visibility.csv")).size() > 5);
        everyColumnIsDescribed("shown");
    }

    /** Waking time is divided into four parts and no more. */
    @Test
    void theActivitiesOfARunMakeUpItsWakingTime() throws IOException {
        run("day", "--days", 2);
        JsonNode activity = json("day.json").get("activity");
        double sum = 0;
        for (String part : List.of("feed", "rest", "move", "other")) {
            assertTrue(activity.at("/" + part + "/lo").isNumber(), part);
            sum += activity.at("/" + part + "/mean").asDouble();
        }
        assertEquals(1, sum, 1e-9);
        assertTrue(activity.at("/feed/mean").asDouble() > 0.01);
        List<String> rows = Files.readAllLines(folder.resolve("day/data/activity.csv"));
        assertEquals("layout,hour,activity,mean,lo,hi,n", rows.get(0));
        // five activities of the day, six of each hour
        assertEquals(0, (rows.size() - 1 - 5) % 6);
        everyColumnIsDescribed("day");
    }

    private void everyColumnIsDescribed(String out) throws IOException {
        int tables = 0;
        for (JsonNode resource : json(out + "/data/datapackage.json").get("resources")) {
            List<String> names = new ArrayList<>();
            for (JsonNode field : resource.at("/schema/fields")) {
                names.add(field.get("name").asText());
                assertTrue(field.get("description").asText().length() > 1, names.toString());
            }
            Path table = folder.resolve(out)
                    .resolve("data")
                    .resolve(resource.get("path").asText());
            assertEquals(String.join(",", names), Files.readAllLines(table).get(0));
            tables++;
        }
        try (Stream<Path> files = Files.list(folder.resolve(out).resolve("data"))) {
            assertEquals(files.filter(file -> file.toString().endsWith(".csv")).count(), tables);
        }
    }

    /** Interrupted between the runs with worth and those without: it says how far each came. */
    @Test
    void whatWasLivedBeforeAnEarlyEndIsTold() {
        Outcome outcome = Pole.outcome(Pole.habitat(), 1, Pole.journal(1), Pole.journal(2));
        var layouts = List.of(Pole.layout("as drawn"));
        assertEquals(
                "2 of 2 repetitions of as drawn; with needs and energy alone 0 of 1 layout",
                new Living.Lived(layouts, List.of(outcome), List.of(), 2, false).told());
        var two = List.of(Pole.layout("as drawn"), Pole.layout("other"));
        assertEquals(
                "2 of 2 repetitions of as drawn, 2 of 2 repetitions of as drawn; with needs and energy alone 1 of 2 "
                        + "layouts",
                new Living.Lived(two, List.of(outcome, outcome), List.of(NeedsAlone.of(outcome, 1)), 2, false).told());
        assertEquals(
                "2 of 5 repetitions of as drawn; 1 layout is left out",
                new Living.Lived(two, List.of(outcome), List.of(), 5, false).told());
    }
}
