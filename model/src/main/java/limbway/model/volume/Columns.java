package limbway.model.volume;

import java.util.List;
import java.util.SplittableRandom;

/**
 * Measures the room within reach of shapes along upright lines, two at random places of each cell of the plan.
 *
 * <p>Along a line the room is exact; the plan is sampled in layers of equal area (stratified), so the estimate is
 * unbiased and the two lines of each cell say how large its error is: the variance of a cell's mean is a quarter of the
 * square of their difference. Places depend on the outline alone: another support moves no sample.
 *
 * @source stratified sampling with two draws a stratum, Cochran 1977, Sampling Techniques, ch. 5 (from memory)
 */
final class Columns {

    /**
     * A measured volume.
     *
     * @param m3 volume [m³]
     * @param standardErrorM3 standard error of the sampling [m³]
     */
    record Estimate(double m3, double standardErrorM3) {}

    private final PlanArea within;
    private final double topM;
    private final double reachM;
    private final int columns;
    private final long seed;

    /**
     * Sets what is measured.
     *
     * @param within plan outside which nothing counts
     * @param topM height above which nothing counts [m]; neither does anything below 0
     * @param reachM how far from the shapes counts [m]
     * @param columns least number of upright lines
     * @param seed which random places; any number
     */
    Columns(PlanArea within, double topM, double reachM, int columns, long seed) {
        this.within = within;
        this.topM = topM;
        this.reachM = reachM;
        this.columns = columns;
        this.seed = seed;
    }

    /** Volume within reach of at least one of the shapes. */
    Estimate measure(List<Shape> shapes) {
        PlanBox box = within.box();
        ShapeGrid grid = new ShapeGrid(box, shapes, reachM);
        double sideM = Math.sqrt(2 * box.widthM() * box.depthM() / columns);
        int across = (int) Math.ceil(box.widthM() / sideM);
        int down = (int) Math.ceil(box.depthM() / sideM);
        double stepX = box.widthM() / across;
        double stepY = box.depthM() / down;
        SplittableRandom chance = new SplittableRandom(seed);
        Spans spans = new Spans(0, topM);
        double sum = 0;
        double squares = 0;
        for (int y = 0; y < down; y++) {
            double south = box.southM() + y * stepY;
            for (int x = 0; x < across; x++) {
                double west = box.westM() + x * stepX;
                double one = heightM(
                        shapes, grid, spans, west + chance.nextDouble() * stepX, south + chance.nextDouble() * stepY);
                double other = heightM(
                        shapes, grid, spans, west + chance.nextDouble() * stepX, south + chance.nextDouble() * stepY);
                sum += one + other;
                squares += (one - other) * (one - other);
            }
        }
        double cellM2 = stepX * stepY;
        return new Estimate(cellM2 * sum / 2, cellM2 * Math.sqrt(squares) / 2);
    }

    private double heightM(List<Shape> shapes, ShapeGrid grid, Spans spans, double xM, double yM) {
        if (!within.covers(xM, yM)) {
            return 0;
        }
        spans.clear();
        for (int shape : grid.near(xM, yM)) {
            shapes.get(shape).addReached(xM, yM, reachM, spans);
        }
        return spans.coveredM();
    }
}
