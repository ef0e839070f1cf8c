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
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

class CompareCommandTest {

    @TempDir
    Path folder;

    private Path scenario;

    @BeforeEach
    void write() throws IOException {
        scenario = TinyScenario.write(folder);
    }

    private Answer compare(Object... more) {
        return limbway(Stream.concat(
                        Stream.of("compare", scenario, "--days", 1, "--warm-up", 0, "--batch", 10), Stream.of(more))
                .toArray());
    }

    private static JsonNode read(Path json) throws IOException {
        return new ObjectMapper().readTree(Files.readString(json));
    }

    @Test
    void theAnswerHasWhatOtherProgramsRelyOn() throws IOException {
        Path json = folder.resolve("answer.json");
        Answer answer = compare("--json", json, "--precision", "40 %");
        assertEquals(0, answer.code(), answer.err());
        JsonNode root = read(json);
        assertEquals("as drawn", root.get("variants").get(0).get("name").asText());
        JsonNode first = root.get("variants").get(0).get("measures").get("offground_distance");
        JsonNode second = root.get("variants").get(1).get("measures").get("offground_distance");
        JsonNode difference = root.get("differences").get(0);
        assertEquals("as drawn", difference.get("a").asText());
        assertEquals("joined", difference.get("b").asText());
        assertEquals("offground_distance", difference.get("measure").asText());
        double mean = difference.get("mean").asDouble();
        assertEquals(first.get("mean").asDouble() - second.get("mean").asDouble(), mean, 1e-12);
        assertTrue(difference.get("lo").asDouble() < mean
                && mean < difference.get("hi").asDouble());
        assertTrue(mean < 0 && difference.get("p_holm").asDouble() < 1e-3, difference.toString());
        assertEquals(root.get("differences").size(), root.get("correlation").size());
        assertEquals(10, root.get("replications").asInt());
        assertEquals("precision reached", root.get("stopped_because").asText());
        JsonNode alone = root.get("worth_off");
        assertEquals(3, alone.get("differences").size());
        assertEquals(
                root.get("sentences").get(0).asText(),
                answer.out().lines().findFirst().orElseThrow());
        assertTrue(
                answer.out().contains("joined has ")
                        && answer.out().contains(" points more of its travel off the ground"),
                answer.out());
    }

    @Test
    void allFilesAreTheSameForAnyNumberOfThreads() throws IOException {
        Path one = folder.resolve("one");
        Answer first = compare("--threads", 1, "--out", one, "--precision", 40);
        assertEquals(0, first.code(), first.err());
        for (int threads : new int[] {3}) {
            Path other = folder.resolve("on-" + threads);
            assertEquals(
                    0,
                    compare("--threads", threads, "--out", other, "--precision", 40)
                            .code());
            assertSame(one, other);
        }
        String page = Files.readString(one.resolve("compare.html"));
        assertTrue(page.contains("\u25c6 best: "), "the best is marked by a sign and a word");
        assertTrue(page.contains("With needs and energy alone"));
        String data = page.substring(page.indexOf("class=\"replay-data\">") + "class=\"replay-data\">".length());
        JsonNode replay = new ObjectMapper().readTree(data.substring(0, data.indexOf("</script>")));
        JsonNode answer = read(one.resolve("compare.json"));
        assertEquals(
                answer.get("layouts").size(),
                replay.get("layouts").size(),
                "each layout can be watched beside the others");
    }

    private static void assertSame(Path one, Path other) throws IOException {
        List<Path> files;
        try (Stream<Path> all = Files.walk(one)) {
            files = all.filter(Files::isRegularFile)
                    .map(one::relativize)
                    .sorted()
                    .toList();
        }
        assertEquals(14, files.size(), files.toString());
        for (Path file : files) {
            assertArrayEquals(
                    Files.readAllBytes(one.resolve(file)), Files.readAllBytes(other.resolve(file)), file.toString());
        }
    }

    @Test
    void whatWasCutOffGoesOnAndEndsTheSame() throws IOException {
        Object[] precise = {"--precision", 0.1, "--replications", 20, "--out"};
        Path whole = folder.resolve("whole");
        assertEquals(
                0,
                compare(Stream.concat(Stream.of(precise), Stream.of(whole)).toArray())
                        .code());
        // as after a loss of power: some repetitions of one layout, the last line cut in the middle
        Path cut = folder.resolve("cut");
        Files.createDirectories(cut);
        String notes = Files.readString(whole.resolve("notebook.tsv"));
        Files.writeString(cut.resolve("notebook.tsv"), notes.substring(0, notes.length() / 3));
        Answer resumed =
                compare(Stream.concat(Stream.of(precise), Stream.of(cut)).toArray());
        assertEquals(0, resumed.code(), resumed.err());
        assertTrue(resumed.err().contains("going on from "), resumed.err());
        assertSame(whole, cut);

        // another seed is another question: nothing is taken over
        Answer other = compare("--replications", 10, "--seed", 2, "--out", cut);
        assertFalse(other.err().contains("going on from "), other.err());
    }

