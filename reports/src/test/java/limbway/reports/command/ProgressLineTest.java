package limbway.reports.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.concurrent.atomic.AtomicLong;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

@Tag("derived")
class ProgressLineTest {

    private static final long SECOND = 1_000_000_000;

    private final AtomicLong clock = new AtomicLong();
    private final StringWriter said = new StringWriter();
    private ProgressLine progress = line(false);

    private ProgressLine line(boolean watched) {
        return new ProgressLine(new PrintWriter(said), () -> false, clock::get, watched, 2, 10);
    }

    private String saidAfter(int seconds, int done) {
        clock.set(seconds * SECOND);
        progress.finished(done, 10);
        return said.toString().replace(System.lineSeparator(), "\n");
    }

    @Test
    void theTimeLeftIsToldFromRepetitionsAndNotFromWhatCameBeforeThem() {
        progress.nextLayout("as drawn");
        // 100 s of preparation say nothing of the repetitions to come
        String first = saidAfter(100, 1);
        assertEquals("layout 1 of 2, as drawn: 1 of 10 repetitions\n", first);
        assertEquals(first, saidAfter(105, 3));
        // 5 repetitions in 10 s, and 4 + 10 are left: 28 s
        assertEquals(first + "layout 1 of 2, as drawn: 6 of 10 repetitions, about 28 s left\n", saidAfter(110, 6));
        // the next line comes ten seconds later
        assertEquals(first + "layout 1 of 2, as drawn: 6 of 10 repetitions, about 28 s left\n", saidAfter(119, 9));
        assertFalse(progress.wantsStop());
    }

    @Test
    void whereSomebodyWatchesOneLineIsWrittenOver() {
        progress = line(true);
        progress.nextLayout("as drawn");
        assertEquals("", saidAfter(1, 1));
        assertEquals("\rlayout 1 of 2, as drawn: 2 of 10 repetitions", saidAfter(2, 2));
        progress.end();
        assertTrue(said.toString().endsWith("\r"), said.toString());
        assertFalse(said.toString().contains("\n"));
    }
}
