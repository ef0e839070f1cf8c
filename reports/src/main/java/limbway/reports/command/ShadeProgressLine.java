package limbway.reports.command;

import java.util.function.BooleanSupplier;

import limbway.model.shade.ShadeProgress;

/** Says how far the audit of a year of shade is. */
final class ShadeProgressLine implements ShadeProgress {

    private final StatusLine line;
    private final BooleanSupplier stop;
    private int done;
    private int total;

    ShadeProgressLine(StatusLine line, BooleanSupplier stop) {
        this.line = line;
        this.stop = stop;
    }

    @Override
    public synchronized void finished(int nowDone, int ofAll) {
        done = nowDone;
        total = ofAll;
        line.say(line.elapsedS(), () -> "sun and shade: " + done + " of " + total + " days");
    }

    @Override
    public boolean wantsStop() {
        return stop.getAsBoolean();
    }
}
