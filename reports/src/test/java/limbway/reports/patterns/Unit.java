package limbway.reports.patterns;

import java.util.Locale;

/** How a number of the tables is printed. */
enum Unit {
    PERCENT(" %", 100, 1),
    POINTS(" points", 100, 1),
    METRES(" m", 1, 2),
    MILLIMETRES(" mm", 1000, 1),
    MINUTES(" min", 1, 1),
    CLOCK(" h", 1, 2),
    DAYS(" d", 1, 0),
    TIMES("", 1, 2);

    private final String sign;
    private final double factor;
    private final int decimals;

    Unit(String sign, double factor, int decimals) {
        this.sign = sign;
        this.factor = factor;
        this.decimals = decimals;
    }

    String sign() {
        return sign;
    }

    String number(double value) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value * factor);
        return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
    }
}
