package limbway.reports.command;

import java.util.function.BooleanSupplier;

import limbway.model.shade.ShadeProgress;

/** Says how far the audit of a year of shade is. */
final class ShadeProgressLine implements ShadeProgress {

    private final StatusLine line;
    private final BooleanSupplier stop;

    ShadeProgressLine(StatusLine line, BooleanSupplier stop) {
        this.line = line;
        this.stop = stop;
    }

    @Override
    public boolean goesOn(int done, int total) {
        line.say(line.elapsedS(), () -> "sun and shade: " + done + " of " + total + " days");
        return !stop.getAsBoolean();
    }
}
