package limbway.scenarios.format;

import java.util.LinkedHashMap;
import java.util.Map;

import org.yaml.snakeyaml.error.Mark;
import org.yaml.snakeyaml.error.MarkedYAMLException;

import limbway.scenarios.problem.Place;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Wording;

/** Says in plain words why text is no YAML. */
final class SyntaxTrouble {

    /** What the YAML library says, and what that means for a keeper. */
    private static final Map<String, String> MENDS = mends();

    private SyntaxTrouble() {}

    /**
     * The problem behind a failure of the YAML library.
     *
     * @param fallback where to point if the failure does not say
     * @param text the text that was read
     * @param failure what the library threw
     * @return the problem
     */
    static Problem of(Place fallback, String text, Exception failure) {
        Place place = placeOf(fallback, failure);
        String line =
                text.lines().skip(place.line() - 1L).findFirst().orElse("").strip();
        Problem problem =
                Problem.at(place, "this cannot be read as YAML").found(line.isEmpty() ? "" : Wording.quote(line));
        String message = String.valueOf(failure.getMessage());
        for (Map.Entry<String, String> mend : MENDS.entrySet()) {
            if (message.contains(mend.getKey())) {
                return problem.mend(mend.getValue());
            }
        }
        return problem.mend("check brackets, braces, quotation marks, colons and the spaces at the start of the line");
    }

    private static Place placeOf(Place fallback, Exception failure) {
        if (failure.getCause() instanceof MarkedYAMLException marked && marked.getProblemMark() != null) {
            Mark mark = marked.getProblemMark();
            return new Place(fallback.file(), mark.getLine() + 1, mark.getColumn() + 1);
        }
        return fallback;
    }

    private static Map<String, String> mends() {
        Map<String, String> mends = new LinkedHashMap<>();
        mends.put("TAB", "use spaces, not tabs, at the start of a line");
        mends.put("'\\t'", "use spaces, not tabs, at the start of a line");
        mends.put("expected ',' or ']'", "close the list with ] or put a comma between its parts");
        mends.put("expected ',' or '}'", "close the braces with } or put a comma between; quote words with brackets");
        mends.put("found unexpected end of stream", "close the quotation mark");
        mends.put(
                "mapping values are not allowed here",
                "check the indentation; quote words that contain a colon and a space");
        mends.put("could not find expected ':'", "put a colon and a space after the key");
        mends.put("expected <block end>", "start this line as far right as its neighbours");
        mends.put("that cannot start any token", "put the words in quotation marks");
        return mends;
    }
}
