package limbway.reports.words;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Keeps names that are written from right to left from turning what stands beside them. */
public final class Directions {

    private static final String RIGHT_TO_LEFT = "\\u0590-\\u08ff\\ufb1d-\\ufdff\\ufe70-\\ufefc";

    /** Words that hold a letter from right to left, with what is joined to them; a comma or a bracket ends them. */
    private static final Pattern WORDS = Pattern.compile("W(?: W)*"
            .replace(
                    "W",
                    "[^\\s,;:()\"]*[" + RIGHT_TO_LEFT + "\\x{10800}-\\x{10fff}\\x{1e800}-\\x{1efff}][^\\s,;:()\"]*"));

    /**
     * A part of a text.
     *
     * @param text what it says
     * @param turned whether it is written from right to left and should stand by itself
     */
    public record Part(String text, boolean turned) {}

    private Directions() {}

    /**
     * Whether a character is an embedding, an override, an isolate or the end of one: nobody sees it, and without its end it would
     * turn the rest of the line.
     */
    static boolean turns(int c) {
        return (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
    }

    /**
     * Cuts a text where the direction of writing changes.
     *
     * @param text any text
     * @return its parts in order; one that is not turned if all of it is written from left to right
     */
    public static List<Part> parts(String text) {
        List<Part> parts = new ArrayList<>();
        int from = 0;
        Matcher words = WORDS.matcher(text);
        while (words.find()) {
            parts.add(new Part(text.substring(from, words.start()), false));
            parts.add(new Part(words.group(), true));
            from = words.end();
        }
        parts.add(new Part(text.substring(from), false));
        return parts.stream().filter(part -> !part.text().isEmpty()).toList();
    }
}
