package limbway.model.explain.flip;

import limbway.model.enclosure.Bearing;
import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportKind;
import limbway.model.geometry.HangingLine;
import limbway.model.geometry.Point;
import limbway.model.geometry.Polyline;

/** What goes from one place to another, drawn anew with other ends or another sag. */
final class Line {

    /** A stated sag is a whole multiple of this share. */
    private static final double SAG_STEP = 1e-6;

    private static final double ROUNDING = 1e-9;
    private static final double PERCENT = 100;

    private Line() {}

    /** Sag of a rope as a share of its distance in plan; 0 of what is straight. */
    static double sagShare(Support support) {
        Polyline axis = support.axis();
        double planM = axis.start().planDistanceM(axis.end());
        if (support.kind() != SupportKind.ROPE || axis.points().size() < 3 || planM == 0) {
            return 0;
        }
        Point middle = axis.points().get(axis.points().size() / 2);
        double share = ((axis.start().zM() + axis.end().zM()) / 2 - middle.zM()) / planM;
        double stated = Math.rint(share / SAG_STEP) * SAG_STEP;
        return Math.abs(share - stated) < ROUNDING ? Math.rint(share / SAG_STEP) / (1 / SAG_STEP) : share;
    }

    /** Whether a sag is one that somebody would state; else it followed from a length. */
    static boolean isStated(double sagShare) {
        return Math.rint(sagShare / SAG_STEP) / (1 / SAG_STEP) == sagShare;
    }

    /** A sag in hundredths of a per cent. */
    static double rounded(double sagShare) {
        return Math.rint(sagShare * PERCENT * PERCENT) / PERCENT / PERCENT;
    }

    static Support between(Support old, Point from, Point to, double sagShare) {
        return with(old, HangingLine.between(from, to, sagShare * from.planDistanceM(to)), old.bearing());
    }

    static Support with(Support old, Polyline axis, Bearing bearing) {
        return new Support(old.id(), old.kind(), axis, old.diameterM(), old.tipDiameterM(), old.material(), bearing);
    }
}
