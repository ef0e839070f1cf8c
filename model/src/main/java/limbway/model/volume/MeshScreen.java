package limbway.model.volume;

import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;

/**
 * A panel as something through which no hand reaches.
 *
 * <p>What lies in the plane of the wire itself, as the tubes of a frame do, has no side of its own: it is used from those
 * sides of the panel that the body uses.
 *
 * @param shape the panel with both its sides
 * @param frontUsed whether the body comes to its front
 * @param backUsed whether it comes to its back
 */
record MeshScreen(Sheet shape, boolean frontUsed, boolean backUsed) implements Screen {

    /** What is nearer to the plane lies in it; the open ground ends 5 mm before a panel. */
    private static final double IN_PLANE_M = 0.004;

    private static final double SKIN_M = 1e-6;

    @Override
    public boolean hides(Point from, Point to) {
        double before = shape.frontM(from);
        double after = shape.frontM(to);
        if (frontUsed != backUsed && Math.abs(before) < IN_PLANE_M && shape.isOver(from)) {
            return after > 0 != frontUsed;
        }
        if (Math.abs(before) < SKIN_M || Math.abs(after) < SKIN_M || before > 0 == after > 0) {
            return false;
        }
        return shape.isOver(new Segment(from, to).at(before / (before - after)));
    }
}
