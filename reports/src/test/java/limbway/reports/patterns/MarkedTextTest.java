package limbway.reports.patterns;

import org.junit.jupiter.api.Test;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

class MarkedTextTest {

    private static final String PAGE = "before\n<!-- computed: a -->\nold\n<!-- end: a -->\nafter\n";

    @Test
    void aPartIsReadAndReplacedAndTheRestStays() {
        assertEquals("old\n", MarkedText.between(PAGE, "a"));
        String replaced = MarkedText.replaced(PAGE, "a", "new\nlines\n");
        assertEquals("before\n<!-- computed: a -->\nnew\nlines\n<!-- end: a -->\nafter\n", replaced);
    }

    @Test
    void aMissingMarkIsNamed() {
        var missing = assertThrows(IllegalArgumentException.class, () -> MarkedText.between(PAGE, "b"));
        assertEquals("docs/validation.md: no mark \"<!-- computed: b -->\"", missing.getMessage());
    }
}
