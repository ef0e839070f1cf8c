package limbway.model.light;

/**
 * Sunlight on open ground.
 *
 * @param beamWPerM2 direct light on a surface that faces the sun [W/m2], 0 or more
 * @param diffuseWPerM2 light of the sky on a level surface [W/m2], 0 or more
 * @param globalWPerM2 all light on a level surface [W/m2], 0 or more
 */
public record Irradiance(double beamWPerM2, double diffuseWPerM2, double globalWPerM2) {

    /** Darkness. */
    public static final Irradiance NIGHT = new Irradiance(0, 0, 0);

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException naming the values if one is below 0
     */
    public Irradiance {
        if (!(beamWPerM2 >= 0 && diffuseWPerM2 >= 0 && globalWPerM2 >= 0)) {
            throw new IllegalArgumentException("irradiance: beamWPerM2 = " + beamWPerM2 + ", diffuseWPerM2 = "
                    + diffuseWPerM2 + ", globalWPerM2 = " + globalWPerM2 + ", allowed 0 or more");
        }
    }
}
