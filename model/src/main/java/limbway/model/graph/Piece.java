package limbway.model.graph;

import java.util.List;

import limbway.model.enclosure.Support;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;

/**
 * One straight piece of support, joined from all supports that continue each other in one line.
 *
 * @param line its ends
 * @param stock a support it was made of, for diameter, material and kind
 * @param names supports in order along the line
 * @param untilShare where each of them ends, as a share of the length; the last is 1
 */
record Piece(Segment line, Support stock, List<String> names, List<Double> untilShare) {

    /** A support steeper than this is climbed, not walked or clambered along. */
    static final double STEEP_DEG = 45;

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
        return stock.diameterM() / 2;
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
