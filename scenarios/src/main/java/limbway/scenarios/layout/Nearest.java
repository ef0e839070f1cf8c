package limbway.scenarios.layout;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.GeometryFactory;

import limbway.model.enclosure.Crown;
import limbway.model.enclosure.Panel;
import limbway.model.enclosure.Platform;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;
import limbway.scenarios.problem.Wording;

/**
 * The nearest thing to a point.
 *
 * @param what kind and name
 * @param distanceM how far its surface is [m], 0 or more
 */
record Nearest(String what, double distanceM) {

    /** This, or a support or deck if that is nearer. */
    Nearest orNearer(Point p, Built built) {
        if (built instanceof Built.Deck deck) {
            return orNearer(deck.entry().what(), distanceM(p, deck.platform()));
        }
        Built.Member member = (Built.Member) built;
        double axisM = Double.MAX_VALUE;
        for (Segment piece : member.support().axis().pieces()) {
            axisM = Math.min(axisM, piece.distanceM(p));
        }
        double surfaceM = Math.max(0, axisM - member.support().diameterM() / 2);
        Nearest nearer = orNearer(member.entry().what(), surfaceM);
        return member.crown()
                .map(crown -> nearer.orNearer("the crown of " + member.entry().what(), distanceM(p, crown)))
                .orElse(nearer);
    }

    /** This, or a panel if that is nearer. */
    Nearest orNearer(Point p, Panel panel) {
        double awayM = PanelPlane.of(panel.facet()).distanceM(p, panel.corners());
        return orNearer(panel.kind().word() + " " + Wording.quote(panel.id()), awayM);
    }

    private Nearest orNearer(String otherWhat, double otherM) {
        return otherM < distanceM ? new Nearest(otherWhat, otherM) : this;
    }

    private static double distanceM(Point p, Platform platform) {
        return Math.hypot(planDistanceM(p, platform.outline()), p.zM() - platform.zM());
    }

    private static double planDistanceM(Point p, Outline outline) {
        Coordinate at = new Coordinate(p.xM(), p.yM());
        return outline.covers(p.xM(), p.yM()) ? 0 : outline.toPolygon().distance(new GeometryFactory().createPoint(at));
    }

    private static double distanceM(Point p, Crown crown) {
        double besideM = Math.max(0, crown.foot().planDistanceM(p) - crown.radiusM());
        double aboveM = Math.max(0, Math.max(p.zM() - crown.topZM(), crown.baseZM() - p.zM()));
        return Math.hypot(besideM, aboveM);
    }
}
