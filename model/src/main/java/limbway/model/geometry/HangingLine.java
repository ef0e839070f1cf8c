package limbway.model.geometry;

import java.util.ArrayList;
import java.util.List;

/** The shape of a rope between two points. */
public final class HangingLine {

    /** Pieces of a rope are about so long [m]. */
    private static final double PIECE_M = 0.5;

    private HangingLine() {}

    /**
     * A rope that hangs as a parabola.
     *
     * <p>The pieces are equal in plan and even in number, so that the middle is a point of the line.
     *
     * @param from one end
     * @param to other end, not the same point
     * @param sagM how far the middle hangs below the straight line between the ends, measured upright [m], 0 or more
     * @return the line; straight without sag
     */
    public static Polyline between(Point from, Point to, double sagM) {
        if (sagM == 0) {
            return Polyline.straight(from, to);
        }
        int pieces = 2 * (int) Math.max(1, Math.ceil(from.distanceM(to) / (2 * PIECE_M)));
        List<Point> points = new ArrayList<>();
        points.add(from);
        for (int i = 1; i < pieces; i++) {
            double t = (double) i / pieces;
            Point straight = from.plus(to.minus(from).times(t));
            points.add(straight.atHeight(straight.zM() - 4 * sagM * t * (1 - t)));
        }
        points.add(to);
        return new Polyline(points);
    }
}
