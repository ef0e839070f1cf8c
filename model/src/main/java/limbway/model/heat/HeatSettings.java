package limbway.model.heat;

import java.util.List;

import limbway.model.parameter.Parameter;
import limbway.model.parameter.Standing;

/**
 * The uncertain numbers of heat.
 *
 * @param groundReflectance share of the light that the ground throws back, 0 to 1
 * @param groundWarmingKM2PerW how much warmer than the air the ground is for each W/m2 of light on it [K m2/W]
 * @param animalAbsorptance share of sunlight that an animal's coat takes up, 0 to 1
 * @param animalEmittance share of a black body's heat rays that its coat gives off, above 0, at most 1
 * @param animalSizeM breadth of the body that the wind meets [m], above 0
 * @param animalLeastWindMPerS wind that cools an animal even in still air [m/s], above 0
 */
public record HeatSettings(
        double groundReflectance,
        double groundWarmingKM2PerW,
        double animalAbsorptance,
        double animalEmittance,
        double animalSizeM,
        double animalLeastWindMPerS) {

    /**
     * The usual values.
     *
     * @return settings of which none was measured in an enclosure
     */
    public static HeatSettings standard() {
        return new HeatSettings(0.2, 0.01035, 0.75, 0.97, 0.4, 0.5);
    }

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException naming the value outside its range
     */
    public HeatSettings {
        require("groundReflectance", groundReflectance, groundReflectance >= 0 && groundReflectance <= 1, "0 to 1");
        require("groundWarmingKM2PerW", groundWarmingKM2PerW, groundWarmingKM2PerW >= 0, "0 or more");
        require("animalAbsorptance", animalAbsorptance, animalAbsorptance >= 0 && animalAbsorptance <= 1, "0 to 1");
        require("animalEmittance", animalEmittance, animalEmittance > 0 && animalEmittance <= 1, "above 0 and up to 1");
        require("animalSizeM", animalSizeM, animalSizeM > 0, "above 0");
        require("animalLeastWindMPerS", animalLeastWindMPerS, animalLeastWindMPerS > 0, "above 0");
    }

    private static void require(String name, double value, boolean fits, String allowed) {
        if (!fits) {
            throw new IllegalArgumentException("heat: " + name + " = " + value + ", allowed " + allowed);
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
                        "heat.ground-reflectance",
                        "share of the sunlight that the ground throws back",
                        "1",
                        groundReflectance,
                        0.1,
                        0.4,
                        Standing.ASSUMPTION,
                        "0.2 is the common choice for grass and soil; no measurement; pale sand is brighter"),
                new Parameter(
                        "heat.ground-warming",
                        "how much warmer than the air the ground is for each W/m2 of sunlight on it",
                        "K m2/W",
                        groundWarmingKM2PerW,
                        0,
                        0.03,
                        Standing.ASSUMPTION,
                        "10 K under 966 W/m2, no source; dry sand and rubber floors get far hotter, wet grass less"),
                new Parameter(
                        "heat.animal-absorptance",
                        "share of the sunlight that an animal's coat takes up",
                        "1",
                        animalAbsorptance,
                        0.6,
                        0.9,
                        Standing.ASSUMPTION,
                        "no value for an ape was found; fur of red kangaroo 0.61, of koala 0.90"
                                + " (doi 10.1007/s00360-013-0794-8)"),
                new Parameter(
                        "heat.animal-emittance",
                        "heat rays of an animal's coat over those of a black body",
                        "1",
                        animalEmittance,
                        0.9,
                        1,
                        Standing.ASSUMPTION,
                        "no value for an ape was found; about 0.96 is used for reptiles"),
                new Parameter(
                        "heat.animal-size",
                        "breadth of an animal's body to the wind",
                        "m",
                        animalSizeM,
                        0.2,
                        0.6,
                        Standing.ASSUMPTION,
                        "a sitting orangutan, no source"),
                new Parameter(
                        "heat.animal-least-wind",
                        "wind that cools an animal even in still air, by its warm air rising and its own moving",
                        "m/s",
                        animalLeastWindMPerS,
                        0.1,
                        1,
                        Standing.ASSUMPTION,
                        "no source; the formula has no cooling without wind"));
    }

    /**
     * Temperature of the ground.
     *
     * @param airC temperature of the air [°C]
     * @param lightWPerM2 sunlight that reaches it [W/m2], 0 or more
     * @return degrees Celsius
     */
    public double groundC(double airC, double lightWPerM2) {
        return airC + groundWarmingKM2PerW * lightWPerM2;
    }
}
