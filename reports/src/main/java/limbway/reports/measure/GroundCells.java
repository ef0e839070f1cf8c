package limbway.reports.measure;

import java.util.Arrays;

/**
 * How long animals are on the ground, by square cells of the plan, sleep at night left out.
 *
 * <p>Cells are aligned with whole multiples of their size, and go as far as somebody was.
 */
public final class GroundCells {

    /** Side of a cell [m]. */
    public static final double CELL_M = 1;

    private final int x0;
    private final int y0;
    private final int columns;
    private final int rows;
    private final double[] secondsPerAnimalDay;

    GroundCells(int x0, int y0, int columns, int rows, double[] secondsPerAnimalDay) {
        this.x0 = x0;
        this.y0 = y0;
        this.columns = columns;
        this.rows = rows;
        this.secondsPerAnimalDay = secondsPerAnimalDay;
    }

    /**
     * The west edge.
     *
     * @return metres east, a whole number of cells
     */
    public double westM() {
        return x0 * CELL_M;
    }

    /**
     * The south edge.
     *
     * @return metres north, a whole number of cells
     */
    public double southM() {
        return y0 * CELL_M;
    }

    /**
     * Number of cells from west to east.
     *
     * @return 0 where nobody was on the ground
     */
    public int columns() {
        return columns;
    }

    /**
     * Number of cells from south to north.
     *
     * @return 0 where nobody was on the ground
     */
    public int rows() {
        return rows;
    }

    /**
     * Time in one cell.
     *
     * @param column cells from the west edge, from 0
     * @param row cells from the south edge, from 0
     * @return time of an animal in a day, on average over animals, days and repetitions [s]
     */
    public double secondsPerAnimalDay(int column, int row) {
        return secondsPerAnimalDay[row * columns + column];
    }

    /**
     * Time in all cells.
     *
     * @return time of an animal in a day on the ground [s]
     */
    public double totalSecondsPerAnimalDay() {
        return Arrays.stream(secondsPerAnimalDay).sum();
    }
}
