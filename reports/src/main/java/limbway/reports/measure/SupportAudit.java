package limbway.reports.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import limbway.model.body.Body;
import limbway.model.enclosure.Support;
import limbway.model.explain.Gap;
import limbway.model.explain.GroundReasons;
import limbway.model.graph.Grasp;
import limbway.reports.words.Figures;
import limbway.reports.words.ReasonText;
import limbway.sim.habitat.Habitat;

/** Supports too thick for a body, and gaps that only some bodies cross. */
final class SupportAudit {

    static final String GAP_FOR_SOME = "gap-for-some";

    private final Habitat habitat;
    private final Map<Body, GroundReasons> reasons;
    private final List<Finding> findings = new ArrayList<>();

    SupportAudit(Habitat habitat, Map<Body, GroundReasons> reasons) {
        this.habitat = habitat;
        this.reasons = reasons;
    }

    List<Finding> findings() {
        for (Support support : habitat.layout().enclosure().supports()) {
            for (Body body : habitat.bodies()) {
                boolean tooThick = support.diameterM() > Grasp.thickestM(body, support);
                if (tooThick && !Grasp.canUse(body, support)) {
                    tooThick(support, body);
                }
            }
        }
        for (Body body : habitat.bodies()) {
            for (Gap gap : reasons.get(body).islands().gaps()) {
                gapForSome(gap, body);
            }
        }
        return findings;
    }

    private void tooThick(Support support, Body body) {
        findings.add(new Finding(
                "too-thick",
                Weight.CAUTION,
                support.id(),
                body.name(),
                OptionalDouble.of(support.diameterM()),
                "m",
                Figures.one(body.name()) + " can neither hold " + support.id() + " nor walk on it: "
                        + ReasonText.tooThick(support, body),
                "use a support of " + Figures.thickness(Grasp.thickestM(body, support))
                        + " or less, or hang ropes beside it",
                "too thick to hold, " + Figures.thickness(support.diameterM()),
                Optional.of(new Finding.Limit(
                        Grasp.thickestM(body, support),
                        (support.material().isRough() ? "hugs up to " : "grips up to ")
                                + Figures.thickness(Grasp.thickestM(body, support))))));
    }

    private void gapForSome(Gap gap, Body body) {
        List<String> others = new ArrayList<>();
        for (Body other : habitat.bodies()) {
            if (other.gapReachM() >= gap.clearM()) {
                others.add(other.name());
            }
        }
        if (gap.clearM() > body.gapReachM() && !others.isEmpty()) {
            findings.add(new Finding(
                    GAP_FOR_SOME,
                    Weight.CAUTION,
                    gap.from() + ", " + gap.to(),
                    body.name(),
                    OptionalDouble.of(gap.clearM()),
                    "m",
                    ReasonText.gap(gap) + ": " + Figures.one(body.name()) + " reaches "
                            + Figures.metres(body.gapReachM()) + " and must go another way, while others can cross ("
                            + String.join(", ", others) + ")",
                    "close the gap to " + Figures.metres(body.gapReachM()) + " or less",
                    Figures.metres(gap.clearM()) + " apart; only " + String.join(", ", others) + " can cross",
                    Optional.of(new Finding.Limit(body.gapReachM(), "reaches " + Figures.metres(body.gapReachM())))));
        }
    }
}
