package limbway.scenarios.problem;

import java.util.regex.Pattern;

/**
 * One mistake, told so that a keeper can mend it.
 *
 * @param place where it stands
 * @param headline what is wrong, in one clause
 * @param found what the text says, or empty
 * @param allowed what it may say, or empty
 * @param mend what to do about it, or empty
 */
public record Problem(Place place, String headline, String found, String allowed, String mend) {

    private static final Pattern QUOTED = Pattern.compile("\"[^\"]*\"");
    private static final Pattern FIGURE = Pattern.compile("\\d+(\\.\\d+)?");

    /** Keeps each part on one line and free of control characters, which could play tricks with a terminal. */
    public Problem {
        headline = Wording.onOneLine(headline);
        found = Wording.onOneLine(found);
        allowed = Wording.onOneLine(allowed);
        mend = Wording.onOneLine(mend);
    }

    /**
     * A problem that says no more than what is wrong; add to it by {@link #found}, {@link #allowed} and {@link #mend}.
     *
     * @param place where it stands
     * @param headline what is wrong
     * @return the problem
     */
    public static Problem at(Place place, String headline) {
        return new Problem(place, headline, "", "", "");
    }

    /**
     * The same problem with what was found.
     *
     * @param words what the text says
     * @return a copy
     */
    public Problem found(String words) {
        return new Problem(place, headline, words, allowed, mend);
    }

    /**
     * The same problem with what is allowed.
     *
     * @param words what the text may say
     * @return a copy
     */
    public Problem allowed(String words) {
        return new Problem(place, headline, found, words, mend);
    }

    /**
     * The same problem with how to mend it.
     *
     * @param words what to do
     * @return a copy
     */
    public Problem mend(String words) {
        return new Problem(place, headline, found, allowed, words);
    }

    /**
     * The same problem, said to belong to one variant.
     *
     * @param variant name of the variant
     * @return a copy whose headline ends with the variant
     */
    public Problem inVariant(String variant) {
        return new Problem(place, headline + ", in variant " + Wording.quote(variant), found, allowed, mend);
    }

    /**
     * The kind of mistake: the headline without names and figures.
     *
     * @return text that is equal for mistakes of one kind
     */
    public String kind() {
        return FIGURE.matcher(QUOTED.matcher(headline).replaceAll("\"…\"")).replaceAll("#");
    }

    /**
     * The whole message, a line for each part that is there.
     *
     * @return one to four lines, without a line end after the last
     */
    public String text() {
        StringBuilder text = new StringBuilder();
        text.append(place).append(": ").append(headline);
        line(text, "found    ", found);
        line(text, "allowed  ", allowed);
        line(text, "mend     ", mend);
        return text.toString();
    }

    private static void line(StringBuilder text, String label, String words) {
        if (!words.isEmpty()) {
            text.append("\n  ").append(label).append(words);
        }
    }
}
