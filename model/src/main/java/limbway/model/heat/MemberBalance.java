package limbway.model.heat;

import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Temperature at which a long round member gives off as much heat as it takes up.
 *
 * <p>For each metre of thickness D: α D (beam across + π/2 (sky + ground light)) = h π D (T − air) + ε π D (σ T⁴ − half the
 * rays from above − half the rays from below).
 *
 * @param diameterM thickness [m], above 0
 * @param surface its surface
 * @validity steady state, one temperature all round, nothing flows along. Fair for metal tubes up to about 10 cm at steps of
 *     15 minutes or more (a wall of 3.2 mm follows within 10 to 17 minutes); never for logs and thick timber, which lag by
 *     hours while their sunny side gets hotter than this and their shady side stays cooler
 */
public record MemberBalance(double diameterM, Surface surface) {

    private static final double ACCURACY_K = 1e-9;

    /**
     * Checks the thickness.
     *
     * @throws IllegalArgumentException naming the thickness if it is not above 0
     */
    public MemberBalance {
        if (!(diameterM > 0)) {
            throw new IllegalArgumentException("member: diameterM = " + diameterM + ", allowed above 0");
        }
    }

    /**
     * Temperature of the surface, the same all round.
     *
     * @param exposure air, light and rays
     * @return degrees Celsius
     */
    public double surfaceC(Exposure exposure) {
        double absorbed = absorbedWPerM(exposure);
        // Below all surroundings it takes up heat; at +400 K it gives off more than any sun brings.
        double low = exposure.airC() - 100;
        double high = exposure.airC() + 400;
        return new BrentSolver(0, ACCURACY_K, 0)
                .solve(200, candidateC -> givenOffWPerM(exposure, candidateC) - absorbed, low, high);
    }

    /**
     * Temperature of the line that faces the sun if no heat at all flows round the member: the upper bound for wood and
     * rope, of which the mean round the member says too little.
     *
     * @param exposure air, light and rays
     * @return degrees Celsius, not below {@link #surfaceC}
     */
    public double sunnySideC(Exposure exposure) {
        // the beam on the line that faces it is π times its mean round the member
        return surfaceC(exposure.withBeamAcross(Math.PI * exposure.beamAcrossWPerM2()));
    }

    /**
     * Sunlight taken up.
     *
     * @param exposure air, light and rays
     * @return W for each metre of the member
     */
    double absorbedWPerM(Exposure exposure) {
        double round = Math.PI / 2 * (exposure.skyLightWPerM2() + exposure.groundLightWPerM2());
        return surface.absorptance() * diameterM * (exposure.beamAcrossWPerM2() + round);
    }

    /**
     * Heat given off to air, sky and ground.
     *
     * @param exposure air, light and rays
     * @param surfaceC temperature of the surface [°C]
     * @return W for each metre of the member
     */
    private double givenOffWPerM(Exposure exposure, double surfaceC) {
        double coefficient = Convection.coefficientWPerM2K(diameterM, surfaceC, exposure.airC(), exposure.windMPerS());
        double toAir = coefficient * (surfaceC - exposure.airC());
        double rays = Thermal.blackBodyWPerM2(surfaceC)
                - (exposure.raysFromAboveWPerM2() + exposure.raysFromBelowWPerM2()) / 2;
        return Math.PI * diameterM * (toAir + surface.emittance() * rays);
    }
}
