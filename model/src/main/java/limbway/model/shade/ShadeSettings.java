package limbway.model.shade;

import java.util.List;

import limbway.model.parameter.Parameter;
import limbway.model.parameter.Standing;

/**
 * What the shade of things depends on besides their shape.
 *
 * @param glass share of the beam that passes through a pane, 0 to below 1
 * @param hammock share of the beam that passes through a hammock, 0 to below 1
 * @param leafProjection area of shadow for each area of leaf, seen from the sun, above 0 to 1
 * @param bareShare area of twigs and stems in a bare crown, for each area of leaf in summer, 0 to 1
 */
public record ShadeSettings(double glass, double hammock, double leafProjection, double bareShare) {

    /**
     * The usual values.
     *
     * @return settings
     */
    public static ShadeSettings standard() {
        return new ShadeSettings(0.8, 0.3, 0.5, 0.4);
    }

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException naming the value outside its range
     */
    public ShadeSettings {
        require("glass", glass, glass >= 0 && glass < 1, "0 to below 1");
        require("hammock", hammock, hammock >= 0 && hammock < 1, "0 to below 1");
        require("leafProjection", leafProjection, leafProjection > 0 && leafProjection <= 1, "above 0 to 1");
        require("bareShare", bareShare, bareShare >= 0 && bareShare <= 1, "0 to 1");
    }

    private static void require(String name, double value, boolean fits, String allowed) {
        if (!fits) {
            throw new IllegalArgumentException("shade settings: " + name + " = " + value + ", allowed " + allowed);
        }
    }

    /**
     * All values with unit, range and source.
     *
     * @return one parameter for each component
     */
    public List<Parameter> parameters() {
        return List.of(
                new Parameter(
                        "shade.glass",
                        "share of the direct sun that passes through a pane",
                        "1",
                        glass,
                        0.4,
                        0.9,
                        Standing.ASSUMPTION,
                        "no source; laminated glass lets less through, tinted glass much less"),
                new Parameter(
                        "shade.hammock",
                        "share of the direct sun that passes through a hammock",
                        "1",
                        hammock,
                        0,
                        0.7,
                        Standing.ASSUMPTION,
                        "no source; woven hose lets little through, a net much"),
                new Parameter(
                        "shade.leaf-projection",
                        "area of shadow for each area of leaf, seen from the sun",
                        "1",
                        leafProjection,
                        0.4,
                        0.67,
                        Standing.PUBLISHED,
                        "0.5 for leaves at all angles alike; 0.53 to 0.67 in four hardwood stands, Vose et al. 1995"),
                new Parameter(
                        "shade.bare-crown",
                        "area of wood in a bare crown, for each area of leaf in summer",
                        "1",
                        bareShare,
                        0.28,
                        0.54,
                        Standing.ASSUMPTION,
                        "ln of the sky seen through crowns in winter over ln of that in summer, Wilkinson 1992 in Tregenza"
                                + " and Sharples, algorithm 1.44: lime 0.28, oak 0.39, hawthorn 0.54"));
    }
}
