package limbway.model.parameter;

/**
 * One number of the model, with everything a doubtful reader asks about it.
 *
 * @param name dotted name, unique within a run, for example {@code energy.clamber-multiplier}
 * @param meaning what the number stands for, in one clause
 * @param unit SI unit in square-bracket style without brackets, {@code 1} for a ratio
 * @param value the value in use
 * @param low least value worth trying
 * @param high greatest value worth trying, not below {@code low}
 * @param standing how well the default is known
 * @param source where it comes from, or why it was assumed
 */
public record Parameter(
        String name,
        String meaning,
        String unit,
        double value,
        double low,
        double high,
        Standing standing,
        String source) {

    /**
     * Checks that the range is a range.
     *
     * @throws IllegalArgumentException naming the parameter if the range is reversed or a number is not finite
     */
    public Parameter {
        if (!(Double.isFinite(value) && Double.isFinite(low) && Double.isFinite(high) && low <= high)) {
            throw new IllegalArgumentException("parameter \"" + name + "\": value = " + value + ", range " + low
                    + " to " + high + ", allowed finite numbers with low <= high");
        }
    }

    /**
     * The same parameter with another value in use.
     *
     * @param newValue the value to use, finite; may lie outside the range worth trying
     * @return a copy
     */
    public Parameter withValue(double newValue) {
        return new Parameter(name, meaning, unit, newValue, low, high, standing, source);
    }
}
