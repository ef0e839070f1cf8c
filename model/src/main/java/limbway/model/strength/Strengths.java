package limbway.model.strength;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import limbway.model.enclosure.Material;
import limbway.model.parameter.Parameter;
import limbway.model.parameter.Standing;

/**
 * At what stress materials break by bending, for warnings; not for design.
 *
 * @param steelMPa stress at which steel yields [MPa], above 0
 * @param timberMPa modulus of rupture of sawn or peeled wood out of doors [MPa], above 0
 * @param livingWoodMPa modulus of rupture of wood with its bark on [MPa], above 0
 * @param concreteMPa bending strength of concrete without its steel [MPa], above 0
 * @param share share of the breaking stress taken as limit, above 0, up to 1
 * @param rope what ropes hold
 */
public record Strengths(
        double steelMPa, double timberMPa, double livingWoodMPa, double concreteMPa, double share, RopeStrength rope) {

    private static final double PA_PER_MPA = 1e6;

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException naming the value outside its range
     */
    public Strengths {
        requireAboveZero("steelMPa", steelMPa);
        requireAboveZero("timberMPa", timberMPa);
        requireAboveZero("livingWoodMPa", livingWoodMPa);
        requireAboveZero("concreteMPa", concreteMPa);
        if (!(share > 0 && share <= 1)) {
            throw new IllegalArgumentException("strengths: share = " + share + ", allowed above 0 and up to 1");
        }
    }

    /**
     * The defaults.
     *
     * @return every material at its default
     */
    public static Strengths standard() {
        return new Strengths(235, 45, 50, 4, 0.5, RopeStrength.standard());
    }

    /**
     * The bending stress taken as limit.
     *
     * @param material what a member is made of
     * @return stress [Pa], or empty for ropes and hoses, which do not resist bending
     */
    public OptionalDouble limitPa(Material material) {
        return switch (material) {
            case GALVANISED_STEEL, PAINTED_STEEL, STAINLESS_STEEL -> limitPa(steelMPa);
            case TIMBER -> limitPa(timberMPa);
            case BARK -> limitPa(livingWoodMPa);
            case CONCRETE -> limitPa(concreteMPa);
            case FIBRE_ROPE, FIRE_HOSE -> OptionalDouble.empty();
        };
    }

    private OptionalDouble limitPa(double breakingMPa) {
        return OptionalDouble.of(share * breakingMPa * PA_PER_MPA);
    }

    /**
     * The numbers as parameters.
     *
     * @return one for each component, those of ropes last
     */
    public List<Parameter> parameters() {
        List<Parameter> all = new ArrayList<>();
        all.add(breaking(
                "steel", steelMPa, 200, 355, "yield of the weakest common structural steel, textbook, from memory"));
        all.add(breaking(
                "timber",
                timberMPa,
                30,
                100,
                "green softwood 35 to 55, dry 60 to 90, small clear pieces (Wood Handbook, USDA FPL-GTR-190 and 282, "
                        + "chapter 5, from memory); wet out of doors"));
        all.add(breaking(
                "living-wood",
                livingWoodMPa,
                30,
                75,
                "green hardwood 40 to 65, small clear pieces (Wood Handbook, USDA FPL-GTR-190 and 282, chapter 5, from "
                        + "memory); dead and rotten wood holds far less"));
        all.add(breaking(
                "concrete",
                concreteMPa,
                2,
                6,
                "plain concrete in bending, textbook, from memory; steel inside it bears more, which a scenario does not "
                        + "tell"));
        all.add(new Parameter(
                "strength.share",
                "share of the breaking stress taken as limit",
                "1",
                share,
                0.2,
                1,
                Standing.ASSUMPTION,
                "a load put on at once stresses a member twice as much as one that lies (textbook); knots, rot and rust "
                        + "come on top"));
        all.addAll(rope.parameters());
        return all;
    }

    private static Parameter breaking(String stuff, double valueMPa, double lowMPa, double highMPa, String source) {
        return new Parameter(
                "strength." + stuff,
                "bending stress that breaks or bends for good " + stuff.replace('-', ' '),
                "MPa",
                valueMPa,
                lowMPa,
                highMPa,
                Standing.UNVERIFIED,
                source);
    }

    private static void requireAboveZero(String measure, double value) {
        if (!(value > 0)) {
            throw new IllegalArgumentException("strengths: " + measure + " = " + value + ", allowed above 0");
        }
    }
}
