package limbway.reports.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import limbway.model.body.Body;
import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportKind;
import limbway.model.energy.BeamBending;
import limbway.model.energy.Elasticities;
import limbway.model.energy.Elasticity;
import limbway.model.energy.FlexiblePole;
import limbway.model.energy.InclineCost;
import limbway.model.graph.Grasp;
import limbway.reports.words.Figures;
import limbway.sim.habitat.Habitat;

/**
 * Beams and branches that bend away farther than a body reaches when it puts half its weight on their weakest place: it
 * loses its hold on where it comes from. The rule is an assumption.
 */
final class LimpAudit {

    private static final double LOAD_SHARE = 0.5;

    private final Habitat habitat;
    private final Elasticities elasticities = Elasticities.standard();

    LimpAudit(Habitat habitat) {
        this.habitat = habitat;
    }

    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        for (Support support : habitat.layout().enclosure().supports()) {
            OptionalDouble stiffness = stiffnessNPerM(support);
            if (stiffness.isPresent()) {
                for (Body body : habitat.bodies()) {
                    double bendsM = LOAD_SHARE * body.massKg() * InclineCost.GRAVITY_M_PER_S2 / stiffness.getAsDouble();
                    if (bendsM > body.gapReachM() && Grasp.canUse(body, support)) {
                        findings.add(finding(support, body, bendsM));
                    }
                }
            }
        }
        return findings;
    }

    /** At the tip of a branch or in the middle of a beam; empty where it does not bend or nothing is known. */
    private OptionalDouble stiffnessNPerM(Support support) {
        boolean bends = support.kind() == SupportKind.BEAM || support.kind() == SupportKind.BRANCH;
        Optional<Elasticity> stuff = elasticities.of(support.material());
        if (!bends || support.bearing().stiffnessNPerM().isPresent()) {
            return bends ? support.bearing().stiffnessNPerM() : OptionalDouble.empty();
        }
        if (stuff.isEmpty()) {
            return OptionalDouble.empty();
        }
        double lengthM = support.axis().lengthM();
        double thickM = support.diameterM();
        return OptionalDouble.of(
                support.kind() == SupportKind.BEAM
                        ? BeamBending.restingNPerM(lengthM, support.diameterAtM(lengthM / 2), stuff.get())
                        : new FlexiblePole(lengthM, thickM, support.tipDiameterM(), stuff.get()).stiffnessNPerM());
    }

    private static Finding finding(Support support, Body body, double bendsM) {
        String reach = "reaches " + Figures.metres(body.gapReachM());
        return Finding.of(
                "bends-away",
                Weight.CAUTION,
                support.id(),
                body.name(),
                bendsM,
                "m",
                support.id() + " bends " + Figures.metres(bendsM) + " under half the weight of "
                        + Figures.one(body.name()) + ", which " + reach + ": it loses hold of where it comes from",
                "use a thicker or shorter member, or tie its free end",
                "bends farther under half its weight than it reaches");
    }
}
