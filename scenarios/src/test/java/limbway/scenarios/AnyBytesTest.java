package limbway.scenarios;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.SplittableRandom;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

import limbway.model.parameter.Assumable;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;

/** Whatever the bytes of a file are, the answer is a message with its place. */
class AnyBytesTest {

    /** Generous beside the few milliseconds that a refusal takes, so that a slow machine does not fail the test. */
    private static final Duration LIMIT = Duration.ofSeconds(20);

    @TempDir
    private Path folder;

    @ParameterizedTest
    @MethodSource("texts")
    void badTextIsRefusedInPlainWords(String text, String message) {
        assertEquals(message, Examples.refusal(SmallYard.read(text)));
    }

    static Stream<Arguments> texts() {
        return Stream.of(
                Arguments.of("", """
                        yard.yaml:1:1: this scenario is empty
                          mend     start with a line such as: title: River yard

                        1 problem
                        """),
                Arguments.of("title: a\n\tsite: b\n", """
                        yard.yaml:2:1: this cannot be read as YAML
                          found    "site: b"
                          mend     use spaces, not tabs, at the start of a line

                        1 problem
                        """),
                Arguments.of("ground: {outline: [[0, 0], [1, 0]\nsite: b\n", """
                        yard.yaml:2:1: this cannot be read as YAML
                          found    "site: b"
                          mend     close the list with ] or put a comma between its parts

                        1 problem
                        """),
                Arguments.of("resources: [{nest: n, on: deck-1 at [0, 1]}]\n", """
                        yard.yaml:1:37: this cannot be read as YAML
                          found    "resources: [{nest: n, on: deck-1 at [0, 1]}]"
                          mend     close the braces with } or put a comma between; quote words with brackets

                        1 problem
                        """),
                Arguments.of("a: &x [1, 2]\nb: *x\n", """
                        yard.yaml:1:4: anchors and aliases (words that begin with & or *) are not read
                          mend     write the words out, or put them in quotation marks

                        yard.yaml:2:4: anchors and aliases (words that begin with & or *) are not read
                          mend     write the words out, or put them in quotation marks

                        2 problems
                        """),
                Arguments.of("title: !name a\n", """
                        yard.yaml:1:8: tags (words that begin with !) are not read
                          mend     write the words out, or put them in quotation marks

                        1 problem
                        """),
                Arguments.of("title: a\n---\ntitle: b\n", """
                        yard.yaml:3:1: a second document begins here
                          allowed  one scenario in a file
                          mend     move it into a file of its own, or take out the line with three dashes

                        1 problem
                        """),
                Arguments.of("title: a\u0001\n", """
                        yard.yaml:1:9: this character does not belong in text
                          found    U+0001
                          mend     take it out, or check that this is the file you meant

                        1 problem
                        """),
                Arguments.of("just words\n", """
                        yard.yaml:1:1: a scenario has no keys with values
                          found    "just words"
                          allowed  keys and values, for example {key: value, other-key: value}

                        1 problem
                        """),
                Arguments.of("[".repeat(10_000), """
                        yard.yaml:1:22: lists within lists go too deep
                          allowed  at most 20 levels

                        1 problem
                        """));
    }

    @Test
    void bytesThatAreNoTextAreRefused() throws IOException {
        Path file = folder.resolve("image.yaml");
        Files.write(file, new byte[] {'a', ':', ' ', (byte) 0xFF, (byte) 0xFE});
        assertEquals(file + """
                        :1:4: this file is not text in UTF-8
                          found    byte 0xFF
                          mend     save it again as plain text with the encoding UTF-8

                        1 problem
                        """, Examples.refusal(ScenarioReader.read(file, Assumable.nothing())));
    }

    @Test
    void aMissingFileAFolderAndAGiantFileAreProblems() throws IOException {
        Path missing = folder.resolve("missing.yaml");
        assertEquals(
                missing + ":1:1: there is no such file\n  found    " + missing
                        + "\n  mend     check the name and the folder\n\n1 problem\n",
                Examples.refusal(ScenarioReader.read(missing, Assumable.nothing())));
        assertEquals(
                folder + ":1:1: this is a folder, not a file\n  found    " + folder + "\n\n1 problem\n",
                Examples.refusal(ScenarioReader.read(folder, Assumable.nothing())));
        Path giant = folder.resolve("giant.yaml");
        Files.write(giant, new byte[5 * 1024 * 1024]);
        assertEquals(
                giant + ":1:1: this file is too large\n  found    5242880 bytes\n"
                        + "  allowed  at most 4194304 bytes (4 MiB)\n"
                        + "  mend     check that this is the file you meant, and take out what is not needed\n\n1 problem\n",
                Examples.refusal(ScenarioReader.read(giant, Assumable.nothing())));
    }

