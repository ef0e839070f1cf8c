package limbway.model.heat;

/** How cold a clear sky is to whatever sends heat rays into it. */
public final class SkyTemperature {

    private SkyTemperature() {}

    /**
     * Where nothing is known of the moisture of the air.
     *
     * @param airC temperature of the air [°C]
     * @return temperature of a black sky that sends as much [°C]
     * @source Swinbank 1963, from memory: 0.0552 T^1.5 in kelvin
     * @validity clear sky; clouds and humid air are warmer, so that it says too little of the heat of a humid place
     */
    public static double swinbankC(double airC) {
        return 0.0552 * StrictMath.pow(airC + Thermal.ZERO_C_IN_K, 1.5) - Thermal.ZERO_C_IN_K;
    }

    /**
     * Where the dew point is known.
     *
     * @param airC temperature of the air [°C]
     * @param dewPointC dew point [°C], not above {@code airC}
     * @return temperature of a black sky that sends as much [°C]
     * @source Berdahl and Martin 1984, from memory: emittance 0.711 + 0.56 (d/100) + 0.73 (d/100)^2
     * @validity clear sky, mean over day and night
     */
    public static double berdahlMartinC(double airC, double dewPointC) {
        double d = dewPointC / 100;
        double emittance = 0.711 + 0.56 * d + 0.73 * d * d;
        return (airC + Thermal.ZERO_C_IN_K) * StrictMath.pow(emittance, 0.25) - Thermal.ZERO_C_IN_K;
    }
}
