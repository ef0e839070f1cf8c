package limbway.reports.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import limbway.model.enclosure.ResourceKind;
import limbway.model.parameter.Assumable;
import limbway.model.study.Variant;
import limbway.reports.command.TinyScenario.Answer;
import limbway.scenarios.Reading;
import limbway.scenarios.ScenarioReader;
import limbway.sim.experiment.Assumptions;
import limbway.sim.experiment.Situations;
import limbway.sim.experiment.placement.CandidatePlaces;
import limbway.sim.experiment.placement.Placing;
import limbway.sim.experiment.placement.PlacingTask;

import static limbway.reports.command.TinyScenario.limbway;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

class PlaceCommandTest {

    private static final ObjectMapper JSON = new ObjectMapper();

    @TempDir
    Path folder;

    private Path scenario;

    @BeforeEach
    void write() throws IOException {
        scenario = TinyScenario.write(folder);
    }

    private Answer place(Object... more) {
        return limbway(Stream.concat(
                        Stream.of(
                                "place",
                                scenario,
                                "--days",
                                1,
                                "--warm-up",
                                0,
                                "--replications",
                                3,
                                "--simulate",
                                4,
                                "--fresh",
                                3),
                        Stream.of(more))
                .toArray());
    }

    private void placing(String section) throws IOException {
        Files.writeString(scenario, TinyScenario.TEXT + "placing:\n" + section.indent(2));
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile)
                    .map(folder::relativize)
                    .sorted()
                    .toList();
        }
    }

    private static double mean(JsonNode layout, String measure) {
        return layout.at(measure + "/mean").asDouble();
    }

    @Test
    void theAnswerHasWhatOtherProgramsRelyOn() throws IOException {
        Path json = folder.resolve("answer.json");
        Answer answer = place("--json", json);
        assertEquals(0, answer.code(), answer.err());
        JsonNode root = JSON.readTree(Files.readString(json));
        JsonNode best = root.get("best");
        assertEquals(4, best.size());
        assertTrue(
                root.get("evaluated").isIntegralNumber()
                        && root.get("evaluated").asInt() > 4,
                root.toString());
        assertTrue(root.get("evaluated_all").asBoolean());
        assertEquals(4, root.get("lived_in").get("layouts").asInt());
        assertTrue(root.get("lived_in").get("replications").asInt() >= 12);
        for (JsonNode layout : best) {
            assertEquals("tray", layout.get("places").get(0).get("place").asText());
            assertTrue(layout.get("offground").get("lo").isNumber(), layout.toString());
            assertTrue(layout.get("waiting_at_food_min").get("mean").isNumber(), layout.toString());
            JsonNode each = layout.get("travel_kj_by_animal");
            assertEquals(2, each.size());
            // the mean animal spends the mean of the two
            assertEquals(
                    (each.get("Ibu").get("mean").asDouble()
                                    + each.get("Anak").get("mean").asDouble())
                            / 2,
                    layout.get("travel_kj").get("mean").asDouble(),
                    1e-3);
        }
        for (JsonNode layout : best) {
            boolean beaten = false;
            boolean hardest = true;
            for (JsonNode other : best) {
                double off = mean(other, "/offground") - mean(layout, "/offground");
                double wait = mean(layout, "/waiting_at_food_min") - mean(other, "/waiting_at_food_min");
                double energy = mean(layout, "/travel_kj") - mean(other, "/travel_kj");
                beaten |= Math.min(off, Math.min(wait, energy)) >= 0 && Math.max(off, Math.max(wait, energy)) > 0;
                hardest &= mean(other, "/travel_kj_by_animal/Ibu") <= mean(layout, "/travel_kj_by_animal/Ibu");
            }
            assertEquals(!beaten, layout.get("on_front").asBoolean(), layout.toString());
            boolean told = false;
            for (JsonNode animal : layout.get("hardest_for")) {
                told |= animal.asText().equals("Ibu");
            }
            assertEquals(hardest, told, layout.toString());
        }
        JsonNode guarantee = root.get("guarantee");
        assertEquals(0.02, guarantee.get("indifference").asDouble());
        assertEquals(
                guarantee.get("reached").asBoolean(),
                guarantee.get("probability").isNumber());
        // the tray stands beyond a gap: anywhere on the near side is better
        assertTrue(
                root.get("fresh").get("better").asBoolean(), root.get("fresh").toString());
        assertTrue(root.get("fresh").get("difference").get("lo").asDouble() > 0.1);
        String said = answer.out().replaceAll("\\n +", " ");
        assertTrue(said.startsWith("Best of 4 layouts lived in: moving tray from east at a height of 4 m to "), said);
        assertTrue(said.contains("it held up."), said);
        // "now" in the table and "as it stands" in the answer are two figures, so both are named
        assertTrue(
                said.contains(
                        "The figures above are of fresh chance; those of the table of layouts are of the chance of the search"),
                said);
        assertTrue(said.contains("- {move: tray, on: "), said);
    }

    @Test
    void allFilesAreTheSameForAnyNumberOfThreadsAndAfterAnInterruption() throws IOException {
        Path one = folder.resolve("one");
        assertEquals(0, place("--threads", 1, "--out", one).code());
        List<Path> files = files(one);
        assertEquals(
                List.of(
                        "charts/front.png",
                        "charts/front.svg",
                        "data/datapackage.json",
                        "data/places.csv",
                        "data/placings.csv",
                        "notebook.tsv",
                        "place.html",
                        "place.json",
                        "place.pdf"),
                files.stream()
                        .map(Path::toString)
                        .map(name -> name.replace('\\', '/'))
                        .toList());
        for (int threads : new int[] {2, 7}) {
            Path other = folder.resolve("threads-" + threads);
            assertEquals(0, place("--threads", threads, "--out", other).code());
            requireSame(one, other, files);
        }
        // as if the process had ended in the middle of a line
        Path resumed = Files.createDirectories(folder.resolve("resumed"));
        String notes = Files.readString(one.resolve("notebook.tsv"));
        Files.writeString(resumed.resolve("notebook.tsv"), notes.substring(0, notes.length() / 2));
        assertEquals(0, place("--threads", 2, "--out", resumed).code());
        requireSame(one, resumed, files);
        // nothing is left to live: the notes do not grow
        assertEquals(0, place("--threads", 2, "--out", one).code());
        assertEquals(notes, Files.readString(one.resolve("notebook.tsv")));
    }

    private static List<String> notes(Path notebook) throws IOException {
        return Files.readAllLines(notebook).stream().sorted().toList();
    }

    private static void requireSame(Path one, Path other, List<Path> files) throws IOException {
        assertEquals(files, files(other));
        for (Path file : files) {
            if (file.endsWith("notebook.tsv")) {
                // each repetition is noted when it ends, so the order is that of the clock
                assertEquals(notes(one.resolve(file)), notes(other.resolve(file)));
                continue;
            }
            assertArrayEquals(
                    Files.readAllBytes(one.resolve(file)), Files.readAllBytes(other.resolve(file)), file.toString());
        }
    }

    @Test
    void anInterruptedPlacingSaysWhatWasSaved() {
        Path out = folder.resolve("out");
        Thread.currentThread().interrupt();
        Answer answer = place("--out", out);
        assertEquals(3, answer.code());
        assertEquals(
                "limbway: interrupted\n  saved    what was lived in, in " + out.resolve("notebook.tsv")
                        + "; the same command goes on from there\n",
                answer.err());
        assertFalse(Files.exists(out.resolve("place.html")));
    }

    private static Reading.Read read(Path file) {
        return (Reading.Read)
                ScenarioReader.read(file, new Assumable(Assumptions.standard().parameters(), Situations.all()));
    }

    /** What is to be pasted gives the layout that was lived in, for every candidate and every kind of place. */
    @Test
    void thePastedLinesGiveTheSameLayout() throws IOException {
        Variant base = read(scenario).study().base();
        List<PlacingTask> tasks = List.of(
                PlacingTask.moving(ResourceKind.FOOD, List.of("tray")),
                PlacingTask.adding(ResourceKind.FOOD, 1, false, base.enclosure()),
                PlacingTask.adding(ResourceKind.SHADE, 1, true, base.enclosure()));
        int tried = 0;
        for (PlacingTask task : tasks) {
            List<Placing> placings = new ArrayList<>();
            CandidatePlaces.along(base.enclosure(), 1.7).stream()
                    .filter(candidate -> !task.withDeck() || candidate.on().equals("west"))
                    .forEach(candidate -> placings.add(new Placing(task, List.of(candidate))));
            for (Placing placing : placings) {
                StringBuilder text = new StringBuilder(TinyScenario.TEXT).append("  - name: placed\n    changes:\n");
                placing.lines(base)
                        .forEach(line -> text.append("      - ").append(line).append('\n'));
                Path pasted = Files.writeString(folder.resolve("pasted.yaml"), text);
                Variant variant = read(pasted).study().find("placed").orElseThrow();
                Variant expected = placing.applyTo(base);
                assertEquals(
                        expected.enclosure().platforms(), variant.enclosure().platforms(), text.toString());
                assertEquals(
                        expected.enclosure().resources(), variant.enclosure().resources(), text.toString());
                assertEquals(
                        expected.enclosure().supports(), variant.enclosure().supports(), text.toString());
                assertEquals(expected.keeping(), variant.keeping(), text.toString());
                assertEquals(expected.added(), variant.added(), text.toString());
                tried++;
            }
        }
        assertTrue(tried > 15, "tried: " + tried);
    }

    @Test
    void candidatesAndRulesOfTheScenarioAreUsed() throws IOException {
        placing("""
                candidates: [west at 2, west at 4.5, line middle]
                keeper-reach: 4.2
                """);
        Path json = folder.resolve("answer.json");
        Answer answer = place("--json", json);
        assertEquals(0, answer.code(), answer.err());
        JsonNode root = JSON.readTree(Files.readString(json));
        assertEquals(3, root.get("candidates").get("considered").asInt());
        assertEquals(1, root.get("candidates").get("left_out_by_keeper_reach").asInt());
        assertEquals(2, root.get("best").size());
    }

    @Test
    void aRuleThatLeavesTooFewIsNamed() throws IOException {
        placing("candidates: [west at 2, west at 4.5]");
        Files.writeString(
                scenario,
                Files.readString(scenario).replace("resources:\n", "resources:\n  - {food: bowl, on: west at 1}\n"));
        Answer answer = place("--keeper-reach", "2.0");
        assertEquals(2, answer.code());
        assertEquals("""
                limbway: a rule leaves too few places
                  found    keeper-reach 2 m leaves 1 of the 2 places asked for
                  mend     ease it, or give other candidates
                """, answer.err());
    }

    @Test
    void candidatesThatCannotBeReachedAreNamedWithTheBodies() throws IOException {
        placing("candidates: [west at 2, \"line middle\", [12, 2, 6]]");
        Answer answer = place();
        assertEquals(2, answer.code());
        assertEquals("""
                limbway: candidates cannot be reached, or not left, by all who go there
                  found    [12, 2, 6] not by adult female and infant, juvenile
                  mend     take them out, or add what these bodies can climb; limbway check tells what stops them
                """, answer.err());
    }

    @Test
    void morePlacesThanCandidatesAreRefused() throws IOException {
        placing("candidates: [west at 2, west at 3]");
        Answer answer = place("--add", 3, "--kind", "water");
        assertEquals(2, answer.code());
        assertEquals("""
                limbway: more places are asked for than there are candidates
                  found    3 places, 2 candidates
                  allowed  at most 2 places
                  mend     give more candidates, or ask for fewer places
                """, answer.err());
    }

    @Test
    void tooManyCandidatesAreRefusedWithTheLeastSpacingThatDoes() throws IOException {
        Path forest = Path.of("..", "scenarios", "examples", "forest.yaml");
        Answer answer = limbway("place", forest);
        assertEquals(2, answer.code());
        Matcher told = Pattern.compile("""
                limbway: there are too many candidates
                  found    ([0-9 ]+), one every 1 m
                  allowed  at most 2 000
                  mend     --spacing ([0-9.]+) makes few enough; or give the best under placing in the scenario
                """).matcher(answer.err());
        assertTrue(told.matches(), answer.err());
        double spacingM = Double.parseDouble(told.group(2));
        Variant base = read(forest).study().base();
        assertTrue(CandidatePlaces.along(base.enclosure(), spacingM).size() <= 2_000);
        assertTrue(CandidatePlaces.along(base.enclosure(), spacingM - 0.5).size() > 2_000);
    }

    @Test
    void whereNothingStandsThatIsSaid() throws IOException {
        Files.writeString(scenario, """
                title: A bare yard
                site: {latitude: 1.5, longitude: 110.5, time-zone: Asia/Kuching}
                ground: {outline: [[0, 0], [16, 0], [16, 10], [0, 10]], surface: grass}
                supports: []
                resources:
                  - {food: tray, at: [12, 5, 0], portions: 2 at once}
                  - {nest: bed, at: [3, 5, 0]}
                animals:
                  - {name: Ibu, body: adult female}
                keepers:
                  - {feed: tray, at: "08:00", energy-kj: 5200}
                """);
        Answer answer = place();
        assertEquals(2, answer.code());
        assertEquals("""
                limbway: there is nothing that a place could be put on
                  found    no support and no platform longer than 1 m, the distance of candidates
                  allowed  supports or platforms
                  mend     add some to the scenario, lower --spacing, or give candidates under placing
                """, answer.err());
        assertTrue(place("--add", 1, "--kind", "platform")
                .err()
                .contains("there is nothing firm that a deck could stand on"));
    }

    @Test
    void oneCandidateAloneIsNoChoice() throws IOException {
        placing("candidates: [west at 2]");
        Answer answer = place();
        assertEquals(2, answer.code());
        assertEquals("""
                limbway: there is only one candidate, so there is nothing to choose
                  found    west at 2 m
                  allowed  two or more
                  mend     give more candidates, or write the move into a variant and compare
                """, answer.err());
    }

    @Test
    void aBudgetThatIsTooSmallSaysWhatItWouldTake() throws IOException {
        Answer refused = place("--budget", 11);
        assertEquals(2, refused.code());
        assertEquals("""
                limbway: the budget is too small to begin
                  found    11 repetitions
                  allowed  at least 12: 3 of each of 4 combinations
                  mend     raise --budget, or lower --simulate
                """, refused.err());
        // beyond the gap the share varies; on the near side nothing touches the ground
        placing("candidates: [east at 2, east at 3, west at 2, west at 3]");
        Path json = folder.resolve("answer.json");
        Answer unsure = place("--budget", 12, "--indifference", "0.1", "--confidence", "99.9", "--json", json);
        assertEquals(0, unsure.code(), unsure.err());
        JsonNode guarantee = JSON.readTree(Files.readString(json)).get("guarantee");
        // three repetitions and a tenth of a point: h² is 2(0.002/3)^-1 - 2 = 2998, so hardly any spread lets one be
        // dropped
        assertFalse(guarantee.get("reached").asBoolean());
        assertTrue(guarantee.get("probability").isNull());
        assertEquals(0.001, guarantee.get("indifference").asDouble());
        assertEquals(0.999, guarantee.get("asked_probability").asDouble());
        assertTrue(guarantee.get("budget_that_would_do").asLong() > 12);
        assertTrue(unsure.out().contains("Not sure to 99.9 %: the budget of 12 repetitions ended"), unsure.out());
    }

    @Test
    void oneLayoutAloneIsNotGuaranteed() throws IOException {
        placing("candidates: [west at 2, west at 4.5]\nkeeper-reach: 3");
        Path json = folder.resolve("answer.json");
        Answer answer = place("--json", json);
        assertEquals(0, answer.code(), answer.err());
        JsonNode guarantee = JSON.readTree(Files.readString(json)).get("guarantee");
        assertTrue(guarantee.has("probability") && guarantee.get("probability").isNull(), guarantee.toString());
        assertEquals(0.02, guarantee.get("indifference").asDouble());
        assertTrue(answer.out().contains("Only one layout was lived in"), answer.out());
    }

    @Test
    void sharesInPlaceOfPerCentAreRefused() {
        Answer confidence = place("--confidence", "0.95");
        assertEquals(2, confidence.code());
        assertTrue(
                confidence.err().contains("a percentage from 51 to 99.9, such as 95; a share such as 0.95 is not one"),
                confidence.err());
        Answer indifference = place("--indifference", "0.02");
        assertEquals(2, indifference.code());
        assertTrue(
                indifference
                        .err()
                        .contains("percentage points from 0.1 to 50, such as 2; a share such as 0.02 is not one"),
                indifference.err());
    }

    private static String changes(JsonNode root) {
        StringBuilder lines = new StringBuilder();
        root.get("best").get(0).get("changes").forEach(line -> lines.append("      - ")
                .append(line.asText())
                .append('\n'));
        return lines.toString();
    }

    /** The second answer is about the layout with the first in it, and can be written below it. */
    @Test
    void placesCanBeAddedOnceMoreToTheFirstAnswer() throws IOException {
        for (String kind : List.of("food", "platform")) {
            Path one = folder.resolve(kind + "-1.json");
            Path two = folder.resolve(kind + "-2.json");
            Files.writeString(scenario, TinyScenario.TEXT);
            Answer first = place("--add", 1, "--kind", kind, "--spacing", 2, "--json", one);
            assertEquals(0, first.code(), first.err());
            String begun = TinyScenario.TEXT + "  - name: once\n    changes:\n"
                    + changes(JSON.readTree(Files.readString(one)));
            Files.writeString(scenario, begun);
            Answer second = place("--variant", "once", "--add", 1, "--kind", kind, "--spacing", 2, "--json", two);
            assertEquals(0, second.code(), second.err());
            JsonNode root = JSON.readTree(Files.readString(two));
            String id = kind.equals("food") ? "new-food-2" : "new-shade-2";
            assertEquals(
                    id,
                    root.get("best").get(0).get("places").get(0).get("place").asText());
            Files.writeString(scenario, begun + changes(root));
            Variant twice = read(scenario).study().find("once").orElseThrow();
            assertTrue(twice.enclosure().resources().stream()
                    .anyMatch(resource -> resource.id().equals(id)));
            double fed = twice.feedings().stream()
                    .mapToDouble(limbway.model.study.Feeding::energyKj)
                    .sum();
            // two meals of 5200 kJ, each share rounded to a tenth
            assertEquals(10_400, fed, 0.5, kind);
        }
    }

    @Test
    void placesThatDoNotExistAreRefused() {
        Answer answer = place("--move", "try");
        assertEquals(2, answer.code());
        assertTrue(answer.err().contains("did you mean \"tray\"?"), answer.err());
        assertEquals(2, place("--move", "tray,cup").code());
        assertEquals(2, place("--move", "tray", "--add", 1).code());
        assertEquals(2, place("--add", 1, "--kind", "feeder").code());
    }
}
