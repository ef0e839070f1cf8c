package limbway.model.weather;

import limbway.model.light.Irradiance;

/**
 * The weather at one moment, in the open.
 *
 * @param airC temperature of the air [°C], -90 to 60
 * @param windMPerS speed of the wind [m/s], 0 or more
 * @param irradiance sunlight on open ground
 */
public record Conditions(double airC, double windMPerS, Irradiance irradiance) {

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException naming the value outside its range
     */
    public Conditions {
        if (!(airC >= -90 && airC <= 60)) {
            throw new IllegalArgumentException("weather: airC = " + airC + ", allowed -90 to 60");
        }
        if (!(windMPerS >= 0)) {
            throw new IllegalArgumentException("weather: windMPerS = " + windMPerS + ", allowed 0 or more");
        }
    }
}
