package limbway.model.strength;

import java.util.Optional;

import limbway.model.enclosure.Support;
import limbway.model.energy.Elasticities;
import limbway.model.energy.Elasticity;
import limbway.model.energy.InclineCost;

/**
 * How high a round column stands that is fixed at its foot, before it bends over under its own weight:
 * {@code h = (7.8373 E I / (rho g A))^(1/3)}.
 *
 * @source Greenhill 1881, from memory
 * @validity uniform upright columns in a rigid footing; tapered ones stand higher
 */
public final class StandingHeight {

    private static final double GREENHILL = 7.8373;

    private StandingHeight() {}

    /**
     * The height at which a round column begins to bend over.
     *
     * @param diameterM its thickness [m], above 0
     * @param elasticity what it is made of
     * @return height [m]
     */
    public static double criticalM(double diameterM, Elasticity elasticity) {
        double filled = 1 - elasticity.innerShare() * elasticity.innerShare();
        double areaM2 = Math.PI * diameterM * diameterM / 4 * filled;
        double weightNPerM = elasticity.densityKgPerM3() * InclineCost.GRAVITY_M_PER_S2 * areaM2;
        return StrictMath.cbrt(GREENHILL * elasticity.bendingNM2(diameterM) / weightNPerM);
    }

    /**
     * Whether a pole stands under its own weight.
     *
     * @param pole a pole of one thickness
     * @param elasticities how the materials bend
     * @return true up to the critical height, and for what is not known to bend
     */
    public static boolean stands(Support pole, Elasticities elasticities) {
        Optional<Elasticity> elasticity = elasticities.of(pole.material());
        double heightM = pole.axis().end().zM() - pole.axis().start().zM();
        return elasticity.isEmpty() || heightM <= criticalM(pole.diameterM(), elasticity.get());
    }
}
