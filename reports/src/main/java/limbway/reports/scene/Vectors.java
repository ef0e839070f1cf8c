package limbway.reports.scene;

import limbway.model.geometry.Point;

/** Directions in space. */
final class Vectors {

    static final Point UP = new Point(0, 0, 1);
    static final Point DOWN = new Point(0, 0, -1);

    private Vectors() {}

    static Point cross(Point a, Point b) {
        return new Point(
                a.yM() * b.zM() - a.zM() * b.yM(),
                a.zM() * b.xM() - a.xM() * b.zM(),
                a.xM() * b.yM() - a.yM() * b.xM());
    }

    /** The direction of a vector; the vector must have a length. */
    static Point unit(Point vector) {
        return vector.times(1 / vector.lengthM());
    }

    /** Some direction at right angles to a unit vector, the same for the same vector. */
    static Point across(Point direction) {
        Point other = Math.abs(direction.zM()) < 0.9 ? UP : new Point(1, 0, 0);
        return unit(cross(other, direction));
    }
}
