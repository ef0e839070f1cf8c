package limbway.reports.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.stream.Stream;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import limbway.model.parameter.Assumable;
import limbway.reports.command.TinyScenario.Answer;
import limbway.reports.data.FileNotebook;
import limbway.reports.measure.criterion.Criteria;
import limbway.reports.measure.sweep.Swept;
import limbway.scenarios.Sweep;
import limbway.scenarios.SweepReading;
import limbway.sim.experiment.Assumptions;
import limbway.sim.experiment.RunSettings;
import limbway.sim.experiment.Situations;

import static limbway.reports.command.TinyScenario.limbway;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

class SweepCommandTest {

    private static final String FULL = """
            sweep:
              variants: [as drawn, joined]
              vary:
                - {of: tray, key: on, in: resources, values: [east at 4, east at 0.5]}
                - {assume: worth.ground-wariness, values: [0, 0.1]}
            """;

    private static final String SPREAD = """
            sweep:
              plan: latin
              points: 4
              vary:
                - {of: line, key: sag, from: 2 %, to: 10 %}
                - {of: tray, key: energy-kj, from: 3000, to: 6000}
            """;

    @TempDir
    Path folder;

    private Path scenario(String sweep) throws IOException {
        return Files.writeString(folder.resolve("tiny.yaml"), TinyScenario.TEXT + sweep);
    }

