package limbway.reports.command;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Pattern;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import limbway.reports.command.TinyScenario.Answer;

import static limbway.reports.command.TinyScenario.limbway;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** A lesson is made of the scenario's own data, and its answers are those of explain. */
class LessonCommandTest {

    private static final String LINK = "- {rope: link, from: prop at 4, to: east at 4, diameter: 0.05}";

    /** Leads nowhere. */
    private static final String SPARE = "- {rope: spare, from: [1, 9, 0], to: west at 2, diameter: 0.05}";

    /** A wall from end to end between bed and tray. */
    private static final String ROOMS = """
            title: Two rooms
            site: {latitude: 1.5, longitude: 110.5, time-zone: Asia/Kuching}
            ground: {outline: [[0, 0], [16, 0], [16, 10], [0, 10]], surface: grass}
            supports:
              - {pole: west, at: [3, 5], height: 3, diameter: 0.08, material: timber}
            barriers:
              - {wall: between, line: [[8, 0], [8, 10]], top: 4}
            resources:
              - {food: tray, at: [12, 5], portions: 2 at once}
              - {nest: bed, on: west at 2}
            animals:
              - {name: Anak, body: juvenile}
            keepers:
              - {feed: tray, at: "09:00", energy-kj: 4500}
            """;

    @TempDir
    Path folder;

    private Path scenario(String text) throws IOException {
        return Files.writeString(folder.resolve("scenario.yaml"), text);
    }

    private JsonNode lesson(Path scenario, Object... more) throws IOException {
        List<Object> words = new ArrayList<>(List.of(
                "lesson", scenario, "--out", folder.resolve("out"), "--replications", 2, "--days", 1, "--warm-up", 0));
        words.addAll(List.of(more));
        Answer answer = limbway(words.toArray());
        assertEquals(0, answer.code(), answer.err());
        return new ObjectMapper().readTree(Files.readString(folder.resolve("out/lesson.json")));
    }

    private String page() throws IOException {
        return Files.readString(folder.resolve("out/lesson.html"));
    }

    private JsonNode explain(Path scenario, String variant, JsonNode trip) throws IOException {
        Path file = folder.resolve("why.json");
        List<Object> words = new ArrayList<>(List.of(
                "explain",
                scenario,
                "--body",
                trip.get("body").asText(),
                "--from",
                trip.get("from").asText(),
                "--to",
                trip.get("to").asText(),
                "--flips",
                "off",
                "--json",
                file));
        if (!variant.isEmpty()) {
            words.addAll(List.of("--variant", variant));
        }
        Answer answer = limbway(words.toArray());
        assertEquals(0, answer.code(), answer.err());
        return new ObjectMapper().readTree(Files.readString(file));
    }

    private static JsonNode question(JsonNode lesson, String id) {
        for (JsonNode step : lesson.get("steps")) {
            for (JsonNode question : step.get("questions")) {
                if (question.get("question").asText().equals(id)) {
                    return question;
                }
            }
        }
        throw new AssertionError("no question " + id + " in " + lesson.get("steps"));
    }

    private static List<String> leftOut(JsonNode lesson) {
        List<String> titles = new ArrayList<>();
        lesson.get("left_out").forEach(one -> titles.add(one.get("title").asText()));
        return titles;
    }

    /** The energies of a lesson are those that explain tells of the layout with the line pasted, or of the variant named. */
    private void assertRecompiled(String text, JsonNode lesson, boolean takesGround) throws IOException {
        JsonNode trip = lesson.get("trip");
        int right = 0;
        int tried = 0;
        for (JsonNode choice : question(lesson, "change").get("choices")) {
            if (!choice.has("line")) {
                continue;
            }
            String line = choice.get("line").asText();
            String pasted = text + "  - name: pasted\n    changes:\n      " + line + "\n";
            String variant = line.isEmpty() ? "joined" : "pasted";
            JsonNode then = explain(scenario(line.isEmpty() ? text : pasted), variant, trip);
            JsonNode off = then.get("cheapest_offground_mj");
            assertEquals(off.isNull(), choice.get("off_ground_mj").isNull(), line);
            assertEquals(off.asLong(), choice.get("off_ground_mj").asLong(), line);
            assertEquals(
                    then.get("p_offground").asDouble(),
                    choice.get("p_offground").asDouble(),
                    line);
            boolean isOff =
                    !off.isNull() && off.asLong() == then.get("cheapest_mj").asLong();
            boolean isOver = !then.get("cheapest_mj").isNull() && !isOff;
            assertEquals(takesGround ? isOff : isOver, choice.get("right").asBoolean(), choice.toString());
            right += choice.get("right").asBoolean() ? 1 : 0;
            tried++;
        }
        assertTrue(right >= 1 && right < tried, right + " right of " + tried);
    }

