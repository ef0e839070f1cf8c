package limbway.reports.command;

import java.io.IOException;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import picocli.CommandLine;

import limbway.reports.command.TinyScenario.Answer;
import limbway.reports.words.Cautions;

import static limbway.reports.command.TinyScenario.limbway;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

class MessagesTest {

    @TempDir
    Path folder;

    private Path scenario;

    @BeforeEach
    void write() throws IOException {
        scenario = TinyScenario.write(folder);
    }

    private static void refused(String message, Answer answer) {
        assertEquals(message, answer.err());
        assertEquals(2, answer.code());
    }

    @Test
    void anUnknownCommandIsGuessed() {
        refused("""
                limbway: there is no such command
                  found    chek
                  allowed  check, run, explain, compare, place, link, sweep, screen, shade, lesson, graph
                  mend     did you mean "check"?
                """, limbway("chek", scenario));
    }

    @Test
    void anUnknownOptionIsGuessed() {
        refused("""
                limbway: there is no such option
                  found    --varant
                  allowed  --variant, --json, --trace, --help
                  mend     did you mean "--variant"?
                """, limbway("check", scenario, "--varant=joined"));
    }

    @Test
    void aSeedOutsideItsRangeIsRefused() {
        refused("""
                limbway: --seed cannot be that
                  found    0
                  allowed  a whole number from 1 to 2147483647
                  mend     see limbway run --help
                """, limbway("run", scenario, "--seed", "0"));
        assertEquals(2, limbway("run", scenario, "--seed", "2147483648").code());
        assertEquals(2, limbway("run", scenario, "--days", "two").code());
        assertEquals(2, limbway("run", scenario, "--date", "2026-02-30").code());
    }

    @Test
    void anUnknownVariantIsGuessed() {
        refused("""
                limbway: there is no variant of that name
                  found    "jioned"
                  allowed  as drawn, joined
                  mend     did you mean "joined"?
                """, limbway("run", scenario, "--variant", "jioned"));
    }

    @Test
    void anUnknownBodyOrPlaceIsGuessed() {
        refused("""
                limbway: there is no body in the group of that name
                  found    "adult female"
                  allowed  adult female and infant, juvenile
                  mend     use one of these names, in quotation marks if it has spaces
                """, limbway("explain", scenario, "--body", "adult female", "--from", "cup", "--to", "tray"));
        refused("""
                limbway: there is no resource of that name
                  found    "tary"
                  allowed  tray, cup, roof, bed-1, bed-2
                  mend     did you mean "tray"?
                """, limbway("explain", scenario, "--body", "juvenile", "--from", "cup", "--to", "tary"));
    }

    @Test
    void whatIsMissingIsNamed() {
        refused("""
                limbway: something is missing
                  found    nothing for --body, --from
                  mend     see limbway explain --help
                """, limbway("explain", scenario, "--to", "tray"));
        refused("""
                limbway: no command given
                  mend     see limbway --help
                """, limbway());
    }

    @Test
    void aFormatThatIsNotThereIsRefused() {
        refused("""
                limbway: the graph cannot be written in that format
                  found    obj
                  allowed  csv, graphml, glb
                  mend     choose one of these
                """, limbway("graph", scenario, "--format", "obj"));
    }

    @Test
    void aMistakeInTheScenarioHasItsPlace() throws IOException {
        Path wrong =
                Files.writeString(folder.resolve("wrong.yaml"), TinyScenario.TEXT.replace("height: 5,", "hieght: 5,"));
        Answer answer = limbway("check", wrong);
        assertEquals(2, answer.code());
        assertTrue(answer.err().startsWith(wrong + ":5:"), answer.err());
        assertTrue(answer.err().contains("did you mean \"height\"?"), answer.err());
    }

    @Test
    void aFolderThatCannotBeWrittenEndsTheRunBeforeItBegins() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "x");
        Answer answer = limbway("run", scenario, "--out", file);
        assertEquals(3, answer.code());
        assertEquals(
                "limbway: cannot write to " + file + ": there is a file where a folder is needed\n  saved    nothing\n",
                answer.err());
    }

    @Test
    void everyHelpHasExamplesAndCautions() {
        for (String[] args : new String[][] {
            {"--help"},
            {"check", "--help"},
            {"run", "--help"},
            {"explain", "--help"},
            {"shade", "--help"},
            {"screen", "--help"},
            {"sweep", "--help"},
            {"place", "--help"},
            {"compare", "--help"},
            {"link", "--help"},
            {"lesson", "--help"},
            {"graph", "--help"}
        }) {
            Answer answer = limbway((Object[]) args);
            assertEquals(0, answer.code());
            assertTrue(answer.out().contains("Examples:\n  limbway "), answer.out());
            // lines are broken where they are full, and nowhere else
            assertTrue(answer.out().replaceAll("\\s+", " ").contains(Cautions.IN_SHORT), answer.out());
            assertTrue(answer.out().lines().allMatch(line -> line.length() <= 110), answer.out());
            // long options only
            assertFalse(answer.out().matches("(?s).*\\s-[a-zA-Z]\\b.*"), answer.out());
        }
    }

    @Test
    void theListOfCommandsHasWholeSentences() {
        String help = limbway("--help").out();
        String commands = help.substring(help.indexOf("Commands:"), help.indexOf("Examples:"));
        assertTrue(commands.strip().lines().skip(1).allMatch(line -> line.endsWith(".")), commands);
    }

    @Test
    void theUnexpectedIsOneLineUnlessATraceIsAskedFor() {
        CommandLine line = new CommandLine(new CheckCommand());
        StringWriter plain = new StringWriter();
        line.setErr(new PrintWriter(plain));
        IllegalStateException fault = new IllegalStateException("no such thing");
        assertEquals(3, Mishaps.explain(fault, line, line.parseArgs("x.yaml")));
        assertEquals(1, plain.toString().lines().count());
        assertTrue(plain.toString().contains("no such thing (--trace shows where)"), plain.toString());
        StringWriter traced = new StringWriter();
        line.setErr(new PrintWriter(traced));
        assertEquals(3, Mishaps.explain(fault, line, line.parseArgs("x.yaml", "--trace")));
        assertTrue(traced.toString().contains("\tat limbway"), traced.toString());
    }
}
