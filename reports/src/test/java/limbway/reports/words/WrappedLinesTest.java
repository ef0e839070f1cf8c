package limbway.reports.words;

import java.util.List;

import org.junit.jupiter.api.Test;

import static org.junit.jupiter.api.Assertions.assertEquals;

class WrappedLinesTest {

    private final WrappedLines lines = new WrappedLines();

    @Test
    void aSentenceIsWrappedBetweenWordsAndIndented() {
        lines.add("a".repeat(100) + " bbbbbbb cc");
        assertEquals(List.of("a".repeat(100) + " bbbbbbb", "    cc"), lines.all());
    }

    @Test
    void oneWordTooLongStaysWhole() {
        lines.add("a".repeat(120));
        assertEquals(List.of("a".repeat(120)), lines.all());
    }

    @Test
    void rowsAreLeftAsTheyAre() {
        lines.row("a ".repeat(80));
        assertEquals(List.of("a ".repeat(80)), lines.all());
    }
}
