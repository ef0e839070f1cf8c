package limbway.reports.words;

import java.util.regex.Pattern;

/** Keeps a number on one line with its thousands and its unit, wherever lines are broken by a browser or a chart. */
public final class Unbroken {

    private static final Pattern THOUSANDS = Pattern.compile("(?<=\\d) (?=\\d{3}(?!\\d))");
    private static final Pattern UNIT =
            Pattern.compile("(?<=[\\d<>]) (?=(?:%|m|m²|m³|cm|J|kJ|s|kg|h|min|°C|W|\\d)(?!\\w))");
    private static final String NO_BREAK = "\u00a0";

    private Unbroken() {}

    /**
     * Joins numbers and units by spaces at which no line is broken.
     *
     * @param text any text
     * @return the same words; nothing but spaces differs
     */
    public static String text(String text) {
        return UNIT.matcher(THOUSANDS.matcher(text).replaceAll(NO_BREAK)).replaceAll(NO_BREAK);
    }
}
