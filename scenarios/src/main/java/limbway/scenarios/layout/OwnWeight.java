package limbway.scenarios.layout;

import java.util.Optional;

import limbway.model.energy.Elasticities;
import limbway.model.energy.Elasticity;
import limbway.model.strength.StandingHeight;
import limbway.scenarios.entry.SupportEntry.Upright;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Whether a pole stands under its own weight; tapered ones stand higher than {@link StandingHeight} says and are not checked. */
final class OwnWeight {

    private OwnWeight() {}

    /** Adds a problem for a pole that topples; ropes and hoses, which do not resist bending, stand for nothing. */
    static void check(Upright pole, Elasticities elasticities, Problems problems) {
        Optional<Elasticity> elasticity = elasticities.of(pole.material());
        if (elasticity.isEmpty() || pole.tipDiameterM() < pole.diameterM()) {
            return;
        }
        double criticalM = criticalHeightM(pole.diameterM(), elasticity.get());
        if (pole.heightM() > criticalM) {
            problems.add(Problem.at(pole.place(), pole.what() + " would bend over under its own weight")
                    .found(Wording.measure(pole.heightM(), "m") + " high, "
                            + Wording.measure(pole.diameterM(), "m") + " thick, of "
                            + pole.material().word())
                    .allowed("up to " + Wording.measure(Math.floor(criticalM * 100) / 100, "m")
                            + " high at that thickness (Greenhill 1881)")
                    .mend("make it thicker or lower"));
        }
    }

    /** The height at which a round column begins to bend over [m]. */
    static double criticalHeightM(double diameterM, Elasticity elasticity) {
        return StandingHeight.criticalM(diameterM, elasticity);
    }
}
