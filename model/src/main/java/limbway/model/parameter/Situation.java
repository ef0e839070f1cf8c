package limbway.model.parameter;

import java.util.Map;

/**
 * Values that belong together because they describe how a group is kept or where it comes from.
 *
 * @param name words that a scenario uses, for example {@code moved in lately}
 * @param meaning what is meant by it, in one sentence
 * @param values values by the names of parameters
 */
public record Situation(String name, String meaning, Map<String, Double> values) {

    /** Keeps a copy of the values. */
    public Situation {
        values = Map.copyOf(values);
    }
}