    @Test
    void aBudgetTooSmallForThePrecisionIsSpentAndToldWhatItWouldTake() throws IOException {
        Path json = folder.resolve("answer.json");
        Answer answer = compare("--precision", 0.1, "--replications", 10, "--json", json);
        assertEquals(0, answer.code(), answer.err());
        JsonNode widest = read(json).get("widest");
        double times =
                widest.get("half_width").asDouble() / widest.get("wanted").asDouble();
        assertEquals(
                Math.ceil(10 * times * times), widest.get("replications_needed").asDouble(), 1);
        assertEquals("budget spent", read(json).get("stopped_because").asText());
        assertTrue(answer.out().contains("that is all that was allowed"), answer.out());
        assertTrue(answer.out().contains("That would take about "), answer.out());
    }

    @Test
    void amountsThatAreNamedAreWaitedForToo() {
        Answer answer = compare("--precision", 40, "--relative", "50 %", "--until", "offground_time,offground_m");
        assertEquals(0, answer.code(), answer.err());
        assertTrue(answer.out().contains("to plus or minus 40 points or 50 % of its size was."), answer.out());
    }

    /** What is noted with worth and without, of all measures and of few, is never taken for each other. */
    @Test
    void oneFolderServesWorthOnAndOffInEitherOrder() throws IOException {
        Path one = folder.resolve("on-off");
        Path other = folder.resolve("off-on");
        String on = answerIn(one, "on");
        String off = answerIn(one, "off");
        JsonNode bare = new ObjectMapper().readTree(off);
        assertTrue(bare.get("worth_off").isNull());
        assertEquals(
                new ObjectMapper()
                        .readTree(on)
                        .get("worth_off")
                        .get("differences")
                        .get(0),
                bare.get("differences").get(0));
        assertEquals(off, answerIn(other, "off"));
        assertEquals(on, answerIn(other, "on"));
    }

    private String answerIn(Path out, String worth) throws IOException {
        Answer answer = compare("--precision", 40, "--replications", 10, "--worth", worth, "--out", out);
        assertEquals(0, answer.code(), answer.err());
        return Files.readString(out.resolve("compare.json"));
    }

    @Test
    void aMeasureThatCannotHaveAValueIsNotWaitedFor() {
        Answer answer = compare("--until", "offground_distance,visible_share");
        assertEquals(2, answer.code());
        assertEquals("""
                        limbway: the difference in a measure without a value is never known
                          found    --until visible_share, and the layout as drawn has no viewpoints
                          allowed  measures that have a value in every layout
                          mend     leave it out, or say in the scenario what is missing
                        """, answer.err());
        assertTrue(compare("--until", "hours_in_heat").err().contains("the scenario has no weather"), answer.err());
    }

    @Test
    void aBudgetThatEndsBeforeTheFirstLookIsRefused() {
        Answer answer = compare("--replications", 9);
        assertEquals(2, answer.code());
        assertEquals("""
                        limbway: that is too few repetitions to compare by
                          found    --replications 9
                          allowed  10 or more: with fewer it is not known how much repetitions differ
                          mend     give at least --replications 10; fewer --days make them shorter
                        """, answer.err());
    }

    @Test
    void oneLayoutIsNotCompared() throws IOException {
        Answer answer = compare("--variants", "joined");
        assertEquals(2, answer.code());
        assertTrue(answer.err().contains("there is nothing to compare with"), answer.err());
        assertTrue(answer.err().contains("one layout, joined"), answer.err());
        Path lonely = Files.writeString(
                folder.resolve("lonely.yaml"), TinyScenario.TEXT.substring(0, TinyScenario.TEXT.indexOf("variants:")));
        Answer single = limbway("compare", lonely);
        assertEquals(2, single.code());
        assertTrue(single.err().contains("under variants in the scenario"), single.err());
    }

    @Test
    void anUnknownLayoutOrMeasureIsRefused() {
        Answer layout = compare("--variants", "as drawn,joind");
        assertEquals(2, layout.code());
        assertTrue(layout.err().contains("did you mean \"joined\"?"), layout.err());
        Answer measure = compare("--until", "offground_distanse");
        assertEquals(2, measure.code());
        assertTrue(measure.err().contains("did you mean \"offground_distance\"?"), measure.err());
        assertEquals(2, compare("--precision", "0").code());
    }
}