    @Test
    void everyChangeThatIsSaidToTurnTheTripDoesAndTheOthersDoNot() throws IOException {
        JsonNode lesson = lesson(scenario(TinyScenario.TEXT));
        assertTrue(lesson.get("trip").get("takes_ground").asBoolean());
        JsonNode why = explain(scenario(TinyScenario.TEXT), "", lesson.get("trip"));
        assertEquals(
                why.get("cheapest_mj").asLong(),
                lesson.get("trip").get("over_ground_mj").asLong());
        assertRecompiled(TinyScenario.TEXT, lesson, true);
    }

    @Test
    void theCardBesideThePlayerTellsNoReasonAndAWrongChangeIsToldWhichAreRight() throws IOException {
        JsonNode lesson = lesson(scenario(TinyScenario.TEXT));
        String page = page();
        String from = "<script type=\"application/json\" class=\"replay-data\">";
        int at = page.indexOf(from) + from.length();
        JsonNode cards = new ObjectMapper()
                .readTree(page.substring(at, page.indexOf("</script>", at)))
                .get("layouts")
                .get(0)
                .get("cards");
        assertFalse(cards.isEmpty());
        for (JsonNode card : cards) {
            assertEquals("", card.get("sentence").asText());
            assertEquals("", card.get("mend").asText());
            assertTrue(card.get("flip").isNull(), card.toString());
        }
        JsonNode changes = question(lesson, "change");
        for (JsonNode choice : changes.get("choices")) {
            if (!choice.get("right").asBoolean()) {
                String told = choice.get("feedback").asText();
                assertTrue(told.endsWith(changes.get("answer").asText()), told);
            }
        }
        boolean isOne = lesson.get("trip").get("over_ground_mj").isNull()
                || lesson.get("trip").get("off_ground_mj").isNull();
        assertEquals(!isOne, page.contains(">Play both ways<"));
    }

    @Test
    void whereNoTripUsesTheGroundTheReverseIsTaught() throws IOException {
        String joined = TinyScenario.TEXT.replace("resources:\n", "  " + LINK + "\n  " + SPARE + "\nresources:\n");
        String text = joined.substring(0, joined.indexOf("variants:"))
                + "variants:\n  - name: joined\n    changes: [{remove: link}]\n";
        JsonNode lesson = lesson(scenario(text));
        assertFalse(lesson.get("trip").get("takes_ground").asBoolean());
        assertTrue(page().contains("So the lesson asks the reverse"));
        assertRecompiled(text, lesson, false);
    }

    @Test
    void aTripThatIsNamedIsTaughtAndToldAsExplainTellsIt() throws IOException {
        Path tiny = scenario(TinyScenario.TEXT);
        JsonNode lesson = lesson(tiny, "--body", "juvenile", "--from", "cup", "--to", "tray");
        JsonNode trip = lesson.get("trip");
        assertEquals(
                "juvenile cup tray",
                String.join(
                        " ",
                        trip.get("body").asText(),
                        trip.get("from").asText(),
                        trip.get("to").asText()));
        JsonNode why = explain(tiny, "", trip);
        assertEquals(why.get("cheapest_mj").asLong(), trip.get("over_ground_mj").asLong());
        JsonNode dearest = question(lesson, "dearest-part");
        long most = 0;
        for (JsonNode part : why.get("parts")) {
            most = Math.max(most, part.asLong());
        }
        assertEquals(most, why.get("parts").get("climb_mj").asLong());
        for (JsonNode choice : dearest.get("choices")) {
            assertEquals(
                    choice.get("answer").asText().equals("climbing up"),
                    choice.get("right").asBoolean());
        }
    }

    @Test
    void whatTheEnclosureHasNoDataForIsLeftOutAndNamed() throws IOException {
        String alone = TinyScenario.TEXT
                .substring(0, TinyScenario.TEXT.indexOf("variants:"))
                .replace("  - {name: Ibu, body: adult female, with-infant: true}\n", "");
        JsonNode lesson = lesson(scenario(alone));
        assertEquals(
                List.of("The whole day", "Shade to rest in"),
                leftOut(lesson).stream()
                        .filter(title -> !title.equals("A trap"))
                        .toList());
        String page = page();
        assertTrue(page.contains("Shade to rest in: fewer than two rest platforms stand here."), "shade");
        assertTrue(page.contains("The whole day: the scenario has one layout only"), "day");
        assertTrue(page.contains("Meet Anak, a juvenile of"), "one animal");
        assertFalse(page.contains("step-shade"));
    }

