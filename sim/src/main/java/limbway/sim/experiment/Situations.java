package limbway.sim.experiment;

import java.util.List;
import java.util.Map;

import limbway.model.parameter.Situation;

/**
 * Sets of values for groups that differ by how they are kept or where they come from.
 *
 * <p>Every value is an assumption: it says in which direction such a group is likely to differ, not by how much.
 */
public final class Situations {

    private static final List<Situation> ALL = List.of(
            new Situation("long settled", "The group has lived here for years; all values are the defaults.", Map.of()),
            new Situation(
                    "moved in lately",
                    "The group came a few weeks ago and knows little of the place, so it keeps to the edge and out of sight.",
                    Map.of(
                            "scale.familiar-at-start", 0.2,
                            "scale.new-at-start", 0.2,
                            "worth.perimeter", 0.08,
                            "worth.seclusion", 0.06)),
            new Situation(
                    "weeks after a change",
                    "The group knows the layout as drawn, and what a variant changes is wholly new to it.",
                    Map.of("scale.new-at-start", 0.0)),
            new Situation(
                    "reared by hand",
                    "People raised the animals; they look for people, keep to the edge and do not mind the ground.",
                    Map.of("worth.ground-wariness", 0.0, "worth.staff", 0.12, "worth.perimeter", 0.08)),
            new Situation(
                    "born in the forest",
                    "The animals grew up wild; they shun the ground and people, and rest high and out of sight.",
                    Map.of(
                            "worth.ground-wariness", 0.1,
                            "worth.height", 0.1,
                            "worth.seclusion", 0.08,
                            "worth.staff", -0.04)),
            new Situation(
                    "uneasy company",
                    "The animals were brought together lately or do not get on; they keep apart and contend harder.",
                    Map.of(
                            "company.contest-sharpness", 10.0,
                            "worth.dominant", 0.2,
                            "worth.strangers", 0.4,
                            "worth.company", -0.04)));

    private Situations() {}

    /**
     * The situations that a scenario may name.
     *
     * @return each with a name of its own; values are those of {@link Assumptions}, within their ranges
     */
    public static List<Situation> all() {
        return ALL;
    }
}
