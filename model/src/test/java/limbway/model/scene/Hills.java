package limbway.model.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.function.DoubleBinaryOperator;

import limbway.model.geometry.Point;
import limbway.model.geometry.Terrain;
import limbway.model.geometry.Triangle;

/** Terrains for tests, as grids of heights with each cell cut in two. */
public final class Hills {

    private Hills() {}

    /** Heights by a formula, at the corners of cells. */
    public static Terrain grid(double eastM, double northM, double cellM, DoubleBinaryOperator heightM) {
        int columns = (int) Math.round(eastM / cellM);
        int rows = (int) Math.round(northM / cellM);
        List<Triangle> triangles = new ArrayList<>();
        for (int i = 0; i < columns; i++) {
            for (int j = 0; j < rows; j++) {
                Point sw = corner(i, j, cellM, heightM);
                Point se = corner(i + 1, j, cellM, heightM);
                Point ne = corner(i + 1, j + 1, cellM, heightM);
                Point nw = corner(i, j + 1, cellM, heightM);
                triangles.add(new Triangle(sw, se, ne));
                triangles.add(new Triangle(sw, ne, nw));
            }
        }
        return new Terrain(triangles);
    }

    /** A plane that rises to the north. */
    public static Terrain plane(double eastM, double northM, double slopeDeg) {
        double rise = StrictMath.tan(StrictMath.toRadians(slopeDeg));
        return grid(eastM, northM, Math.min(eastM, northM), (x, y) -> rise * y);
    }

    /** Heights at random, so that a side of a cell rises by up to the given slope. */
    public static Terrain bumpy(double eastM, double northM, double cellM, double slopeDeg, long seed) {
        double mostM = cellM * StrictMath.tan(StrictMath.toRadians(slopeDeg));
        return grid(
                eastM,
                northM,
                cellM,
                (x, y) -> mostM
                        * new SplittableRandom(seed * 1_000_003 + Math.round(x / cellM) * 1009 + Math.round(y / cellM))
                                .nextDouble());
    }

    private static Point corner(int i, int j, double cellM, DoubleBinaryOperator heightM) {
        return new Point(i * cellM, j * cellM, heightM.applyAsDouble(i * cellM, j * cellM));
    }
}
