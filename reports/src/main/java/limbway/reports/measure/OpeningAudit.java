package limbway.reports.measure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import limbway.model.body.Body;
import limbway.model.enclosure.Panel;
import limbway.model.graph.GraphSettings;
import limbway.reports.words.Figures;
import limbway.sim.habitat.Habitat;

/** Mesh and nets too fine for fingers, or so wide that the smallest animal gets its head through. */
final class OpeningAudit {

    /** Breadth of a head and of the shoulders over the arm span: assumptions, no measurement was found. */
    private static final double HEAD_SHARE = 0.08;

    private static final double SHOULDER_SHARE = 0.2;

    private final Habitat habitat;
    private final List<Finding> findings = new ArrayList<>();

    OpeningAudit(Habitat habitat) {
        this.habitat = habitat;
    }

    List<Finding> findings() {
        double fingerShare = GraphSettings.forBodies(habitat.bodies()).fingerShare();
        Body smallest = habitat.bodies().stream()
                .min(Comparator.comparingDouble(Body::armSpanM))
                .orElseThrow();
        for (Panel panel : habitat.layout().enclosure().panels()) {
            for (Body body : habitat.bodies()) {
                if (panel.openingM() < fingerShare * body.gripDiameterM()) {
                    tooFine(panel, body, fingerShare * body.gripDiameterM());
                }
            }
            if (panel.openingM() >= HEAD_SHARE * smallest.armSpanM()) {
                tooWide(panel, smallest);
            }
        }
        return findings;
    }

    private void tooFine(Panel panel, Body body, double fingersM) {
        String opening = Figures.thickness(panel.openingM());
        findings.add(Finding.of(
                "mesh-too-fine",
                Weight.CAUTION,
                panel.id(),
                body.name(),
                panel.openingM(),
                "m",
                "the fingers of " + Figures.one(body.name()) + ", some " + Figures.thickness(fingersM)
                        + " broad (assumption), do not go through the openings of " + panel.id() + ", " + opening
                        + ": it cannot climb there",
                "use openings of " + Figures.thickness(fingersM) + " or more, or hang ropes beside it",
                "openings of " + opening
                        + " are too fine for fingers, so nobody of that size climbs there (assumption)"));
    }

    private void tooWide(Panel panel, Body smallest) {
        double headM = HEAD_SHARE * smallest.armSpanM();
        boolean wholeBody = panel.openingM() >= SHOULDER_SHARE * smallest.armSpanM();
        String what = wholeBody ? "slip through" : "get its head through, and be caught,";
        String text = Figures.one(smallest.name()) + " may " + what + " the openings of " + panel.id() + ", "
                + Figures.thickness(panel.openingM()) + " wide, where its head is some " + Figures.thickness(headM)
                + " broad (assumption); infants are smaller yet";
        findings.add(Finding.of(
                "mesh-too-wide",
                Weight.CAUTION,
                panel.id(),
                smallest.name(),
                panel.openingM(),
                "m",
                text,
                "use openings that no head goes through, or so wide that no animal is caught; measure your animals",
                (wholeBody ? "openings wide enough to slip through, " : "openings wide enough for a head, ")
                        + Figures.thickness(panel.openingM()) + " (assumption)"));
    }
}
