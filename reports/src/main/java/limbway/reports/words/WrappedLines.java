package limbway.reports.words;

import java.util.ArrayList;
import java.util.List;

/** Lines for a terminal: sentences on as many lines as they need, and rows that are left as they are. */
public final class WrappedLines {

    private static final int WIDTH = 108;
    private static final String INDENT = "    ";

    private final List<String> lines = new ArrayList<>();

    /**
     * Adds a sentence, wrapped between words; all lines but its first are indented.
     *
     * @param text the sentence
     */
    public void add(String text) {
        String rest = text;
        while (rest.length() > WIDTH) {
            int end = rest.lastIndexOf(' ', WIDTH);
            if (end <= INDENT.length()) {
                break;
            }
            lines.add(rest.substring(0, end));
            rest = INDENT + rest.substring(end + 1);
        }
        lines.add(rest);
    }

    /**
     * Adds a line that is not wrapped, as of a table.
     *
     * @param line the line
     */
    public void row(String line) {
        lines.add(line);
    }

    /**
     * All lines.
     *
     * @return in the order in which they were added
     */
    public List<String> all() {
        return List.copyOf(lines);
    }
}
