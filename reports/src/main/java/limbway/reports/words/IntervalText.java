package limbway.reports.words;

import java.util.OptionalDouble;

/** A mean with its interval, in words. */
public final class IntervalText {

    /** An interval narrower than this many percentage points is printed with a decimal. */
    private static final double NARROW = 3;

    private IntervalText() {}

    /**
     * A share with its interval; ends beyond 0 and 100 % are printed as these, because no share lies there.
     *
     * @param mean share, 0 to 1
     * @param lo lower end, or empty
     * @param hi upper end, or empty
     * @return for example {@code 43 % (38 to 49 %)}
     */
    public static String percent(double mean, OptionalDouble lo, OptionalDouble hi) {
        if (lo.isEmpty() || hi.isEmpty()) {
            return Figures.percent(mean) + " (one repetition: no interval)";
        }
        double low = 100 * Math.max(0, lo.getAsDouble());
        double high = 100 * Math.min(1, hi.getAsDouble());
        int digits = high - low < NARROW ? 1 : 0;
        return Figures.decimals(100 * mean, digits) + " % (" + Figures.decimals(low, digits) + " to "
                + Figures.decimals(high, digits) + " %)";
    }

    /**
     * A difference of two shares, with its sign.
     *
     * @param mean difference, -1 to 1
     * @param lo lower end, or empty
     * @param hi upper end, or empty
     * @return percentage points, for example {@code +55.4 (+54.5 to +56.3)}
     */
    public static String points(double mean, OptionalDouble lo, OptionalDouble hi) {
        if (lo.isEmpty() || hi.isEmpty()) {
            return signed(mean) + " (one repetition: no interval)";
        }
        return signed(mean) + " (" + signed(lo.getAsDouble()) + " to " + signed(hi.getAsDouble()) + ")";
    }

    private static String signed(double share) {
        String text = Figures.decimals(100 * share, 1);
        return share > 0 && !text.equals("0") ? "+" + text : text.replace('-', '\u2212');
    }

    /**
     * An amount with its interval; an amount that cannot be negative is not printed below 0.
     *
     * @param mean amount, 0 or more
     * @param lo lower end, or empty
     * @param hi upper end, or empty
     * @param digits decimals
     * @param unit unit
     * @return for example {@code 12.5 m (11 to 14 m)}
     */
    public static String amount(double mean, OptionalDouble lo, OptionalDouble hi, int digits, String unit) {
        String text = Figures.decimals(mean, digits) + " " + unit;
        if (lo.isEmpty() || hi.isEmpty()) {
            return text + " (one repetition: no interval)";
        }
        return text + " (" + Figures.decimals(Math.max(0, lo.getAsDouble()), digits) + " to "
                + Figures.decimals(hi.getAsDouble(), digits) + " " + unit + ")";
    }
}
