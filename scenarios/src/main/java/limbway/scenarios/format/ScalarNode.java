package limbway.scenarios.format;

import limbway.scenarios.problem.Place;
import limbway.scenarios.problem.Wording;

/**
 * A word, a number, a sentence: whatever is no list and has no keys.
 *
 * @param place where it begins
 * @param text its characters, without quotation marks; empty for a key without a value
 */
public record ScalarNode(Place place, String text) implements Node {

    @Override
    public String shown() {
        return text.isEmpty() ? "nothing" : Wording.quote(text);
    }
}
