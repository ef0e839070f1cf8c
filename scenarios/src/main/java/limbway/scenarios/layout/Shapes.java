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