    @Test
    void placesThatNoWayJoinsAreRefusedWithTheirNames() throws IOException {
        Path rooms = scenario(ROOMS);
        Answer answer = limbway(
                "lesson", rooms, "--out", folder.resolve("no"), "--body", "juvenile", "--from", "bed", "--to", "tray");
        assertEquals(2, answer.code());
        assertEquals("""
                limbway: there is no such trip to teach
                  found    no support, platform or ground leads this juvenile from bed to tray
                  allowed  two places that a way joins for this body
                  mend     choose another trip; limbway check says what is missing
                """, answer.err());
    }

    @Test
    void whereNoPlacesAreJoinedTheRestIsTaught() throws IOException {
        JsonNode lesson = lesson(scenario(ROOMS));
        assertTrue(lesson.get("trip").isNull());
        assertTrue(
                leftOut(lesson).containsAll(List.of("Which way will it go?", "Both ways", "Why?", "Change one thing")));
        assertTrue(page().contains("so there is no trip to follow"));
        assertFalse(page().contains("class=\"replay-data\""));
    }

    @Test
    void wrongNamesAreRefused() throws IOException {
        Path tiny = scenario(TinyScenario.TEXT);
        Path out = folder.resolve("no");
        Answer body = limbway("lesson", tiny, "--out", out, "--body", "juvenil");
        assertEquals(2, body.code());
        assertTrue(body.err().contains("there is no body in the group of that name"), body.err());
        assertTrue(body.err().contains("did you mean \"juvenile\"?"), body.err());
        Answer place = limbway("lesson", tiny, "--out", out, "--to", "trey");
        assertTrue(place.code() == 2 && place.err().contains("there is no resource of that name"), place.err());
        Answer same = limbway("lesson", tiny, "--out", out, "--from", "cup", "--to", "cup");
        assertTrue(same.code() == 2 && same.err().contains("--from and --to are the same place"), same.err());
        Answer variant = limbway("lesson", tiny, "--out", out, "--variants", "joind");
        assertTrue(variant.code() == 2 && variant.err().contains("did you mean \"joined\"?"), variant.err());
        assertFalse(Files.exists(out));
    }

    @Test
    void namesCannotWriteMarkup() throws IOException {
        String hostile = TinyScenario.TEXT
                .replace("title: Two poles", "title: \"</script><img src=x onerror=alert(1)>\"")
                .replace("name: Anak", "name: \"<b>Anak</b>\"")
                .replace("name: joined", "name: \"<i>joined</i>\"");
        JsonNode lesson = lesson(scenario(hostile), "--body", "juvenile", "--from", "cup", "--to", "tray");
        assertEquals(
                "</script><img src=x onerror=alert(1)>", lesson.get("title").asText());
        String page = page();
        for (String markup : List.of("<img", "<b>", "<i>joined")) {
            assertFalse(page.contains(markup), markup);
        }
        assertTrue(page.contains("&lt;b&gt;Anak&lt;/b&gt;"));
    }

    @Test
    void theSameForAnyNumberOfThreads() throws IOException {
        Path tiny = scenario(TinyScenario.TEXT);
        lesson(tiny, "--threads", 1);
        String page = page();
        String data = Files.readString(folder.resolve("out/data/lesson.csv"));
        lesson(tiny, "--threads", 2);
        assertEquals(page, page());
        assertEquals(data, Files.readString(folder.resolve("out/data/lesson.csv")));
    }

    @Test
    void withoutScriptEveryAnswerStandsInThePageAndNothingIsRequested() throws IOException {
        JsonNode lesson = lesson(scenario(TinyScenario.TEXT));
        String page = page();
        int questions = 0;
        for (JsonNode step : lesson.get("steps")) {
            questions += step.get("questions").size();
        }
        assertEquals(questions, page.split("<details class=\"answer\">", -1).length - 1);
        assertEquals(questions, page.split("<legend>", -1).length - 1);
        assertFalse(Pattern.compile("(src|href)=\"(?!#)").matcher(page).find(), "something is requested");
        String script = page.substring(page.lastIndexOf("<script type=\"module\">"));
        for (String word : List.of("innerHTML", "eval(", "localStorage", "fetch(", "document.write")) {
            assertFalse(script.contains(word), word);
        }
        int rows = Files.readAllLines(folder.resolve("out/data/lesson.csv")).size() - 1;
        int choices = 0;
        for (JsonNode step : lesson.get("steps")) {
            for (JsonNode question : step.get("questions")) {
                choices += question.get("choices").size();
            }
        }
        assertEquals(choices, rows);
    }
}
