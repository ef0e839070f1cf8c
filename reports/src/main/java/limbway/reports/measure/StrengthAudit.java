package limbway.reports.measure;

import java.util.ArrayList;
import java.util.List;

import limbway.model.body.Body;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.Support;
import limbway.model.energy.Elasticities;
import limbway.model.graph.Grasp;
import limbway.model.strength.BearingLimit;
import limbway.model.strength.BearingLoad;
import limbway.model.strength.Strengths;
import limbway.reports.words.Figures;
import limbway.sim.habitat.Habitat;

/**
 * Supports that a body may break and stated loads below what it weighs. It warns by the captive mass for which structures
 * are built; it is never a structural calculation.
 */
final class StrengthAudit {

    private static final String LICENSED = "a warning, no structural calculation: licensed people decide";

    /** How finely the way out to the weakest place is searched. */
    private static final int STEPS = 200;

    private final Habitat habitat;
    private final BearingLoad loads = new BearingLoad(Strengths.standard(), Elasticities.standard());
    private final List<Finding> findings = new ArrayList<>();

    StrengthAudit(Habitat habitat) {
        this.habitat = habitat;
    }

    List<Finding> findings() {
        for (Support support : habitat.layout().enclosure().supports()) {
            BearingLimit limit = loads.of(support);
            for (Body body : habitat.bodies()) {
                if (!limit.bears(body.structuralMassKg())) {
                    tooHeavy(support, limit, body);
                }
            }
        }
        for (Platform platform : habitat.layout().enclosure().platforms()) {
            platform.bearsKg().ifPresent(bearsKg -> {
                for (Body body : habitat.bodies()) {
                    if (body.structuralMassKg() > bearsKg) {
                        belowMass(platform.id(), bearsKg, body, body.massKg() > bearsKg);
                    }
                }
            });
        }
        return findings;
    }

    private void tooHeavy(Support support, BearingLimit limit, Body body) {
        if (limit instanceof BearingLimit.Stated stated) {
            belowMass(support.id(), stated.heaviestKg(), body, !Grasp.canUse(body, support));
        } else if (limit instanceof BearingLimit.Bending bending) {
            broken(support, limit, body, "by bending, " + Figures.metres(bending.breaksAtM()) + " along it");
        } else if (limit instanceof BearingLimit.Tension tension) {
            broken(
                    support,
                    limit,
                    body,
                    "by a pull of " + Figures.decimals(tension.tensionPerLoad(), 1)
                            + " times the weight in its middle");
        }
    }

    private void broken(Support support, BearingLimit limit, Body body, String how) {
        String shared = "may be broken: it bears " + kg(limit.heaviestKg()) + ", then it gives way " + how + " ("
                + LICENSED + ")";
        findings.add(Finding.of(
                "broken-by",
                Weight.CAUTION,
                support.id(),
                body.name(),
                limit.heaviestKg(),
                "kg",
                support.id() + " may be broken by " + mass(body) + ": it bears " + kg(limit.heaviestKg())
                        + ", then it gives way " + how + farthest(support, body) + " (" + LICENSED + ")",
                "make it thicker or shorter, hold it up on the way, or state the load that it bears",
                shared));
    }

    private void belowMass(String place, double bearsKg, Body body, boolean keptOff) {
        String after = keptOff ? "; the model keeps that body off it" : "";
        findings.add(Finding.of(
                "weight-limit",
                Weight.CAUTION,
                place,
                body.name(),
                bearsKg,
                "kg",
                place + " bears " + kg(bearsKg) + " as stated, and " + mass(body) + " is heavier" + after,
                "build it for the heaviest animal that can come to it; licensed people decide",
                "bears " + kg(bearsKg) + " as stated, less than such an animal weighs in captivity" + after));
    }

    /** How far out it still bears the body, for members held at one end. */
    private String farthest(Support support, Body body) {
        return switch (support.kind()) {
            case BRANCH, POLE ->
                "; it bears such an animal up to " + Figures.metres(farthestM(support, body.structuralMassKg()))
                        + " from its first end";
            case BEAM, ROPE, TRUNK, LADDER -> "";
        };
    }

    private double farthestM(Support support, double massKg) {
        double lengthM = support.axis().lengthM();
        double farthestM = 0;
        for (int i = 1; i <= STEPS; i++) {
            double alongM = lengthM * i / STEPS;
            farthestM = loads.at(support, alongM).bears(massKg) ? alongM : farthestM;
        }
        return farthestM;
    }

    private static String mass(Body body) {
        return Figures.one(body.name()) + " of up to " + kg(body.structuralMassKg()) + " in captivity";
    }

    private static String kg(double massKg) {
        return Figures.decimals(massKg, massKg < 10 ? 1 : 0) + " kg";
    }
}
