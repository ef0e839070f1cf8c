package limbway.reports.words;

import java.util.Locale;

/** Numbers with a fixed count of decimals, for files: a point, no thousands, no negative zero. */
public final class Decimals {

    private static final long[] TENS = {1, 10, 100, 1_000, 10_000, 100_000, 1_000_000};

    /** Up to here a double holds every whole number. */
    private static final double EXACT = 1L << 53;

    private Decimals() {}

    /**
     * The number with so many decimals, rounded to the nearest.
     *
     * <p>Written digit by digit, because the formatter of the library takes most of the time of writing a long table.
     *
     * @param value any finite number
     * @param digits digits after the point, 0 to 6
     * @return the number, the same on every machine
     */
    public static String fixed(double value, int digits) {
        double scaled = Math.rint(value * TENS[digits]);
        if (!(Math.abs(scaled) < EXACT)) {
            return String.format(Locale.ROOT, "%." + digits + "f", value);
        }
        long whole = Math.abs((long) scaled);
        StringBuilder text = new StringBuilder(scaled < 0 ? "-" : "").append(whole / TENS[digits]);
        if (digits > 0) {
            String rest = Long.toString(whole % TENS[digits]);
            text.append('.').append("0".repeat(digits - rest.length())).append(rest);
        }
        return text.toString();
    }
}
