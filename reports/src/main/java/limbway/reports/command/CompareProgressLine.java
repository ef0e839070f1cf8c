package limbway.reports.command;

import java.util.function.BooleanSupplier;

import limbway.reports.words.Figures;
import limbway.sim.experiment.Progress;

/** Says how far a comparison is; the time that is left is told from the pace so far and is the most it can take. */
final class CompareProgressLine implements Progress {

    private static final double LEAST_PACED_SHARE = 0.02;

    private final StatusLine line;
    private final BooleanSupplier stop;
    private String what = "layouts";
    private int known = -1;
    private double sinceS;
    private int done;
    private int total;

    CompareProgressLine(StatusLine line, BooleanSupplier stop) {
        this.line = line;
        this.stop = stop;
    }

    /** Something else is lived from now on. */
    void next(String words) {
        what = words;
        known = -1;
        total = 0;
    }

    @Override
    public void finished(int nowDone, int ofTotal) {
        if (known < 0) {
            // what a notebook knew took no time
            known = nowDone;
            sinceS = line.elapsedS();
        }
        done = nowDone;
        total = ofTotal;
        line.say(line.elapsedS(), this::text);
    }

    @Override
    public boolean wantsStop() {
        line.say(line.elapsedS(), this::text);
        return stop.getAsBoolean();
    }

    private String text() {
        if (total == 0) {
            return what + ": beginning";
        }
        String left = "";
        if (done - known >= LEAST_PACED_SHARE * total && done > known) {
            double leftS = (line.elapsedS() - sinceS) / (done - known) * (total - done);
            left = ", at most about " + Figures.decimals(Math.ceil(leftS), 0) + " s left";
        }
        return what + ": " + Figures.count(done) + " of at most " + Figures.count(total) + " repetitions" + left;
    }
}
