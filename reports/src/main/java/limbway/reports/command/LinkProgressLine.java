package limbway.reports.command;

import java.util.function.BooleanSupplier;

import limbway.reports.words.Figures;
import limbway.sim.experiment.link.SearchProgress;

/** Says how far a search for links is; the time that is left of a stage is told from its pace. */
final class LinkProgressLine implements SearchProgress {

    private static final double LEAST_PACED_SHARE = 0.02;

    private final StatusLine line;
    private final BooleanSupplier stop;
    private String stage = "links: beginning";
    private int known;
    private double sinceS;
    private int done;
    private int total;

    LinkProgressLine(StatusLine line, BooleanSupplier stop) {
        this.line = line;
        this.stop = stop;
    }

    @Override
    public void at(String nowStage, int nowDone, int ofTotal) {
        if (!nowStage.equals(stage) || nowDone < done) {
            // what a notebook knew took no time
            stage = nowStage;
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
            return stage;
        }
        String left = "";
        if (done > known && done - known >= LEAST_PACED_SHARE * total) {
            double leftS = (line.elapsedS() - sinceS) / (done - known) * (total - done);
            left = ", about " + Figures.decimals(Math.ceil(leftS), 0) + " s left of this";
        }
        return stage + ": " + Figures.count(done) + " of " + Figures.count(total) + left;
    }
}
