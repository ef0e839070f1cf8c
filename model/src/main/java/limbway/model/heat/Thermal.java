package limbway.model.heat;

/** Constants of heat and the heat rays of a black body. */
final class Thermal {

    /** 0 °C [K]. */
    static final double ZERO_C_IN_K = 273.15;

    /** Stefan's constant [W/m2K4]: CODATA 2018, 5.670374419e-8, cut to seven digits. */
    static final double STEFAN_W_PER_M2_K4 = 5.670374e-8;

    private Thermal() {}

    /**
     * What a black surface sends out.
     *
     * @param surfaceC its temperature [°C]
     * @return W/m2
     */
    static double blackBodyWPerM2(double surfaceC) {
        double kelvin = surfaceC + ZERO_C_IN_K;
        return STEFAN_W_PER_M2_K4 * kelvin * kelvin * kelvin * kelvin;
    }
}
