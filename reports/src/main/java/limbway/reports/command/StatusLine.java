package limbway.reports.command;

import java.io.PrintWriter;
import java.util.function.LongSupplier;
import java.util.function.Supplier;

/**
 * Says on standard error how far something is, once it has taken more than two seconds: on one line that is written over
 * about every second where somebody watches, else on a line of its own every ten seconds.
 */
final class StatusLine {

    private static final double QUIET_S = 2;
    private static final double WATCHED_S = 1;
    private static final double UNWATCHED_S = 10;
    private static final double NANO = 1e-9;

    private final PrintWriter err;
    private final LongSupplier nanoClock;
    private final boolean watched;
    private final long start;
    private double lastSaidS;
    private int written;

    StatusLine(PrintWriter err, LongSupplier nanoClock, boolean watched) {
        this.err = err;
        this.nanoClock = nanoClock;
        this.watched = watched;
        this.start = nanoClock.getAsLong();
    }

    double elapsedS() {
        return (nanoClock.getAsLong() - start) * NANO;
    }

    /** Says where things are, unless it is too early to say anything again. */
    void say(double nowS, Supplier<String> words) {
        boolean first = lastSaidS == 0;
        double pauseS = first ? 0 : watched ? WATCHED_S : UNWATCHED_S;
        if (nowS < QUIET_S || nowS - lastSaidS < pauseS) {
            return;
        }
        lastSaidS = nowS;
        String text = words.get();
        if (watched) {
            err.print("\r" + text + " ".repeat(Math.max(0, written - text.length())));
            written = text.length();
        } else {
            err.println(text);
        }
        err.flush();
    }

    /** Leaves the line free for what is said next. */
    void end() {
        if (written > 0) {
            err.print("\r" + " ".repeat(written) + "\r");
            err.flush();
            written = 0;
        }
    }
}
