package limbway.model.volume;

import java.util.List;
import java.util.SplittableRandom;

/**
 * Measures the room within reach of shapes along upright lines, two at random places of each cell of the plan.
 *
 * <p>Along a line the room is exact, or, where something may hide a part of it, right on the mean; the plan is sampled in layers of equal area (stratified), so the estimate is
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

    private final Extent extent;
    private final Stops stops;
    private final double reachM;
    private final int columns;
    private final long seed;

    /**
     * Sets what is measured.
     *
     * @param extent outside which nothing counts
     * @param stops what keeps a hand away
     * @param reachM how far from the shapes counts [m]
     * @param columns least number of upright lines
     * @param seed which random places; any number
     */
    Columns(Extent extent, Stops stops, double reachM, int columns, long seed) {
        this.extent = extent;
        this.stops = stops;
        this.reachM = reachM;
        this.columns = columns;
        this.seed = seed;
    }

    /** Volume within reach of at least one of the shapes. */
    Estimate measure(List<Shape> shapes) {
        PlanBox box = extent.plan().box();
        Column column = new Column(extent, stops, shapes, reachM);
        double sideM = Math.sqrt(2 * box.widthM() * box.depthM() / columns);
        int across = (int) Math.ceil(box.widthM() / sideM);
        int down = (int) Math.ceil(box.depthM() / sideM);
        double stepX = box.widthM() / across;
        double stepY = box.depthM() / down;
        SplittableRandom chance = new SplittableRandom(seed);
        // a stream of its own, so that places on the plan are the same with and without screens
        SplittableRandom heights = new SplittableRandom(seed + 1);
        double sum = 0;
        double squares = 0;
        for (int y = 0; y < down; y++) {
            double south = box.southM() + y * stepY;
            for (int x = 0; x < across; x++) {
                double west = box.westM() + x * stepX;
                double one = column.heightM(
                        west + chance.nextDouble() * stepX, south + chance.nextDouble() * stepY, heights.nextDouble());
                double other = column.heightM(
                        west + chance.nextDouble() * stepX, south + chance.nextDouble() * stepY, heights.nextDouble());
                sum += one + other;
                squares += (one - other) * (one - other);
            }
        }
        double cellM2 = stepX * stepY;
        return new Estimate(cellM2 * sum / 2, cellM2 * Math.sqrt(squares) / 2);
    }
}
