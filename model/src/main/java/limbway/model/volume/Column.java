package limbway.model.volume;

import java.util.List;

import limbway.model.geometry.Point;

/**
 * An upright line, moved from place to place of the plan: how much of it is within reach.
 *
 * <p>Where no screen is near, the stretches are exact. Near a screen a stretch counts as far as the nearest place of what
 * it is reached from sees it: tried at places of even distance, the first of them at random, so that the length found is
 * right on the mean and its scatter shows in the error of the columns.
 */
final class Column {

    /** Greatest distance between places that are tried [m]. */
    private static final double STEP_M = 0.25;

    /** What takes room is looked up in cells of about this size [m]. */
    private static final double CELL_M = 1;

    private final Extent extent;
    private final List<Shape> shapes;
    private final double reachM;
    private final ShapeGrid near;
    private final List<Shape> taken;
    private final ShapeGrid nearTaken;
    private final List<Screen> screens;
    private final ShapeGrid nearScreens;
    private final Spans reached = new Spans();
    private final Spans out = new Spans();
    private boolean[] seen = new boolean[16];

    Column(Extent extent, Stops stops, List<Shape> shapes, double reachM) {
        this.extent = extent;
        this.shapes = shapes;
        this.reachM = reachM;
        PlanBox box = extent.plan().box();
        this.near = new ShapeGrid(box, shapes, reachM);
        this.taken = stops.taken();
        this.nearTaken = new ShapeGrid(box, taken, CELL_M);
        this.screens = stops.screens();
        // a hand comes from at most a reach and the thickness of a bar away
        this.nearScreens =
                new ShapeGrid(box, screens.stream().map(Screen::shape).toList(), reachM + thickestM(shapes));
    }

    private static double thickestM(List<Shape> shapes) {
        double thickestM = 0;
        for (Shape shape : shapes) {
            thickestM = shape instanceof Bar bar ? Math.max(thickestM, bar.radiusM()) : thickestM;
        }
        return thickestM;
    }

    /**
     * Length within reach above a place of the plan [m].
     *
     * @param xM metres east
     * @param yM metres north
     * @param offset where the first place is tried, as a share of a step, 0 to 1
     */
    double heightM(double xM, double yM, double offset) {
        if (!extent.plan().covers(xM, yM)) {
            return 0;
        }
        double floorM = extent.floorM(xM, yM);
        double ceilingM = extent.ceilingM(xM, yM);
        out.clear(floorM, ceilingM);
        for (int block : nearTaken.near(xM, yM)) {
            taken.get(block).addReached(xM, yM, 0, out);
        }
        reached.clear(floorM, ceilingM);
        int[] screensHere = nearScreens.near(xM, yM);
        if (screensHere.length > 0 && ceilingM > floorM) {
            return seenM(xM, yM, offset, screensHere, floorM, ceilingM);
        }
        for (int shape : near.near(xM, yM)) {
            shapes.get(shape).addReached(xM, yM, reachM, reached);
        }
        if (out.isEmpty()) {
            return reached.coveredM();
        }
        reached.addAll(out);
        return reached.coveredM() - out.coveredM();
    }

    private double seenM(double xM, double yM, double offset, int[] screensHere, double floorM, double ceilingM) {
        int steps = (int) Math.ceil((ceilingM - floorM) / STEP_M);
        double stepM = (ceilingM - floorM) / steps;
        if (seen.length < steps) {
            seen = new boolean[2 * steps];
        }
        int count = 0;
        for (int k = 0; k < steps; k++) {
            seen[k] = false;
        }
        for (int shape : near.near(xM, yM)) {
            reached.clear(floorM, ceilingM);
            shapes.get(shape).addReached(xM, yM, reachM, reached);
            for (int k = 0; k < steps && !reached.isEmpty(); k++) {
                Point place = new Point(xM, yM, floorM + (k + offset) * stepM);
                if (!seen[k]
                        && reached.covers(place.zM())
                        && !out.covers(place.zM())
                        && sees(shapes.get(shape).nearestTo(place), place, screensHere)) {
                    seen[k] = true;
                    count++;
                }
            }
        }
        return count * stepM;
    }

    private boolean sees(Point from, Point place, int[] screensHere) {
        for (int screen : screensHere) {
            if (screens.get(screen).hides(from, place)) {
                return false;
            }
        }
        return true;
    }
}
