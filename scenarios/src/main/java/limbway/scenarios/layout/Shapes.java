package limbway.scenarios.layout;

import java.util.ArrayList;
import java.util.List;

import limbway.model.geometry.Corner;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.geometry.Polyline;
import limbway.scenarios.entry.SupportEntry.DeckBySize;
import limbway.scenarios.entry.SupportEntry.Upright;

/** Lines and outlines of what is declared by a few measures. */
final class Shapes {

    /** Pieces of a rope are about so long [m]. */
    private static final double ROPE_PIECE_M = 0.5;

    private Shapes() {}

    /** The axis of a pole or trunk: its height is measured upright, the lean moves the top sideways. */
    static Polyline axis(Upright pole, Point foot) {
        double sidewaysM =
                pole.heightM() * StrictMath.tan(StrictMath.toRadians(pole.lean().fromUprightDeg()));
        double bearing = StrictMath.toRadians(pole.lean().towardsDeg());
        Point top = foot.plus(
                new Point(sidewaysM * StrictMath.sin(bearing), sidewaysM * StrictMath.cos(bearing), pole.heightM()));
        return Polyline.straight(foot, top);
    }

    /**
     * A rope that hangs as a parabola.
     *
     * <p>The sag is measured upright at the middle, below the straight line between the ends. Without sag the rope is
     * straight. The pieces are equal in plan and even in number, so that the middle is a point of the line.
     */
    static Polyline rope(Point from, Point to, double sagM) {
        if (sagM == 0) {
            return Polyline.straight(from, to);
        }
        int pieces = 2 * (int) Math.max(1, Math.ceil(from.distanceM(to) / (2 * ROPE_PIECE_M)));
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

    /** The outline of a deck round its middle. */
    static Outline deck(DeckBySize deck, Point middle) {
        return rectangle(middle, deck.eastM(), deck.northM(), deck.turnDeg());
    }

    /** A rectangle round its middle, turned clockwise seen from above. */
    static Outline rectangle(Point middle, double eastM, double northM, double turnDeg) {
        double turn = StrictMath.toRadians(turnDeg);
        double cos = StrictMath.cos(turn);
        double sin = StrictMath.sin(turn);
        double e = eastM / 2;
        double n = northM / 2;
        List<Corner> corners = new ArrayList<>();
        for (double[] corner : new double[][] {{-e, -n}, {e, -n}, {e, n}, {-e, n}}) {
            corners.add(new Corner(
                    middle.xM() + corner[0] * cos + corner[1] * sin, middle.yM() - corner[0] * sin + corner[1] * cos));
        }
        return new Outline(corners);
    }
}
