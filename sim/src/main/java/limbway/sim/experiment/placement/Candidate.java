package limbway.sim.experiment.placement;

import limbway.model.geometry.Point;

/**
 * A place where something could be put.
 *
 * @param words where it is, as a scenario says it: {@code mast-3 at 5.5}, or {@code [4, 2.5, 0]}
 * @param at the same in space
 * @param on id of the support or platform that carries it, or empty if it is given by coordinates
 */
public record Candidate(String words, Point at, String on) {

    /**
     * The key and value of a scenario that put something here.
     *
     * @return for example {@code on: mast-3 at 5.5}, in quotation marks where YAML needs them
     */
    public String entry() {
        if (on.isEmpty()) {
            return "at: " + words;
        }
        return words.indexOf('[') >= 0 ? "on: \"" + words + "\"" : "on: " + words;
    }

    /**
     * Where it is, for people.
     *
     * @return the words; a height or distance along a support with its unit
     */
    public String told() {
        return on.isEmpty() || words.endsWith("]") || words.equals(on) || !words.contains(" at ") || words.endsWith("%")
                ? words
                : words + " m";
    }
}
