package limbway.model.shade;

import java.util.List;

import limbway.model.enclosure.Platform;
import limbway.model.geometry.Corner;
import limbway.model.geometry.Point;

/** The axes of a deck in plan: along its first side and at right angles to it, from the corner of the rectangle round it. */
final class DeckFrame {

    private final double originX;
    private final double originY;
    private final double cos;
    private final double sin;
    private final double lowA;
    private final double lowB;
    private final double longA;
    private final double longB;
    private final double zM;

    DeckFrame(Platform deck) {
        List<Corner> corners = deck.outline().corners();
        Corner first = corners.get(0);
        Corner second = corners.get(1);
        originX = first.xM();
        originY = first.yM();
        double east = second.xM() - originX;
        double north = second.yM() - originY;
        double length = Math.sqrt(east * east + north * north);
        cos = east / length;
        sin = north / length;
        zM = deck.zM();
        double[] box = {Double.MAX_VALUE, Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
        for (Corner corner : corners) {
            double a = turnedA(corner.xM() - originX, corner.yM() - originY);
            double b = turnedB(corner.xM() - originX, corner.yM() - originY);
            box[0] = Math.min(box[0], a);
            box[1] = Math.min(box[1], b);
            box[2] = Math.max(box[2], a);
            box[3] = Math.max(box[3], b);
        }
        lowA = box[0];
        lowB = box[1];
        longA = box[2] - box[0];
        longB = box[3] - box[1];
    }

    double longA() {
        return longA;
    }

    double longB() {
        return longB;
    }

    double zM() {
        return zM;
    }

    /** Component of a level displacement along the first axis. */
    double turnedA(double east, double north) {
        return east * cos + north * sin;
    }

    /** Component of a level displacement along the second axis. */
    double turnedB(double east, double north) {
        return north * cos - east * sin;
    }

    /** Place along the first axis, from the corner. */
    double a(double x, double y) {
        return turnedA(x - originX, y - originY) - lowA;
    }

    /** Place along the second axis, from the corner. */
    double b(double x, double y) {
        return turnedB(x - originX, y - originY) - lowB;
    }

    /** The point of space at a place of the frame. */
    Point at(double a, double b, double heightM) {
        double alongA = a + lowA;
        double alongB = b + lowB;
        return new Point(originX + alongA * cos - alongB * sin, originY + alongA * sin + alongB * cos, heightM);
    }

    /** Compass azimuth of a direction given anticlockwise from the first axis. */
    double azimuthDeg(double anticlockwiseDeg) {
        double axis = Math.toDegrees(StrictMath.atan2(sin, cos));
        double azimuth = (90 - axis - anticlockwiseDeg) % 360;
        return azimuth < 0 ? azimuth + 360 : azimuth;
    }
}
