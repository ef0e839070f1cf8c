package limbway.reports.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.concurrent.atomic.AtomicLong;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

@Tag("derived")
class ProgressLineTest {

    private static final long SECOND = 1_000_000_000;

    private final AtomicLong clock = new AtomicLong();
    private final StringWriter said = new StringWriter();
    private final ProgressLine progress = new ProgressLine(new PrintWriter(said), () -> false, clock::get, 2);

    private String saidAfter(int seconds, int done) {
        clock.set(seconds * SECOND);
        progress.finished(done, 10);
        return said.toString().replace(System.lineSeparator(), "\n");
    }

    @Test
    void nothingIsSaidInTheFirstTwoSecondsAndThenHowFarItIs() {
        progress.nextLayout("as drawn");
        assertEquals("", saidAfter(1, 3));
        // half of the first of two layouts in 5 s: a quarter, so 15 s are left
        assertEquals("layout 1 of 2, as drawn: 5 of 10 repetitions, about 15 s left\n", saidAfter(5, 5));
        // no second line within two seconds
        assertEquals("layout 1 of 2, as drawn: 5 of 10 repetitions, about 15 s left\n", saidAfter(6, 6));
        assertFalse(progress.wantsStop());
    }
}
