package limbway.reports.command;

import java.util.function.BooleanSupplier;

import limbway.model.shade.ShadeProgress;

/** Says how far the audit of a year of shade, or the search for a roof, is. */
final class ShadeProgressLine implements ShadeProgress {

    private final StatusLine line;
    private final String what;
    private final String unit;
    private final BooleanSupplier stop;

    ShadeProgressLine(StatusLine line, String what, String unit, BooleanSupplier stop) {
        this.line = line;
        this.what = what;
        this.unit = unit;
        this.stop = stop;
    }

    @Override
    public boolean goesOn(int done, int total) {
        line.say(line.elapsedS(), () -> what + ": " + done + " of " + total + " " + unit);
        return !stop.getAsBoolean();
    }
}
