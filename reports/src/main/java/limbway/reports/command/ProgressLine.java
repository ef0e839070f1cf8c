package limbway.reports.command;

import java.io.PrintWriter;
import java.util.function.BooleanSupplier;
import java.util.function.LongSupplier;

import limbway.reports.words.Figures;
import limbway.sim.experiment.Progress;

/**
 * Says on standard error how far a run is, once it has taken more than two seconds: on one line that is written over
 * about every second where somebody watches, else on a line of its own every ten seconds.
 *
 * <p>The time that is left is told from the pace of repetitions alone. The first repetition of a layout is left out of it: it
 * waits for routes that all others find worked out.
 */
final class ProgressLine implements Progress {

    private static final double QUIET_S = 2;
    private static final double WATCHED_S = 1;
    private static final double UNWATCHED_S = 10;
    private static final int LEAST_PACED = 5;
    private static final double NANO = 1e-9;

    private final PrintWriter err;
    private final BooleanSupplier stop;
    private final LongSupplier nanoClock;
    private final boolean watched;
    private final int layouts;
    private final int repetitions;
    private final long start;
    private double lastSaidS;
    private int layout;
    private String name = "";
    private int done;
    private double lastFinishedS;
    private double pacedS;
    private int paced;
    private int written;

    ProgressLine(
            PrintWriter err,
            BooleanSupplier stop,
            LongSupplier nanoClock,
            boolean watched,
            int layouts,
            int repetitions) {
        this.err = err;
        this.stop = stop;
        this.nanoClock = nanoClock;
        this.watched = watched;
        this.layouts = layouts;
        this.repetitions = repetitions;
        this.start = nanoClock.getAsLong();
    }

    void nextLayout(String layoutName) {
        layout++;
        name = layoutName;
        done = 0;
    }

    @Override
    public void finished(int finished, int total) {
        double nowS = elapsedS();
        if (done > 0) {
            pacedS += nowS - lastFinishedS;
            paced += finished - done;
        }
        done = finished;
        lastFinishedS = nowS;
        say(nowS);
    }

    /** Asked about ten times a second while the run goes on. */
    @Override
    public boolean wantsStop() {
        say(elapsedS());
        return stop.getAsBoolean();
    }

    /** Leaves the line free for what is said next. */
    void end() {
        if (written > 0) {
            err.print("\r" + " ".repeat(written) + "\r");
            err.flush();
            written = 0;
        }
    }

    private double elapsedS() {
        return (nanoClock.getAsLong() - start) * NANO;
    }

    private void say(double nowS) {
        boolean first = lastSaidS == 0;
        double pauseS = first ? 0 : watched ? WATCHED_S : UNWATCHED_S;
        if (nowS < QUIET_S || nowS - lastSaidS < pauseS) {
            return;
        }
        lastSaidS = nowS;
        String text = text();
        if (watched) {
            err.print("\r" + text + " ".repeat(Math.max(0, written - text.length())));
            written = text.length();
        } else {
            err.println(text);
        }
        err.flush();
    }

    private String text() {
        String of = layouts > 1 ? "layout " + layout + " of " + layouts + ", " : "";
        String left = "";
        if (paced >= LEAST_PACED) {
            double repetitionsLeft = (double) (layouts - layout + 1) * repetitions - done;
            left = ", about " + Figures.decimals(Math.ceil(repetitionsLeft * pacedS / paced), 0) + " s left";
        }
        return of + name + ": " + done + " of " + repetitions + " repetitions" + left;
    }
}
