package limbway.reports.command;

import java.io.PrintWriter;
import java.util.function.BooleanSupplier;
import java.util.function.LongSupplier;

import limbway.reports.words.Figures;
import limbway.sim.experiment.Progress;

/**
 * Says how far a run is.
 *
 * <p>The time that is left is told from the pace of repetitions alone. The first repetition of a layout is left out of it: it
 * waits for routes that all others find worked out.
 */
final class ProgressLine implements Progress {

    private static final int LEAST_PACED = 5;

    private final StatusLine line;
    private final BooleanSupplier stop;
    private final int layouts;
    private final int repetitions;
    private int layout;
    private String name = "";
    private int done;
    private double lastFinishedS;
    private double pacedS;
    private int paced;

    ProgressLine(
            PrintWriter err,
            BooleanSupplier stop,
            LongSupplier nanoClock,
            boolean watched,
            int layouts,
            int repetitions) {
        this.line = new StatusLine(err, nanoClock, watched);
        this.stop = stop;
        this.layouts = layouts;
        this.repetitions = repetitions;
    }

    void nextLayout(String layoutName) {
        layout++;
        name = layoutName;
        done = 0;
    }

    @Override
    public void finished(int finished, int total) {
        double nowS = line.elapsedS();
        if (done > 0) {
            pacedS += nowS - lastFinishedS;
            paced += finished - done;
        }
        done = finished;
        lastFinishedS = nowS;
        line.say(nowS, this::text);
    }

    /** Asked about ten times a second while the run goes on. */
    @Override
    public boolean wantsStop() {
        line.say(line.elapsedS(), this::text);
        return stop.getAsBoolean();
    }

    /** Leaves the line free for what is said next. */
    void end() {
        line.end();
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
