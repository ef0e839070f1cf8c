package limbway.reports.command;

import java.util.function.BooleanSupplier;

import limbway.reports.words.Figures;
import limbway.sim.experiment.Progress;

/** Says how far a screening is; the time that is left is told from the pace so far. */
final class ScreenProgressLine implements Progress {

    private static final double LEAST_PACED_SHARE = 0.02;

    private final StatusLine line;
    private final BooleanSupplier stop;
    private int done;
    private int total;

    ScreenProgressLine(StatusLine line, BooleanSupplier stop) {
        this.line = line;
        this.stop = stop;
    }

    @Override
    public void finished(int nowDone, int ofTotal) {
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
            return "assumptions: beginning";
        }
        String left = "";
        if (done >= LEAST_PACED_SHARE * total) {
            double leftS = line.elapsedS() / done * (total - done);
            left = ", about " + Figures.decimals(Math.ceil(leftS), 0) + " s left";
        }
        return "assumptions: " + done + " of " + total + " points" + left;
    }
}
