package limbway.reports.command;

import java.util.function.BooleanSupplier;

import limbway.reports.words.Figures;
import limbway.sim.experiment.Progress;

/** Says how far a placing is; the time that is left is at most what the whole budget would take at the pace so far. */
final class PlaceProgressLine implements Progress {

    private static final int LEAST_PACED = 5;

    private final StatusLine line;
    private final BooleanSupplier stop;
    private final int atMost;
    private int done;

    PlaceProgressLine(StatusLine line, int atMost, BooleanSupplier stop) {
        this.line = line;
        this.atMost = atMost;
        this.stop = stop;
    }

    @Override
    public void finished(int ofThisTrial, int total) {
        done++;
        line.say(line.elapsedS(), this::text);
    }

    @Override
    public boolean wantsStop() {
        line.say(line.elapsedS(), this::text);
        return stop.getAsBoolean();
    }

    private String text() {
        String left = "";
        if (done >= LEAST_PACED) {
            double leftS = line.elapsedS() / done * Math.max(0, atMost - done);
            left = ", at most about " + Figures.decimals(Math.ceil(leftS), 0) + " s left";
        }
        return "places: " + Figures.count(done) + " of at most " + Figures.count(atMost) + " repetitions" + left;
    }
}
