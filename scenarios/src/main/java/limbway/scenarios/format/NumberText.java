package limbway.scenarios.format;

import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * A number as a keeper writes it: digits, and a unit if there is one.
 *
 * @param value the number, finite
 * @param unit the word after it, or empty
 */
public record NumberText(double value, String unit) {

    private static final int LONGEST = 40;
    private static final Pattern SHAPE =
            Pattern.compile("([+-]?(?:\\d+(?:\\.\\d*)?|\\.\\d+)(?:[eE][+-]?\\d+)?)\\s*((?:[\\p{L}%°]+(?:/\\p{L}+)?)?)");

    /**
     * Reads a number.
     *
     * @param text for example {@code 5.5}, {@code 5.5 m}, {@code 5 %}, {@code 1500 N/m}
     * @return the number, or empty if the text is none or is too large for one
     */
    public static Optional<NumberText> of(String text) {
        String trimmed = text.strip();
        if (trimmed.length() > LONGEST) {
            return Optional.empty();
        }
        Matcher matcher = SHAPE.matcher(trimmed);
        if (!matcher.matches()) {
            return Optional.empty();
        }
        double value = Double.parseDouble(matcher.group(1));
        return Double.isFinite(value) ? Optional.of(new NumberText(value, matcher.group(2))) : Optional.empty();
    }
}