    private static Answer sweep(Path scenario, Object... more) {
        return limbway(Stream.concat(Stream.of("sweep", scenario, "--days", 1, "--warm-up", 0), Stream.of(more))
                .toArray());
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile)
                    .map(folder::relativize)
                    .sorted()
                    .toList();
        }
    }

    private static void assertSameFiles(Path one, Path other) throws IOException {
        assertEquals(files(one), files(other));
        for (Path file : files(one)) {
            assertArrayEquals(
                    Files.readAllBytes(one.resolve(file)), Files.readAllBytes(other.resolve(file)), file.toString());
        }
    }

    @Test
    void theAnswerHasAllPointsAndWhatTheyMean() throws IOException {
        Path json = folder.resolve("answer.json");
        Path out = folder.resolve("out");
        Answer answer = sweep(scenario(FULL), "--replications", 2, "--json", json, "--out", out);
        assertEquals(0, answer.code(), answer.err());
        JsonNode root = new ObjectMapper().readTree(Files.readString(json));
        assertEquals("full", root.get("plan").asText());
        assertEquals(8, root.get("points").size());
        int measures = new Criteria().all().size();
        assertEquals(measures, root.get("measures").size());
        assertEquals(3 * measures, root.get("effects").size());
        JsonNode first = root.get("points").get(0);
        assertEquals("east at 4", first.get("values").get("tray.on").asText());
        assertEquals("as drawn", first.get("layout").asText());
        assertEquals(
                Swept.ALL,
                root.get("best").get("values").get("worth.ground-wariness").asText());
        assertEquals("joined", root.get("best").get("layout").asText());
        // there is no weather and nobody looks on
        assertTrue(first.get("measures").get("hours_in_heat").isNull());
        assertTrue(first.get("measures").get("visible_share").isNull());
        assertEquals(
                List.of("data/datapackage.json", "data/effects.csv", "data/sweep.csv", "notebook.tsv", "sweep.json"),
                files(out).stream().map(Path::toString).toList());
        List<String> rows = Files.readAllLines(out.resolve("data/sweep.csv"));
        assertEquals("point,tray.on,worth.ground-wariness,layout,measure,unit,mean,lo,hi,n", rows.get(0));
        assertEquals(1 + 8 * measures, rows.size());
        assertTrue(answer.out().contains("4 points, all combinations, in as drawn, joined"), answer.out());
        assertTrue(answer.out().contains("Nobody can choose worth.ground-wariness"), answer.out());
    }

    /** What stands in a sweep is what a run of the same scenario finds, to the last digit that is written. */
    @Test
    void aPointIsWhatARunOfThatScenarioFinds() throws IOException {
        Path json = folder.resolve("answer.json");
        Answer answer = sweep(scenario(FULL), "--replications", 3, "--json", json);
        assertEquals(0, answer.code(), answer.err());
        JsonNode swept = new ObjectMapper()
                .readTree(Files.readString(json))
                .get("points")
                .get(7);
        assertEquals("joined", swept.get("layout").asText());
        Path written = Files.writeString(
                folder.resolve("written.yaml"),
                TinyScenario.TEXT.replace("tray, on: east at 4", "tray, on: east at 0.5")
                        + "assume: {worth.ground-wariness: 0.1}\n");
        Path run = folder.resolve("run.json");
        Answer lived = limbway(
                "run",
                written,
                "--variant",
                "joined",
                "--alone",
                "--replications",
                3,
                "--days",
                1,
                "--warm-up",
                0,
                "--out",
                folder.resolve("run"),
                "--json",
                run);
        assertEquals(0, lived.code(), lived.err());
        JsonNode offGround = new ObjectMapper().readTree(Files.readString(run)).get("offground");
        for (String aspect : List.of("distance", "time", "energy")) {
            assertEquals(offGround.get(aspect), swept.get("measures").get("offground_" + aspect));
        }
    }

    @Test
    void allFilesAreTheSameForAnyNumberOfThreads() throws IOException {
        Path scenario = scenario(SPREAD);
        for (int threads : List.of(1, 3)) {
            Path out = folder.resolve("threads-" + threads);
            Answer answer = sweep(scenario, "--replications", 2, "--threads", threads, "--out", out);
            assertEquals(0, answer.code(), answer.err());
            assertSameFiles(folder.resolve("threads-1"), out);
        }
    }

    /** The notebook as it is after an end in the middle of a line. */
    @Test
    void workThatWasCutOffIsTakenUpAndGivesTheSameBytes() throws IOException {
        Path scenario = scenario(FULL);
        Path whole = folder.resolve("whole");
        Path cut = folder.resolve("cut");
        assertEquals(0, sweep(scenario, "--replications", 2, "--out", whole).code());
        List<String> lines = Files.readAllLines(whole.resolve("notebook.tsv"));
        assertEquals(1 + 8 * 2, lines.size());
        Files.createDirectories(cut);
        Files.writeString(
                cut.resolve("notebook.tsv"),
                String.join("\n", lines.subList(0, 12)) + "\n" + lines.get(12).substring(0, 60));
        assertEquals(0, sweep(scenario, "--replications", 2, "--out", cut).code());
        assertSameFiles(whole, cut);
    }

    /** Stopped after some replications as by the keyboard, then gone on with, on other threads. */
    @Test
    void aSweepThatIsStoppedNotesWhatIsFinished() throws IOException, Refusal {
        Path scenario = scenario(FULL);
        Sweep sweep = ((SweepReading.Read) Sweep.read(
                        scenario, new Assumable(Assumptions.standard().parameters(), Situations.all())))
                .sweep();
        Path file = folder.resolve("notebook.tsv");
        AtomicInteger asked = new AtomicInteger();
        try (FileNotebook notebook = FileNotebook.open(file, "question")) {
            assertEquals(
                    Optional.empty(),
                    run(sweep, notebook, 1, () -> asked.incrementAndGet() > 12).run());
        }
        int noted = Files.readAllLines(file).size() - 1;
        assertTrue(noted > 0 && noted < 24, noted + " noted");
        Swept resumed;
        try (FileNotebook notebook = FileNotebook.open(file, "question")) {
            assertEquals(noted, notebook.found());
            resumed = run(sweep, notebook, 2, () -> false).run().orElseThrow();
        }
        Swept whole = run(sweep, limbway.sim.experiment.trial.Notebook.none(), 1, () -> false)
                .run()
                .orElseThrow();
        List<Object> one = new ArrayList<>();
        List<Object> other = new ArrayList<>();
        for (int i = 0; i < whole.cases().size(); i++) {
            for (int c = 0; c < whole.criteria().size(); c++) {
                one.add(whole.cases().get(i).of(c));
                other.add(resumed.cases().get(i).of(c));
            }
        }
        assertEquals(one, other);
    }

    private static SweepRun run(
            Sweep sweep,
            limbway.sim.experiment.trial.Notebook notebook,
            int threads,
            java.util.function.BooleanSupplier stop) {
        return new SweepRun(
                sweep,
                sweep.plan().combinations(),
                sweep.plan().layouts(),
                new Criteria().all(),
                new RunSettings(1, 3, 1, LocalDate.of(2026, 3, 21), threads, 0),
                notebook,
                new StatusLine(new PrintWriter(new StringWriter()), System::nanoTime, false),
                stop);
    }

    /** More replications go on from fewer; another seed begins anew. */
    @Test
    void moreReplicationsRestOnThoseThatAreThere() throws IOException {
        Path scenario = scenario(SPREAD);
        Path out = folder.resolve("out");
        assertEquals(0, sweep(scenario, "--replications", 1, "--out", out).code());
        List<String> one = Files.readAllLines(out.resolve("notebook.tsv"));
        assertEquals(0, sweep(scenario, "--replications", 2, "--out", out).code());
        List<String> two = Files.readAllLines(out.resolve("notebook.tsv"));
        assertTrue(two.containsAll(one), two.toString());
        assertEquals(9, two.size());
        assertEquals(
                0,
                sweep(scenario, "--replications", 1, "--seed", 2, "--out", out).code());
        assertEquals(5, Files.readAllLines(out.resolve("notebook.tsv")).size());
    }

    @Test
    void pointsOfASpreadHitEveryStratumOfEachRangeOnce() throws IOException {
        Path json = folder.resolve("answer.json");
        assertEquals(
                0, sweep(scenario(SPREAD), "--replications", 1, "--json", json).code());
        JsonNode root = new ObjectMapper().readTree(Files.readString(json));
        List<Integer> strata = new ArrayList<>();
        for (JsonNode point : root.get("points")) {
            double sag = Double.parseDouble(
                    point.get("values").get("line.sag").asText().replace(" %", ""));
            strata.add((int) ((sag - 2) / 2));
        }
        assertEquals(List.of(0, 1, 2, 3), strata.stream().sorted().toList());
    }

    @Test
    void aVariantOnTheCommandLineIsLivedInAlone() throws IOException {
        Answer answer = sweep(scenario(FULL), "--replications", 1, "--variant", "joined");
        assertEquals(0, answer.code(), answer.err());
        assertTrue(answer.out().contains("all combinations, in joined; each lived once"), answer.out());
        assertTrue(answer.out().contains("One repetition cannot tell them apart"), answer.out());
    }

    /** The variant ties the rope that is added itself; and what it writes anew, the sweep varies in vain. */
    @Test
    void aValueThatALayoutWritesAnewIsToldToDoNothingThere() throws IOException {
        Path scenario = Files.writeString(
                folder.resolve("idle.yaml"),
                TinyScenario.TEXT.replace("changes: [{add:", "changes: [{move: tray, on: east at 3}, {add:") + """
                        sweep:
                          variants: [as drawn, joined]
                          vary:
                            - {of: tray, key: on, in: resources, values: [east at 4, east at 0.5]}
                        """);
        Path json = folder.resolve("idle.json");
        Answer answer = sweep(scenario, "--replications", 1, "--json", json);
        assertEquals(0, answer.code(), answer.err());
        String told =
                "tray.on does nothing in the layout joined: its changes write the same anew, or what is varied is "
                        + "not there";
        assertTrue(answer.out().contains("Note: " + told + ".\n"), answer.out());
        assertEquals(
                told,
                new ObjectMapper()
                        .readTree(Files.readString(json))
                        .get("notes")
                        .get(0)
                        .asText());
        assertTrue(!sweep(scenario(FULL), "--replications", 1).out().contains("does nothing"));
    }

    @Test
    void badInputIsToldBeforeAnythingIsLived() throws IOException {
        Answer none = sweep(TinyScenario.write(folder));
        assertEquals(2, none.code());
        assertTrue(none.err().contains("says nothing to sweep"), none.err());
        Answer values = sweep(scenario(FULL.replace("east at 0.5", "east at 9")));
        assertEquals(2, values.code());
        assertTrue(values.err().contains("tiny.yaml:26:62: place of food"), values.err());
        assertEquals("", values.out());
        Answer rank = sweep(scenario(FULL), "--rank", "visible_share");
        assertEquals(2, rank.code());
        assertTrue(rank.err().contains("points cannot be ranked by this measure"), rank.err());
        Answer variant = sweep(scenario(FULL), "--variant", "joind");
        assertEquals(2, variant.code());
        // two sound numbers that contradict each other
        Answer together = sweep(scenario("""
                sweep:
                  vary:
                    - {assume: need.heat-from, values: [29, 36]}
                    - {assume: need.heat-greatest, values: [40, 50]}
                    - {of: tray, key: energy-kj, values: [100, 1e9]}
                """));
        assertEquals(2, together.code());
        assertTrue(together.err().contains("energy-kj of feed \"tray\" is outside what is plausible"), together.err());
    }

    @Test
    void aFolderThatCannotBeWrittenToIsToldBeforeAnythingIsRun() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "");
        Answer answer = sweep(scenario(FULL), "--out", file);
        assertEquals(3, answer.code());
        assertEquals("", answer.out());
    }
}
