package limbway.scenarios;

import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;

import org.junit.jupiter.api.Test;

import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.ProblemReport;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** The examples with slips of the pen: every one is read or refused, none throws or hangs. */
class MutationTest {

    private static final int FILES = 500;

    /** A reading takes some milliseconds; the limit only has to tell a hang from a slow machine. */
    private static final Duration LIMIT = Duration.ofSeconds(20);

    private static final Pattern TOKEN = Pattern.compile("[\\p{L}\\p{N}_.-]+");
    private static final Pattern NUMBER = Pattern.compile("\\d+(\\.\\d+)?");
    private static final String CHARACTERS = "[]{}:,-\"'#&*!|>%@ \t\n0129.aexyzé";
    private static final List<String> NUMBERS = List.of(
            "-1", "0", "1e400", "NaN", "-0", "1e9", ".5", "0x10", "1_000", "7,5", "3 ft", "99999999999999999999", "~");

    @Test
    void everyMutatedExampleIsReadOrRefused() {
        int read = 0;
        int refused = 0;
        for (int seed = 1; seed <= FILES; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            String name = Examples.ALL.get(seed % Examples.ALL.size());
            String mutated = Examples.text(name);
            for (int n = random.nextInt(4); n >= 0; n--) {
                mutated = mutate(mutated, random);
            }
            String text = mutated;
            int number = seed;
            Reading reading = assertTimeoutPreemptively(
                    LIMIT,
                    () -> ScenarioReader.read(name, text, Examples.FOLDER, Examples.ASSUMABLE),
                    () -> "seed " + number);
            if (reading instanceof Reading.Refused no) {
                refused++;
                check(no.problems(), text, name, seed);
            } else {
                read++;
            }
        }
        // both outcomes must occur, or the mutations test nothing
        assertTrue(read > FILES / 20 && refused > FILES / 4, read + " read, " + refused + " refused");
    }

    private static void check(List<Problem> problems, String text, String name, int seed) {
        assertFalse(problems.isEmpty(), () -> "seed " + seed);
        List<String> lines = text.lines().toList();
        for (Problem problem : problems) {
            if (problem.place().file().equals(name)) {
                assertTrue(
                        problem.place().line() <= lines.size() + 1
                                && problem.place().column() >= 1,
                        () -> "seed " + seed + ": " + problem.text());
            }
        }
        assertTrue(ProblemReport.text(problems).endsWith(problems.size() == 1 ? "problem\n" : "problems\n"));
    }

    private static String mutate(String text, SplittableRandom random) {
        return switch (random.nextInt(8)) {
            case 0 -> replaceCharacter(text, random);
            case 1 -> inLines(text, random, (lines, i) -> lines.remove(i));
            case 2 -> inLines(text, random, (lines, i) -> lines.add(i, lines.get(random.nextInt(lines.size()))));
            case 3 ->
                inLines(
                        text,
                        random,
                        (lines, i) -> lines.set(
                                i, " ".repeat(random.nextInt(4)) + lines.get(i).strip()));
            case 4, 5 -> replaceMatch(text, NUMBER, random, NUMBERS.get(random.nextInt(NUMBERS.size())));
            case 6 -> replaceMatch(text, TOKEN, random, anyToken(text, random));
            default -> text.substring(0, text.length() - random.nextInt(text.length() / 4));
        };
    }

    private interface LineChange {
        void apply(List<String> lines, int index);
    }

    private static String inLines(String text, SplittableRandom random, LineChange change) {
        List<String> lines = new ArrayList<>(Arrays.asList(text.split("\n", -1)));
        change.apply(lines, random.nextInt(lines.size()));
        return String.join("\n", lines);
    }

    private static String replaceCharacter(String text, SplittableRandom random) {
        int at = random.nextInt(text.length());
        char by = CHARACTERS.charAt(random.nextInt(CHARACTERS.length()));
        return text.substring(0, at) + by + text.substring(random.nextBoolean() ? at : at + 1);
    }

    private static String anyToken(String text, SplittableRandom random) {
        List<MatchResult> tokens = TOKEN.matcher(text).results().toList();
        return tokens.get(random.nextInt(tokens.size())).group();
    }

    private static String replaceMatch(String text, Pattern pattern, SplittableRandom random, String by) {
        List<MatchResult> matches = pattern.matcher(text).results().toList();
        if (matches.isEmpty()) {
            return text;
        }
        MatchResult match = matches.get(random.nextInt(matches.size()));
        return text.substring(0, match.start()) + by + text.substring(match.end());
    }
}
