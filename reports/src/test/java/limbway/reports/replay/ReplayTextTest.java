package limbway.reports.replay;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;

import limbway.model.body.LocomotorMode;
import limbway.reports.words.ReplayText;
import limbway.sim.journal.Motive;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

class ReplayTextTest {

    private static final Path RESOURCES = Path.of("src/main/resources/limbway/reports/replay");

    /** A text asked for by its key: in a call of t, or one of two in such a call. */
    private static final Pattern ASKED = Pattern.compile("\\bt\\((?:[^'`)]*\\? )?'([a-zA-Z.]+)'(?: : '([a-zA-Z.]+)')?");

    /** A text asked for by a key that is put together. */
    private static final Pattern BEGUN = Pattern.compile("`([a-z]+\\.)\\$\\{");

    private static final Map<String, String> WORDS = ReplayText.byKey();

    private static String scripts() throws IOException {
        StringBuilder all = new StringBuilder();
        List<Path> files;
        try (Stream<Path> found = Files.list(RESOURCES)) {
            files = found.filter(file -> file.toString().endsWith(".js")).toList();
        }
        assertTrue(files.size() > 20, "scripts = " + files.size());
        for (Path file : files) {
            all.append(Files.readString(file));
        }
        return all.toString();
    }

    private static Set<String> asked(String scripts) {
        Set<String> keys = new TreeSet<>();
        Matcher call = ASKED.matcher(scripts);
        while (call.find()) {
            keys.add(call.group(1));
            if (call.group(2) != null) {
                keys.add(call.group(2));
            }
        }
        return keys;
    }

    @Test
    void everyTextThatAScriptAsksForIsThere() throws IOException {
        Set<String> missing = asked(scripts());
        assertTrue(missing.size() > 50, "asked = " + missing);
        missing.removeAll(WORDS.keySet());
        assertEquals(Set.of(), missing);
    }

    @Test
    void everyTextIsAskedForBySomeScript() throws IOException {
        String scripts = scripts();
        Set<String> asked = asked(scripts);
        List<String> begun = new ArrayList<>();
        Matcher template = BEGUN.matcher(scripts);
        while (template.find()) {
            begun.add(template.group(1));
        }
        List<String> unused = new ArrayList<>();
        for (String key : WORDS.keySet()) {
            boolean used = asked.contains(key)
                    || scripts.contains("'" + key + "'")
                    || Pattern.compile("\\b" + key + ": \\{").matcher(scripts).find()
                    || begun.stream().anyMatch(key::startsWith);
            if (!used) {
                unused.add(key);
            }
        }
        assertEquals(List.of(), unused);
    }

    @Test
    void everyModeAndEveryMotiveHasItsSentence() {
        for (LocomotorMode mode : LocomotorMode.values()) {
            assertTrue(WORDS.containsKey("does." + mode.word()), mode.word());
        }
        for (Motive motive : Motive.values()) {
            assertTrue(WORDS.containsKey("stays." + motive.word()), motive.word());
            assertTrue(WORDS.containsKey("because." + motive.word()), motive.word());
        }
    }

    /** Names may hold markup; a script that writes text as markup would run it. */
    @Test
    void noScriptWritesTextAsMarkup() throws IOException {
        String scripts = scripts();
        for (String way :
                List.of("innerHTML", "outerHTML", "insertAdjacentHTML", "document.write", "eval(", "Function(")) {
            assertFalse(scripts.contains(way), way);
        }
    }
}
