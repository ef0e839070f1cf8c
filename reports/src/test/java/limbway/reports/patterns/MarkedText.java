package limbway.reports.patterns;

/** A part of a page that is written by a program, between two remarks that do not show. */
final class MarkedText {

    private MarkedText() {}

    static String between(String page, String name) {
        return page.substring(begin(page, name), end(page, name));
    }

    static String replaced(String page, String name, String text) {
        return page.substring(0, begin(page, name)) + text + page.substring(end(page, name));
    }

    private static int begin(String page, String name) {
        return after(page, "<!-- computed: " + name + " -->\n");
    }

    private static int end(String page, String name) {
        String mark = "<!-- end: " + name + " -->";
        return after(page, mark) - mark.length();
    }

    private static int after(String page, String mark) {
        int at = page.indexOf(mark);
        if (at < 0) {
            throw new IllegalArgumentException("docs/validation.md: no mark \"" + mark.strip() + "\"");
        }
        return at + mark.length();
    }
}
