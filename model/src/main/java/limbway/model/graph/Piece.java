package limbway.model.graph;

import java.util.List;

import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportKind;
import limbway.model.geometry.Point;
import limbway.model.geometry.Polyline;
import limbway.model.geometry.Segment;
import limbway.model.strength.BearingLimit;
import limbway.model.strength.BearingLoad;

/**
 * One straight piece of support, joined from all supports that continue each other in one line.
 *
 * @param line its ends
 * @param stock a support it was made of, for material and kind
 * @param diameterM thickness; of a tapering support in the middle of the piece
 * @param course where it lies along the whole member
 * @param names supports in order along the line
 * @param untilShare where each of them ends, as a share of the length; the last is 1
 */
record Piece(
        Segment line, Support stock, double diameterM, Course course, List<String> names, List<Double> untilShare) {

    /** A support steeper than this is climbed, not walked or clambered along. */
    static final double STEEP_DEG = 45;

    /** A straight part of one support, before any joining. */
    static Piece of(Segment line, Support support, double startM) {
        double lengthM = line.lengthM();
        Course course = new Course(support.axis().lengthM(), startM, startM + lengthM);
        return new Piece(
                line,
                support,
                support.diameterAtM(startM + lengthM / 2),
                isDrawnFromTheTop(support) ? course.mirrored() : course,
                List.of(support.id()),
                List.of(1.0));
    }

    /** A pole or trunk stands on its lower end, whichever was drawn first. */
    private static boolean isDrawnFromTheTop(Support support) {
        return support.kind().isUpright()
                && support.axis().end().zM() < support.axis().start().zM();
    }

    /** The heaviest body that the piece bears; pieces joined in one line are one member as long as all of them. */
    BearingLimit limit(BearingLoad loads) {
        if (names.size() > 1) {
            return loads.of(new Support(
                    stock.id(),
                    stock.kind(),
                    Polyline.straight(line.a(), line.b()),
                    diameterM,
                    diameterM,
                    stock.material(),
                    stock.bearing()));
        }
        boolean isCutLimb = stock.kind() == SupportKind.BRANCH && stock.tipDiameterM() < stock.diameterM();
        return isCutLimb ? loads.at(stock, Math.max(course.startM(), course.endM())) : loads.of(stock);
    }

    double slopeDeg() {
        Point d = line.b().minus(line.a());
        return StrictMath.toDegrees(StrictMath.asin(Math.min(1, Math.abs(d.zM()) / d.lengthM())));
    }

    boolean isSteep() {
        return slopeDeg() > STEEP_DEG;
    }

    Point lowerEnd() {
        return line.a().zM() <= line.b().zM() ? line.a() : line.b();
    }

    double radiusM() {
        return diameterM / 2;
    }

    String nameAt(double share) {
        for (int i = 0; i < names.size(); i++) {
            if (share <= untilShare.get(i)) {
                return names.get(i);
            }
        }
        return names.get(names.size() - 1);
    }

    /** Whether a place that is said to be on a support of some name lies on this piece of it. */
    boolean carries(String name, Point place) {
        return names.contains(name) && line.distanceM(place) <= Pieces.SAME_PLACE_M;
    }

    /** Shares of an even division with steps of at most the given length, both ends included. */
    double[] evenShares(double spacingM) {
        return evenShares(line, spacingM);
    }

    /** Shares of an even division of any line, likewise. */
    static double[] evenShares(Segment line, double spacingM) {
        int steps = Math.max(1, (int) Math.ceil(line.lengthM() / spacingM - 1e-9));
        double[] shares = new double[steps + 1];
        for (int i = 0; i <= steps; i++) {
            shares[i] = (double) i / steps;
        }
        return shares;
    }
}
