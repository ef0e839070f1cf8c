package limbway.model.energy;

/** Refuses values outside their range, in one wording: formula, argument, value, range. */
final class Allowed {

    private Allowed() {}

    /** Checks that a value is above 0; infinity is let through. */
    static double aboveZero(String formula, String argument, double value) {
        if (!(value > 0)) {
            throw new IllegalArgumentException(formula + ": " + argument + " = " + value + ", allowed above 0");
        }
        return value;
    }

    /** Checks that a value lies in a closed range. */
    static double between(String formula, String argument, double value, double low, double high) {
        if (!(value >= low && value <= high)) {
            throw new IllegalArgumentException(
                    formula + ": " + argument + " = " + value + ", allowed " + low + " to " + high);
        }
        return value;
    }
}