    @Test
    void controlCharactersOfANameNeverReachTheTerminal() {
        String answer = Examples.refusal(SmallYard.with("feed: hatch", "feed: \"ha\\u001b[31m\\ntch\""));
        assertEquals("""
                yard.yaml:17:12: there is no food place "ha [31m tch"
                  allowed  hatch

                1 problem
                """, answer);
    }

    @Test
    void randomBytesEndInARefusal() throws IOException {
        SplittableRandom random = new SplittableRandom(20);
        for (int i = 0; i < 50; i++) {
            byte[] bytes = new byte[random.nextInt(4000)];
            random.nextBytes(bytes);
            Path file = folder.resolve("random-" + i);
            Files.write(file, bytes);
            assertInstanceOf(
                    Reading.Refused.class,
                    assertTimeoutPreemptively(LIMIT, () -> ScenarioReader.read(file, Assumable.nothing())));
        }
    }

    @Test
    void randomPiecesOfYamlEndInARefusal() {
        String[] pieces = {
            "[", "]", "{", "}", ":", ": ", "- ", "\n", "\n  ", "\"", "'", "|", ">", "%", "@", "*a", "&a", "?", "? ",
            "!b", "#", ",", "a", "1", "\t", "<<: ", "---\n", "..."
        };
        SplittableRandom random = new SplittableRandom(21);
        for (int i = 0; i < 2000; i++) {
            StringBuilder text = new StringBuilder();
            for (int n = random.nextInt(60); n >= 0; n--) {
                text.append(pieces[random.nextInt(pieces.length)]);
            }
            assertInstanceOf(
                    Reading.Refused.class,
                    assertTimeoutPreemptively(LIMIT, () -> SmallYard.read(text.toString())),
                    text::toString);
        }
    }

    /** Texts of up to 4 MiB, the most that is read, each made to cost as much as it can. */
    @ParameterizedTest(name = "{0}")
    @MethodSource("largeTexts")
    void largeTextsTakeBoundedTime(String name, String text) {
        Path file = folder.resolve(name.replace(' ', '-'));
        assertTimeoutPreemptively(LIMIT, () -> {
            Files.write(file, text.getBytes(StandardCharsets.UTF_8));
            assertInstanceOf(Reading.Refused.class, ScenarioReader.read(file, Assumable.nothing()));
        });
    }

    static Stream<Arguments> largeTexts() {
        StringBuilder poles = new StringBuilder("supports:\n");
        StringBuilder ropes = new StringBuilder("supports:\n");
        StringBuilder variants = new StringBuilder("\nvariants:\n");
        for (int i = 0; i < 8_000; i++) {
            poles.append("  - {pole: p")
                    .append(i)
                    .append(", at: [3, 1], height: 5, diameter: 0.1, material: timber}\n");
            ropes.append("  - {rope: r")
                    .append(i)
                    .append(", from: r")
                    .append(i + 1)
                    .append(" middle, to: q top, diameter: 0.1}\n");
        }
        for (int i = 0; i < 40; i++) {
            variants.append("  - {name: v").append(i).append(", changes: [");
            for (int j = 0; j < 450; j++) {
                variants.append("{move: nobody-").append(j).append(", at: [1, 1, 1]}, ");
            }
            variants.append("]}\n");
        }
        String small = SmallYard.TEXT;
        return Stream.of(
                Arguments.of("one long line", "a".repeat(4_000_000)),
                Arguments.of("many keys", "a: [\n" + " {b: c},\n".repeat(150_000) + "]"),
                Arguments.of("long quoted text", "a: \"" + "b b b b b b b\n ".repeat(250_000) + "\""),
                Arguments.of(
                        "many supports that break",
                        small.replace("supports:\n", poles.toString().replace("0.1,", "90,"))),
                Arguments.of("a chain of ropes", small.replace("supports:\n", ropes.toString())),
                Arguments.of(
                        "variants that change nothing known", small.substring(0, small.indexOf("variants")) + variants),
                Arguments.of(
                        "many entries in keepers",
                        small.replace(
                                "keepers:\n",
                                "keepers:\n" + "  - {feed: hatch, at: 9:00, energy-kj: 100}\n".repeat(90_000))));
    }
}
