package limbway.reports.command;

import java.util.function.BooleanSupplier;

import limbway.reports.words.Figures;
import limbway.sim.experiment.worlds.WorldProgress;

/** Says how far plausible worlds are; the time that is left is told from the pace of the stage so far. */
final class WorldsProgressLine implements WorldProgress {

    private static final double LEAST_PACED_SHARE = 0.02;

    private final StatusLine line;
    private final BooleanSupplier stop;
    private Stage stage = Stage.WORLDS;
    private double sinceS;
    private int done;
    private int total;

    WorldsProgressLine(StatusLine line, BooleanSupplier stop) {
        this.line = line;
        this.stop = stop;
        this.sinceS = line.elapsedS();
    }

    @Override
    public void finished(Stage nowStage, int nowDone, int ofTotal) {
        if (nowStage != stage) {
            stage = nowStage;
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
            return words() + ": beginning";
        }
        String left = "";
        if (done >= LEAST_PACED_SHARE * total) {
            double leftS = (line.elapsedS() - sinceS) / done * (total - done);
            left = ", about " + Figures.decimals(Math.ceil(leftS), 0) + " s left";
        }
        return words() + ": " + done + " of " + total + left;
    }

    private String words() {
        return switch (stage) {
            case WORLDS -> "plausible worlds";
            case RANGES -> "ranges of the strongest numbers";
            case TURNS -> "where the answer turns";
            case TOTALS -> "worlds for total effects";
        };
    }
}
