package limbway.model.heat;

/**
 * How strongly air cools a long round member: by wind across it or by its own warm air rising, whichever is stronger.
 *
 * @source the rule of the stronger of the two: IEEE 738, for bare overhead conductors
 * @validity wind at right angles to the member; the correlations are for smooth round bars and are good to 10 to 25 %
 */
public final class Convection {

    private static final double GRAVITY_M_PER_S2 = 9.80665;

    private Convection() {}

    /**
     * Heat that goes to the air.
     *
     * @param diameterM thickness of the member [m], above 0
     * @param surfaceC temperature of its surface [°C]
     * @param airC temperature of the air [°C]
     * @param windMPerS wind across it [m/s], 0 or more
     * @return W for each m2 and kelvin
     */
    public static double coefficientWPerM2K(double diameterM, double surfaceC, double airC, double windMPerS) {
        double filmC = (surfaceC + airC) / 2;
        AirProperties air = AirProperties.at(filmC);
        double prandtl = air.prandtl();
        double reynolds = windMPerS * diameterM / air.kinematicM2PerS();
        double nusselt = Math.max(
                windMPerS > 0 ? churchillBernstein(reynolds, prandtl) : 0,
                churchillChu(rayleigh(air, diameterM, Math.abs(surfaceC - airC), filmC), prandtl));
        return nusselt * air.conductivityWPerMK() / diameterM;
    }

    private static double rayleigh(AirProperties air, double diameterM, double differenceK, double filmC) {
        double viscosity = air.kinematicM2PerS();
        double buoyancy = GRAVITY_M_PER_S2 * differenceK / (filmC + Thermal.ZERO_C_IN_K);
        return buoyancy * diameterM * diameterM * diameterM / (viscosity * viscosity) * air.prandtl();
    }

    /**
     * Nusselt number of a round bar in a wind across it.
     *
     * @param reynolds Reynolds number by the diameter, above 0
     * @param prandtl Prandtl number
     * @return Nusselt number by the diameter
     * @source Churchill and Bernstein 1977, Journal of Heat Transfer 99:300-306
     * @validity Re x Pr above 0.2
     */
    static double churchillBernstein(double reynolds, double prandtl) {
        double fluid = StrictMath.pow(1 + StrictMath.pow(0.4 / prandtl, 2 / 3.0), 0.25);
        double rough = StrictMath.pow(1 + StrictMath.pow(reynolds / 282_000, 5 / 8.0), 4 / 5.0);
        return 0.3 + 0.62 * Math.sqrt(reynolds) * StrictMath.cbrt(prandtl) / fluid * rough;
    }

    /**
     * Nusselt number of a level round bar in still air.
     *
     * @param rayleigh Rayleigh number by the diameter, 0 or more
     * @param prandtl Prandtl number
     * @return Nusselt number by the diameter
     * @source Churchill and Chu 1975, International Journal of Heat and Mass Transfer 18:1049-1053
     * @validity Rayleigh numbers up to 1e12; a level bar, here used for upright ones too
     */
    static double churchillChu(double rayleigh, double prandtl) {
        double fluid = StrictMath.pow(1 + StrictMath.pow(0.559 / prandtl, 9 / 16.0), 8 / 27.0);
        double root = 0.6 + 0.387 * StrictMath.pow(rayleigh, 1 / 6.0) / fluid;
        return root * root;
    }
}
