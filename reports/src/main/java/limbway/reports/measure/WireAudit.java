package limbway.reports.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import limbway.model.containment.LiveSpace;
import limbway.model.enclosure.Crown;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Panel;
import limbway.model.enclosure.Resource;
import limbway.model.enclosure.Support;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;
import limbway.reports.words.Figures;

/** How much of what visitors see to climb on can be climbed on, and how much lies in the space of live wire. */
final class WireAudit {

    /** Supports are looked at every so many metres, panels along their edges and through their middle. */
    private static final double STEP_M = 0.05;

    private static final int CROWN_RINGS = 6;
    private static final int CROWN_LEVELS = 8;
    private static final double HALF = 0.5;

    private final Enclosure enclosure;
    private final LiveSpace live;
    private final List<Finding> findings = new ArrayList<>();

    WireAudit(Enclosure enclosure) {
        this.enclosure = enclosure;
        this.live = new LiveSpace(enclosure.bounds().hotWires());
    }

    List<Finding> findings() {
        if (enclosure.bounds().hotWires().isEmpty()) {
            return List.of();
        }
        double visibleM = 0;
        double usableM = 0;
        for (Support support : enclosure.supports()) {
            double share = usableShare(along(support.axis().pieces()));
            visibleM += support.axis().lengthM();
            usableM += share * support.axis().lengthM();
            lost(support.id(), "length", share);
        }
        for (Panel panel : enclosure.panels()) {
            lost(panel.id(), "surface", usableShare(over(panel)));
        }
        for (Crown crown : enclosure.crowns()) {
            lost(crown.id(), "space", usableShare(within(crown)));
        }
        for (Resource resource : enclosure.resources()) {
            if (live.holds(resource.at())) {
                behindWire(resource);
            }
        }
        if (usableM < visibleM) {
            together(usableM, visibleM);
        }
        return findings;
    }

    private void lost(String place, String measure, double share) {
        if (share < 1) {
            findings.add(Finding.of(
                    "lost-to-wire",
                    share < HALF ? Weight.CAUTION : Weight.NOTE,
                    place,
                    "",
                    100 * share,
                    "%",
                    "of the " + measure + " of " + place + ", " + Figures.percent(share)
                            + " can be used; the rest lies within the clearance of live wire",
                    "move the wire or the structure, or count only what is left",
                    Figures.percent(share) + " of its " + measure
                            + " can be used, the rest lies within the clearance of " + "live wire"));
        }
    }

    private void behindWire(Resource resource) {
        String shared = "lies within the clearance of live wire";
        String kind = resource.kind().word();
        findings.add(new Finding(
                "behind-wire",
                Weight.CAUTION,
                resource.id(),
                "",
                OptionalDouble.empty(),
                "",
                "the " + kind + " " + resource.id() + " " + shared,
                "move the " + kind + " or the wire",
                shared,
                Optional.empty()));
    }

    private void together(double usableM, double visibleM) {
        double share = usableM / visibleM;
        findings.add(Finding.alone(
                "usable-beside-wire",
                share < HALF ? Weight.CAUTION : Weight.NOTE,
                "",
                100 * share,
                "%",
                "of " + Figures.path(visibleM) + " of supports that can be seen, " + Figures.path(usableM) + " ("
                        + Figures.percent(share) + ") lie outside the clearance of live wire",
                "count only what is left"));
    }

    private double usableShare(List<Point> places) {
        long free = places.stream().filter(place -> !live.holds(place)).count();
        return (double) free / places.size();
    }

    private static List<Point> along(List<Segment> pieces) {
        List<Point> places = new ArrayList<>();
        for (Segment piece : pieces) {
            int steps = (int) Math.max(1, Math.ceil(piece.lengthM() / STEP_M));
            for (int i = 0; i < steps; i++) {
                places.add(piece.at((i + HALF) / steps));
            }
        }
        return places;
    }

    /** Lines from the middle to each edge, thinned towards the middle as area is. */
    private static List<Point> over(Panel panel) {
        Point middle = panel.corners().stream()
                .reduce(Point::plus)
                .orElseThrow()
                .times(1.0 / panel.corners().size());
        List<Point> places = new ArrayList<>();
        for (Segment edge : panel.facet().edges()) {
            for (Point onEdge : along(List.of(edge))) {
                for (int i = 0; i < CROWN_RINGS; i++) {
                    places.add(new Segment(middle, onEdge).at(Math.sqrt((i + HALF) / CROWN_RINGS)));
                }
            }
        }
        return places;
    }

    private static List<Point> within(Crown crown) {
        List<Point> places = new ArrayList<>();
        for (int level = 0; level < CROWN_LEVELS; level++) {
            double zM = crown.baseZM() + (crown.topZM() - crown.baseZM()) * (level + HALF) / CROWN_LEVELS;
            for (int ring = 0; ring < CROWN_RINGS; ring++) {
                double fromMiddleM = crown.radiusM() * Math.sqrt((ring + HALF) / CROWN_RINGS);
                for (int turn = 0; turn < 2 * CROWN_RINGS; turn++) {
                    double angle = Math.PI * turn / CROWN_RINGS;
                    places.add(crown.foot()
                            .plus(new Point(
                                    fromMiddleM * StrictMath.cos(angle), fromMiddleM * StrictMath.sin(angle), 0))
                            .atHeight(zM));
                }
            }
        }
        return places;
    }
}
