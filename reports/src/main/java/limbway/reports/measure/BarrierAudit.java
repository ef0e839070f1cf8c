package limbway.reports.measure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

import limbway.model.body.Body;
import limbway.model.containment.Brink;
import limbway.model.containment.Brinks;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.Support;
import limbway.model.energy.Ballistics;
import limbway.model.geometry.Point;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.reports.words.Figures;
import limbway.sim.habitat.Habitat;

/**
 * How near animals come to where they would be out: by reach from any hold they can be at, from a pole swayed as far as the
 * model lets it, or by leap. What stands in between is not looked at, so it warns too often rather than too seldom. It
 * lists places for a licensed reviewer and is never a pass.
 */
final class BarrierAudit {

    private static final String FOR_REVIEW = "for a licensed reviewer to judge; what is not listed is no pass";
    private static final String GROUND = "the ground";

    /** The nearest approach of one body to one brink by one means. */
    private record Approach(String kind, String from, double clearM, double heightM, boolean within, String how) {}

    private final Habitat habitat;
    private final RouteGraph graph;
    private final double overheadM;
    private final Map<String, Support> supports = new LinkedHashMap<>();
    private final Set<String> decks = new TreeSet<>();

    BarrierAudit(Habitat habitat) {
        this.habitat = habitat;
        this.graph = habitat.graph();
        this.overheadM = habitat.bodies().stream()
                .mapToDouble(Body::overheadReachM)
                .max()
                .orElseThrow();
        habitat.layout().enclosure().supports().forEach(support -> supports.put(support.id(), support));
        habitat.layout().enclosure().platforms().stream().map(Platform::id).forEach(decks::add);
    }

    List<Finding> findings() {
        List<Finding> findings = new ArrayList<>();
        for (Brink brink : Brinks.of(habitat.layout().enclosure())) {
            Point[] nearest = new Point[graph.holdCount()];
            for (int hold = 0; hold < nearest.length; hold++) {
                nearest[hold] = graph.onGround(hold) ? null : brink.nearestTo(graph.place(hold));
            }
            List<Finding> within = new ArrayList<>();
            Approach least = null;
            for (Body body : habitat.bodies()) {
                Approach approach = nearest(brink, nearest, body);
                if (approach != null && approach.within) {
                    within.add(caution(brink, body, approach));
                } else if (approach != null && (least == null || approach.clearM < least.clearM)) {
                    least = approach;
                }
            }
            findings.addAll(within);
            if (within.isEmpty() && least != null) {
                findings.add(note(brink, least));
            }
        }
        return findings;
    }

    /** Within reach before within a sway before within a leap; of each the nearest; else the nearest that is not. */
    private Approach nearest(Brink brink, Point[] nearest, Body body) {
        Approach reach = null;
        Approach sway = null;
        Approach leap = fromGround(brink, body);
        boolean[] usable = usable(habitat.routes(body).costs());
        for (int hold = 0; hold < nearest.length; hold++) {
            if (usable[hold] && nearest[hold] != null && counts(brink, hold)) {
                reach = nearer(reach, reach(hold, nearest[hold], body));
                sway = nearer(sway, sway(hold, nearest[hold], body));
                leap = nearer(leap, leap(brink, hold, nearest[hold], body));
            }
        }
        for (Approach approach : new Approach[] {reach, sway, leap}) {
            if (approach != null && approach.within) {
                return approach;
            }
        }
        return nearer(reach, leap);
    }

    /** What is passed at every height is passed from the ground as well: only higher holds say more. */
    private boolean counts(Brink brink, int hold) {
        Point place = graph.place(hold);
        return !brink.anyHeight() || place.zM() - groundM(place) > overheadM;
    }

    private double groundM(Point place) {
        return habitat.layout().enclosure().ground().terrain().heightM(place.xM(), place.yM());
    }

    private static Approach nearer(Approach old, Approach fresh) {
        boolean better = fresh != null
                && (old == null
                        || (fresh.within && !old.within)
                        || (fresh.within == old.within && fresh.clearM < old.clearM));
        return better ? fresh : old;
    }

    private Approach reach(int hold, Point target, Body body) {
        double clearM = Math.max(0, graph.place(hold).distanceM(target) - radiusM(hold));
        double reachM = decks.contains(graph.support(hold))
                ? Math.max(body.gapReachM(), body.overheadReachM())
                : body.gapReachM();
        return approach("barrier-in-reach", hold, clearM, clearM <= reachM, "reaches " + Figures.metres(reachM));
    }

