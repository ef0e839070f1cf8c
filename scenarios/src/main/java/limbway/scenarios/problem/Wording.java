package limbway.scenarios.problem;

import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.Collection;
import java.util.regex.Pattern;

/** How words and numbers from a file are shown in messages. */
public final class Wording {

    private static final int LONGEST = 60;
    private static final int LONGEST_LINE = 600;
    private static final int MOST_NAMED = 12;
    private static final Pattern CONTROL = Pattern.compile("\\p{Cntrl}");

    private Wording() {}

    /**
     * Text of the user in quotation marks, cut where it is long, without line ends or control characters.
     *
     * @param text any text
     * @return text that fits into a line of a message
     */
    public static String quote(String text) {
        StringBuilder shown = new StringBuilder("\"");
        text.codePoints()
                .limit(LONGEST)
                .map(c -> Character.isISOControl(c) ? ' ' : c)
                .forEach(shown::appendCodePoint);
        if (text.codePointCount(0, text.length()) > LONGEST) {
            shown.append('…');
        }
        return shown.append('"').toString();
    }

    /**
     * Text without line ends or control characters, cut where it is very long.
     *
     * @param text any text
     * @return text for one line of a message
     */
    static String onOneLine(String text) {
        String cut = text.length() > LONGEST_LINE ? text.substring(0, LONGEST_LINE) + "…" : text;
        return cut.codePoints().anyMatch(Character::isISOControl)
                ? CONTROL.matcher(cut).replaceAll(" ")
                : cut;
    }

    /**
     * A number without needless digits.
     *
     * @param value any finite number
     * @return plain decimal digits, at most four after the point
     */
    public static String number(double value) {
        BigDecimal rounded = BigDecimal.valueOf(value).setScale(4, RoundingMode.HALF_EVEN);
        if (rounded.signum() == 0) {
            return value == 0 ? "0" : Double.toString(value);
        }
        return rounded.stripTrailingZeros().toPlainString();
    }

    /**
     * A number with its unit.
     *
     * @param value any finite number
     * @param unit unit, or empty for a plain number
     * @return number, space, unit
     */
    public static String measure(double value, String unit) {
        return unit.isEmpty() ? number(value) : number(value) + " " + unit;
    }

    /**
     * Words in a row.
     *
     * @param words any words
     * @return the words with commas between; a long row is cut and the rest counted
     */
    public static String list(Collection<String> words) {
        String shown = String.join(", ", words.stream().limit(MOST_NAMED).toList());
        int rest = words.size() - MOST_NAMED;
        return rest > 0 ? shown + " and " + rest + " more" : shown;
    }
}
