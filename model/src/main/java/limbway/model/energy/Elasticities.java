package limbway.model.energy;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.model.enclosure.Material;
import limbway.model.parameter.Parameter;
import limbway.model.parameter.Standing;

/**
 * How the materials of an enclosure bend, and how ropes and hoses stretch.
 *
 * @param steel steel tubes, whatever their coating
 * @param timber sawn or peeled wood
 * @param bark stems with their bark on, taken as living
 * @param concrete cast members
 * @param ropeYoungPa stiffness of rope and hose over their full round section [Pa]
 */
public record Elasticities(
        Elasticity steel, Elasticity timber, Elasticity bark, Elasticity concrete, double ropeYoungPa) {

    private static final double PA_PER_GPA = 1e9;
    private static final String TEXTBOOK = "textbook value, from memory";

    /**
     * The defaults.
     *
     * @return every material at its default
     */
    public static Elasticities standard() {
        return new Elasticities(
                new Elasticity(200 * PA_PER_GPA, 7850, 0.9),
                new Elasticity(10 * PA_PER_GPA, 500, 0),
                new Elasticity(8 * PA_PER_GPA, 900, 0),
                new Elasticity(30 * PA_PER_GPA, 2400, 0),
                0.3 * PA_PER_GPA);
    }

    /**
     * The elasticity of one material.
     *
     * @param material what a member is made of
     * @return its elasticity, or empty for ropes and hoses, which do not resist bending
     */
    public Optional<Elasticity> of(Material material) {
        return switch (material) {
            case GALVANISED_STEEL, PAINTED_STEEL, STAINLESS_STEEL -> Optional.of(steel);
            case TIMBER -> Optional.of(timber);
            case BARK -> Optional.of(bark);
            case CONCRETE -> Optional.of(concrete);
            case FIBRE_ROPE, FIRE_HOSE -> Optional.empty();
        };
    }

    /**
     * The numbers as parameters.
     *
     * @return three for each of the four kinds that bend, and one for rope
     */
    public List<Parameter> parameters() {
        List<Parameter> all = new ArrayList<>();
        all.add(young("steel", steel, 190, 210, Standing.UNVERIFIED, TEXTBOOK));
        all.add(density("steel", steel, 7700, 8000, Standing.UNVERIFIED, TEXTBOOK));
        all.add(inner("steel", steel, 0.8, 0.95, "a tube with a wall of a twentieth of its diameter"));
        all.add(young("timber", timber, 6, 16, Standing.UNVERIFIED, "order of softwood along the grain, from memory"));
        all.add(density("timber", timber, 350, 800, Standing.UNVERIFIED, TEXTBOOK));
        all.add(inner("timber", timber, 0, 0.5, "solid"));
        all.add(young("bark", bark, 4, 14, Standing.ASSUMPTION, "living wood, wetter and softer than timber"));
        all.add(density("bark", bark, 600, 1100, Standing.ASSUMPTION, "living wood, near that of water"));
        all.add(inner("bark", bark, 0, 0.5, "solid"));
        all.add(young("concrete", concrete, 20, 40, Standing.UNVERIFIED, TEXTBOOK));
        all.add(density("concrete", concrete, 2200, 2500, Standing.UNVERIFIED, TEXTBOOK));
        all.add(inner("concrete", concrete, 0, 0.9, "solid"));
        all.add(new Parameter(
                "elasticity.rope-young",
                "stretch modulus of rope and hose over the full round section",
                "GPa",
                ropeYoungPa / PA_PER_GPA,
                0.1,
                1,
                Standing.UNVERIFIED,
                "order of laid or braided polyamide to polyester rope, from memory"));
        return all;
    }

    private static Parameter young(
            String stuff, Elasticity elasticity, double low, double high, Standing standing, String source) {
        return new Parameter(
                "elasticity." + stuff + "-young",
                "Young's modulus of " + stuff,
                "GPa",
                elasticity.youngPa() / PA_PER_GPA,
                low,
                high,
                standing,
                source);
    }

    private static Parameter density(
            String stuff, Elasticity elasticity, double low, double high, Standing standing, String source) {
        return new Parameter(
                "elasticity." + stuff + "-density",
                "density of " + stuff,
                "kg/m³",
                elasticity.densityKgPerM3(),
                low,
                high,
                standing,
                source);
    }

    private static Parameter inner(String stuff, Elasticity elasticity, double low, double high, String source) {
        return new Parameter(
                "elasticity." + stuff + "-inner-share",
                "inner over outer diameter of members of " + stuff,
                "1",
                elasticity.innerShare(),
                low,
                high,
                Standing.ASSUMPTION,
                source);
    }
}
