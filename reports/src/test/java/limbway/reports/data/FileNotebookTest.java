package limbway.reports.data;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

class FileNotebookTest {

    /** Values whose last bits matter, and those that are no usual numbers. */
    private static final double[] HARD = {
        1.0 / 3,
        -0.0,
        Math.nextUp(1.0),
        Double.MIN_VALUE,
        -Double.MAX_VALUE,
        Double.NaN,
        Double.POSITIVE_INFINITY,
        Double.NEGATIVE_INFINITY
    };

    private static final String QUESTION = "scenario 12ab seed 1 days 7";

    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void name() {
        file = folder.resolve("notebook.tsv");
    }

    private static void assertSameBits(double[] expected, double[] found) {
        assertEquals(expected.length, found.length);
        for (int i = 0; i < expected.length; i++) {
            assertEquals(Double.doubleToLongBits(expected[i]), Double.doubleToLongBits(found[i]), "value " + i);
        }
    }

    private double[] found(String key) throws IOException {
        try (FileNotebook again = FileNotebook.open(file, QUESTION)) {
            return again.find(key).orElseThrow();
        }
    }

    @Test
    void whatIsNotedComesBackToTheLastBit() throws IOException {
        try (FileNotebook notebook = FileNotebook.open(file, QUESTION)) {
            assertEquals(0, notebook.found());
            notebook.note("as drawn #1", HARD);
            notebook.note("empty", new double[0]);
            assertSameBits(HARD, notebook.find("as drawn #1").orElseThrow());
        }
        assertSameBits(HARD, found("as drawn #1"));
        assertSameBits(new double[0], found("empty"));
        try (FileNotebook again = FileNotebook.open(file, QUESTION)) {
            assertEquals(2, again.found());
            assertTrue(again.find("as drawn #2").isEmpty());
        }
    }

    @Test
    void everyLineIsThereAtOnceSoThatNothingIsLostIfTheProcessEnds() throws IOException {
        FileNotebook notebook = FileNotebook.open(file, QUESTION);
        notebook.note("a", new double[] {1});
        assertEquals(QUESTION + "\na\t0x1.0p0\n", Files.readString(file));
        notebook.note("b", new double[] {0.5, 2});
        assertEquals(QUESTION + "\na\t0x1.0p0\nb\t0x1.0p-1\t0x1.0p1\n", Files.readString(file));
        notebook.close();
    }

    @Test
    void aLastLineThatWasCutOffIsNotReadAndTheNextOneIsWhole() throws IOException {
        try (FileNotebook notebook = FileNotebook.open(file, QUESTION)) {
            notebook.note("a", new double[] {1});
        }
        Files.writeString(file, "b\t0x1.8p", StandardCharsets.UTF_8, StandardOpenOption.APPEND);
        try (FileNotebook again = FileNotebook.open(file, QUESTION)) {
            assertEquals(1, again.found());
            assertTrue(again.find("b").isEmpty());
            again.note("b", new double[] {3});
        }
        assertSameBits(new double[] {3}, found("b"));
        assertSameBits(new double[] {1}, found("a"));
    }

    @Test
    void anotherQuestionBeginsAnewAndTheEarlierOneIsSetAside() throws IOException {
        try (FileNotebook notebook = FileNotebook.open(file, QUESTION)) {
            notebook.note("a", new double[] {1});
        }
        try (FileNotebook other = FileNotebook.open(file, QUESTION + "0")) {
            assertEquals(0, other.found());
            assertTrue(other.find("a").isEmpty());
        }
        assertEquals(QUESTION + "0\n", Files.readString(file));
        assertEquals(QUESTION + "\na\t0x1.0p0\n", Files.readString(folder.resolve("notebook-earlier.tsv")));
    }

    @Test
    void aLineThatCannotBeReadIsPassedOver() throws IOException {
        byte[] garbage = {(byte) 0xff, (byte) 0xfe, '\t', 'x', '\n'};
        Files.writeString(file, QUESTION + "\na\t0x1.0p0\nb\tsoon\n\n");
        Files.write(file, garbage, StandardOpenOption.APPEND);
        Files.writeString(file, "c\t0x1.0p1\n", StandardOpenOption.APPEND);
        assertSameBits(new double[] {1}, found("a"));
        assertSameBits(new double[] {2}, found("c"));
        try (FileNotebook notebook = FileNotebook.open(file, QUESTION)) {
            assertTrue(notebook.find("b").isEmpty());
        }
    }

    @Test
    void atItsEndTheLinesAreInTheOrderOfTheirKeys() throws IOException {
        try (FileNotebook notebook = FileNotebook.open(file, QUESTION)) {
            notebook.note("b", new double[] {1});
            notebook.note("a", new double[] {2});
            notebook.note("b", new double[] {1});
        }
        assertEquals(QUESTION + "\na\t0x1.0p1\nb\t0x1.0p0\n", Files.readString(file));
    }

    @Test
    void aFirstLineThatWasCutOffIsTakenAsNew() throws IOException {
        Files.writeString(file, QUESTION);
        assertEquals(0, FileNotebook.open(file, QUESTION).found());
    }

    @Test
    void keysThatWouldBreakALineAreFoundUnderTheirOwnName() throws IOException {
        try (FileNotebook notebook = FileNotebook.open(file, QUESTION)) {
            notebook.note("high\tand\nlinked #1", new double[] {7});
        }
        assertSameBits(new double[] {7}, found("high\tand\nlinked #1"));
    }

    @Test
    void whoeverChangesWhatWasFoundOrNotedDoesNotChangeTheNotebook() throws IOException {
        try (FileNotebook notebook = FileNotebook.open(file, QUESTION)) {
            double[] mine = {1, 2};
            notebook.note("a", mine);
            mine[0] = 9;
            assertSameBits(new double[] {1, 2}, notebook.find("a").orElseThrow());
        }
    }

    @Test
    void aFileThatIsEmptyIsTakenAsNew() throws IOException {
        Files.writeString(file, "");
        try (FileNotebook notebook = FileNotebook.open(file, QUESTION)) {
            assertEquals(0, notebook.found());
        }
        assertEquals(QUESTION + "\n", Files.readString(file));
    }
}