    private Approach sway(int hold, Point target, Body body) {
        Support pole = supports.get(graph.support(hold));
        if (pole == null || !pole.bearing().sways()) {
            return null;
        }
        double swingM =
                habitat.energy().sway().farthestShare() * pole.axis().start().distanceM(graph.place(hold));
        double clearM = Math.max(0, graph.place(hold).distanceM(target) - radiusM(hold) - swingM);
        return approach(
                "barrier-in-sway",
                hold,
                clearM,
                clearM <= body.gapReachM(),
                "reaches " + Figures.metres(body.gapReachM()) + " beyond a swing of " + Figures.metres(swingM));
    }

    /** The centre of mass flies to the line itself; beyond an edge without height it may fall to the ground. */
    private Approach leap(Brink brink, int hold, Point target, Body body) {
        if (body.takeOffMPerS() == 0) {
            return null;
        }
        Point place = graph.place(hold);
        double clearM = Math.max(0, place.planDistanceM(target) - radiusM(hold));
        double landingZM = brink.anyHeight() ? groundM(target) : target.zM();
        boolean within = Ballistics.leastSpeedMPerS(clearM, landingZM - place.zM()) <= body.takeOffMPerS();
        return approach("barrier-in-leap", hold, clearM, within, takesOff(body));
    }

    private Approach approach(String kind, int hold, double clearM, boolean within, String how) {
        return new Approach(kind, graph.support(hold), clearM, graph.place(hold).zM(), within, how);
    }

    /** From the ground below a top, or from the near bank of water. */
    private Approach fromGround(Brink brink, Body body) {
        double leapM = Ballistics.highestRiseM(body.takeOffMPerS());
        if (brink.topForGround()) {
            double riseM = brink.pieces().stream()
                    .mapToDouble(piece -> piece.a().zM() - groundM(piece.a()))
                    .min()
                    .orElseThrow();
            boolean byReach = riseM <= body.overheadReachM();
            String how = "reaches " + Figures.metres(body.overheadReachM()) + " overhead"
                    + (byReach ? "" : " and " + takesOff(body));
            return new Approach(
                    byReach ? "barrier-in-reach" : "barrier-in-leap",
                    GROUND,
                    riseM,
                    0,
                    riseM <= body.overheadReachM() + leapM,
                    how);
        }
        double widthM = brink.widthM();
        if (widthM == Double.POSITIVE_INFINITY) {
            return null;
        }
        boolean byReach = widthM <= body.gapReachM();
        boolean byLeap = Ballistics.levelRangeM(body.takeOffMPerS()) >= widthM;
        String how = byReach ? "reaches " + Figures.metres(body.gapReachM()) : takesOff(body);
        return new Approach(
                byReach ? "barrier-in-reach" : "barrier-in-leap", GROUND, widthM, 0, byReach || byLeap, how);
    }

    private static String takesOff(Body body) {
        return "leaps off at " + Figures.decimals(body.takeOffMPerS(), 1) + " m/s, however deep it falls";
    }

    private double radiusM(int hold) {
        Support support = supports.get(graph.support(hold));
        return support == null ? 0 : support.diameterM() / 2;
    }

    private boolean[] usable(MoveCosts costs) {
        boolean[] usable = new boolean[graph.holdCount()];
        for (int move = 0; move < graph.moveCount(); move++) {
            if (costs.milliJ(move) != MoveCosts.IMPOSSIBLE) {
                usable[graph.from(move)] = true;
                usable[graph.to(move)] = true;
            }
        }
        return usable;
    }

    private static Finding caution(Brink brink, Body body, Approach approach) {
        String where = Figures.metres(approach.clearM) + " from " + place(approach);
        return Finding.of(
                approach.kind,
                Weight.CAUTION,
                brink.id(),
                body.name(),
                approach.clearM,
                "m",
                brink.words() + " is " + where + ", and " + Figures.one(body.name()) + " " + approach.how + ": "
                        + FOR_REVIEW,
                "move the hold away or the barrier up and out, and have it judged",
                where + ": " + FOR_REVIEW);
    }

    private static Finding note(Brink brink, Approach least) {
        String text = brink.words() + " is " + Figures.metres(least.clearM) + " from " + place(least)
                + ", and no way for these bodies to come to it by reach, sway or leap was found: that is no pass; "
                + FOR_REVIEW;
        return Finding.alone("barrier-clearance", Weight.NOTE, brink.id(), least.clearM, "m", text, "have it judged");
    }

    private static String place(Approach approach) {
        return approach.from.equals(GROUND)
                ? GROUND
                : approach.from + " at a height of " + Figures.metres(approach.heightM);
    }
}
