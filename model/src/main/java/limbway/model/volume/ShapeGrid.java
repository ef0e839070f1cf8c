package limbway.model.volume;

import java.util.Arrays;
import java.util.List;

/**
 * Which shapes may come within reach of a place of the plan, by a uniform grid.
 *
 * <p>So a column costs as much as there is around it, however much stands elsewhere.
 */
final class ShapeGrid {

    private static final int MOST_CELLS = 1_000_000;

    private final PlanBox box;
    private final double cellM;
    private final int across;
    private final int[][] shapesIn;

    /**
     * Sorts shapes into cells.
     *
     * @param box the plan in which places will be asked for
     * @param shapes what to sort
     * @param reachM within what distance they matter [m], above 0
     */
    ShapeGrid(PlanBox box, List<Shape> shapes, double reachM) {
        this.box = box;
        this.cellM = Math.max(reachM, Math.sqrt(box.widthM() * box.depthM() / MOST_CELLS));
        this.across = 1 + (int) (box.widthM() / cellM);
        int down = 1 + (int) (box.depthM() / cellM);
        this.shapesIn = new int[across * down][0];
        double coversM = reachM + cellM * Math.sqrt(0.5);
        for (int s = 0; s < shapes.size(); s++) {
            PlanBox around = shapes.get(s).planBox();
            int lastX = column(around.eastM() + reachM);
            int lastY = row(around.northM() + reachM, down);
            for (int y = row(around.southM() - reachM, down); y <= lastY; y++) {
                for (int x = column(around.westM() - reachM); x <= lastX; x++) {
                    double middleX = box.westM() + (x + 0.5) * cellM;
                    double middleY = box.southM() + (y + 0.5) * cellM;
                    if (shapes.get(s).planDistanceM(middleX, middleY) <= coversM) {
                        int cell = y * across + x;
                        shapesIn[cell] = Arrays.copyOf(shapesIn[cell], shapesIn[cell].length + 1);
                        shapesIn[cell][shapesIn[cell].length - 1] = s;
                    }
                }
            }
        }
    }

    /** Numbers of the shapes that may be within reach, ascending; not to be changed. */
    int[] near(double xM, double yM) {
        return shapesIn[row(yM, shapesIn.length / across) * across + column(xM)];
    }

    private int column(double xM) {
        return (int) Math.max(0, Math.min(across - 1, Math.floor((xM - box.westM()) / cellM)));
    }

    private int row(double yM, int down) {
        return (int) Math.max(0, Math.min(down - 1, Math.floor((yM - box.southM()) / cellM)));
    }
}
