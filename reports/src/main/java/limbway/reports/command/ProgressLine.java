package limbway.reports.command;

import java.io.PrintWriter;
import java.util.function.BooleanSupplier;
import java.util.function.LongSupplier;

import limbway.reports.words.Figures;
import limbway.sim.experiment.Progress;

/** Says on standard error how far a run is, once it has taken more than two seconds. */
final class ProgressLine implements Progress {

    private static final double QUIET_S = 2;
    private static final double NANO = 1e-9;

    private final PrintWriter err;
    private final BooleanSupplier stop;
    private final LongSupplier nanoClock;
    private final int layouts;
    private final long start;
    private double lastS;
    private int layout;
    private String name = "";

    ProgressLine(PrintWriter err, BooleanSupplier stop, LongSupplier nanoClock, int layouts) {
        this.err = err;
        this.stop = stop;
        this.nanoClock = nanoClock;
        this.layouts = layouts;
        this.start = nanoClock.getAsLong();
    }

    void nextLayout(String layoutName) {
        layout++;
        name = layoutName;
    }

    @Override
    public void finished(int done, int total) {
        double elapsedS = (nanoClock.getAsLong() - start) * NANO;
        if (elapsedS < QUIET_S || elapsedS - lastS < QUIET_S) {
            return;
        }
        lastS = elapsedS;
        double share = (layout - 1 + (double) done / total) / layouts;
        String of = layouts > 1 ? "layout " + layout + " of " + layouts + ", " : "";
        err.println(of + name + ": " + done + " of " + total + " repetitions, about "
                + Figures.decimals(Math.ceil(elapsedS / share - elapsedS), 0) + " s left");
        err.flush();
    }

    @Override
    public boolean wantsStop() {
        return stop.getAsBoolean();
    }
}
