package limbway.reports.command;

import java.util.Collection;

import limbway.scenarios.problem.Spelling;
import limbway.scenarios.problem.Wording;

/** A mistake in what was asked, told so that the user can mend it. */
final class Refusal extends Exception {

    private static final long serialVersionUID = 1;

    /** A message that is already complete. */
    Refusal(String message) {
        super(message);
    }

    static Refusal of(String headline, String found, String allowed, String mend) {
        StringBuilder text = new StringBuilder("limbway: ").append(headline);
        line(text, "found    ", found);
        line(text, "allowed  ", allowed);
        line(text, "mend     ", mend);
        return new Refusal(text.append('\n').toString());
    }

    /** A name that does not exist among those that do. */
    static Refusal unknown(String what, String name, Collection<String> known) {
        return of(
                "there is no " + what + " of that name",
                Wording.quote(name),
                Wording.list(known),
                guess(name, known, "use one of these names, in quotation marks if it has spaces"));
    }

    static String guess(String word, Collection<String> known, String otherwise) {
        return Spelling.nearest(word, known)
                .map(near -> "did you mean " + Wording.quote(near) + "?")
                .orElse(otherwise);
    }

    private static void line(StringBuilder text, String label, String words) {
        if (!words.isEmpty()) {
            text.append("\n  ").append(label).append(words);
        }
    }
}
