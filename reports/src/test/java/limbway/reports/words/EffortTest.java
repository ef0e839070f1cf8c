package limbway.reports.words;

import org.junit.jupiter.api.Test;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

class EffortTest {

    @Test
    void thousandsAreSetApart() {
        assertEquals("999", Figures.count(999));
        assertEquals("189 780 676", Figures.count(189_780_676));
        assertEquals("about 2 400 repetitions", Effort.repetitions(2_400));
        assertEquals("about 1 repetition", Effort.repetitions(1));
    }

    @Test
    void moreThanAMillionIsNotCounted() {
        assertFalse(Effort.isAbsurd(1_000_000));
        assertEquals("about 1 000 000 repetitions", Effort.repetitions(1_000_000));
        assertTrue(Effort.isAbsurd(1_000_001));
        assertEquals("more than a million repetitions", Effort.repetitions(1_000_001));
    }
}
