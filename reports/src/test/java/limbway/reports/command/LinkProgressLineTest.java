package limbway.reports.command;

import java.io.PrintWriter;
import java.io.StringWriter;
import java.util.concurrent.atomic.AtomicLong;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import static org.junit.jupiter.api.Assertions.assertEquals;

@Tag("derived")
class LinkProgressLineTest {

    private static final long SECOND = 1_000_000_000;

    private final AtomicLong clock = new AtomicLong();
    private final StringWriter said = new StringWriter();
    private final LinkProgressLine progress =
            new LinkProgressLine(new StatusLine(new PrintWriter(said), clock::get, false), () -> false);

    /** The line that is said then; empty if none is. */
    private String line(int second, String stage, int done, int total) {
        int before = said.toString().length();
        clock.set(second * SECOND);
        progress.at(stage, done, total);
        return said.toString().substring(before).strip();
    }

    @Test
    void theFirstLineSaysWhatBegins() {
        clock.set(10 * SECOND);
        progress.wantsStop();
        assertEquals("links: beginning", said.toString().strip());
    }

    @Test
    void whatANotebookKnewIsNotPartOfThePace() {
        assertEquals("pricing links: 80 of 100", line(10, "pricing links", 80, 100));
        // 7 links in 20 s, and 13 are left: 37.1 s; over all 87 it would be 3 s
        assertEquals("pricing links: 87 of 100, about 38 s left of this", line(30, "pricing links", 87, 100));
        // another stage, and the second layout of a stage, begin anew
        assertEquals("living with 1 of 5: 1 of 10", line(50, "living with 1 of 5", 1, 10));
        assertEquals("living with 1 of 5: 8 of 10, about 6 s left of this", line(70, "living with 1 of 5", 8, 10));
        assertEquals("living with 1 of 5: 1 of 10", line(90, "living with 1 of 5", 1, 10));
    }
}
