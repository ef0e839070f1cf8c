package limbway.model.heat;

/**
 * What air is like at a temperature.
 *
 * @param densityKgPerM3 mass of a cubic metre [kg/m3]
 * @param viscosityPaS dynamic viscosity [Pa s]
 * @param conductivityWPerMK conductivity of heat [W/m K]
 */
record AirProperties(double densityKgPerM3, double viscosityPaS, double conductivityWPerMK) {

    private static final double HEAT_J_PER_KG_K = 1006;
    private static final double GAS_J_PER_KG_K = 287.05;
    private static final double PRESSURE_PA = 101_325;

    /**
     * Dry air at the height of the sea.
     *
     * @param airC temperature [°C], -50 to 200
     * @return its properties
     * @source viscosity by Sutherland's law, 1.716e-5 Pa s at 273.15 K with 110.4 K; conductivity 2.334e-3 T^1.5 / (164.54 +
     *     T); both from memory, checked against the tables of IEEE 738
     * @validity thinner air cools less: at 1,000 m about 5 % in wind
     */
    static AirProperties at(double airC) {
        double kelvin = airC + Thermal.ZERO_C_IN_K;
        double power = kelvin * Math.sqrt(kelvin);
        double reference = Thermal.ZERO_C_IN_K * Math.sqrt(Thermal.ZERO_C_IN_K);
        return new AirProperties(
                PRESSURE_PA / (GAS_J_PER_KG_K * kelvin),
                1.716e-5 * (power / reference) * (Thermal.ZERO_C_IN_K + 110.4) / (kelvin + 110.4),
                2.334e-3 * power / (164.54 + kelvin));
    }

    /**
     * Prandtl number.
     *
     * @return about 0.7
     */
    double prandtl() {
        return HEAT_J_PER_KG_K * viscosityPaS / conductivityWPerMK;
    }

    /**
     * Kinematic viscosity.
     *
     * @return m2/s
     */
    double kinematicM2PerS() {
        return viscosityPaS / densityKgPerM3;
    }
}
