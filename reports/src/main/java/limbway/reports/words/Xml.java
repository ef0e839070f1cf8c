package limbway.reports.words;

/** Makes text safe to stand in HTML, SVG and XML. */
public final class Xml {

    private Xml() {}

    /**
     * Replaces what could be read as markup, characters that XML does not allow, and those that turn the direction of writing.
     *
     * @param text any text
     * @return text that shows as it was, in an element or a quoted attribute
     */
    public static String escape(String text) {
        StringBuilder safe = new StringBuilder();
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                default -> safe.appendCodePoint(shown(c));
            }
        });
        return safe.toString();
    }

    /**
     * Replaces characters that XML does not allow, and those that turn the direction of writing, by a sign for something unknown.
     *
     * @param text any text
     * @return the same but for them; not escaped
     */
    public static String shown(String text) {
        StringBuilder shown = new StringBuilder(text.length());
        text.codePoints().forEach(c -> shown.appendCodePoint(shown(c)));
        return shown.toString();
    }

    private static int shown(int c) {
        return isAllowed(c) && !Directions.turns(c) ? c : 0xFFFD;
    }

    private static boolean isAllowed(int c) {
        boolean control = c < 0x20 && c != '\n' && c != '\t' && c != '\r';
        return !control && c != 0xFFFE && c != 0xFFFF && !(c >= 0xD800 && c <= 0xDFFF);
    }
}
