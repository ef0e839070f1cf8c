package limbway.scenarios.layout;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.geometry.Point;
import limbway.model.geometry.Terrain;
import limbway.model.geometry.Triangle;

import static org.junit.jupiter.api.Assertions.assertEquals;

/** Where flat shapes dip below a ridge that runs along y at x = 5 and is 2 m high; all values by hand. */
@Tag("derived")
class BurialTest {

    private static final Terrain RIDGE = new Terrain(List.of(
            new Triangle(new Point(0, 0, 0), new Point(5, 0, 2), new Point(5, 10, 2)),
            new Triangle(new Point(0, 0, 0), new Point(5, 10, 2), new Point(0, 10, 0)),
            new Triangle(new Point(5, 0, 2), new Point(10, 0, 0), new Point(10, 10, 0)),
            new Triangle(new Point(5, 0, 2), new Point(10, 10, 0), new Point(5, 10, 2))));

    private static Optional<Burial> deepest(Point... corners) {
        return Burial.deepest(List.of(corners), RIDGE, 0.01);
    }

    @Test
    void aLevelShapeAboveTheRidgeIsClear() {
        assertEquals(
                Optional.empty(),
                deepest(new Point(3, 3, 2.1), new Point(7, 3, 2.1), new Point(7, 6, 2.1), new Point(3, 6, 2.1)));
    }

    @Test
    void aLevelShapeWhoseEdgesCrossTheRidgeLiesInIt() {
        Burial burial = deepest(new Point(3, 3, 1.5), new Point(7, 3, 1.5), new Point(7, 6, 1.5), new Point(3, 6, 1.5))
                .orElseThrow();
        assertEquals(5, burial.point().xM());
        // halves and quarters of small numbers: rounding alone
        assertEquals(0.5, burial.belowM(), 1e-12);
    }

    @Test
    void anUprightShapeLiesInTheRidgeThatItsLowerEdgeCrosses() {
        Burial burial = deepest(new Point(3, 4, 1.4), new Point(7, 4, 1.4), new Point(7, 4, 5), new Point(3, 4, 5))
                .orElseThrow();
        assertEquals(new Point(5, 4, 1.4), burial.point());
        // rounding alone
        assertEquals(0.6, burial.belowM(), 1e-12);
    }

    @Test
    void aSlopingShapeIsMeasuredUprightBelowThePeakInsideItsEdge() {
        // falls from 2.5 m at y = -4 to 0.5 m at y = 4, so that it is 1.5 m high at the end of the ridge, y = 0
        Burial burial = deepest(
                        new Point(3, -4, 2.5), new Point(7, -4, 2.5), new Point(7, 4, 0.5), new Point(3, 4, 0.5))
                .orElseThrow();
        assertEquals(new Point(5, 4, 0.5), burial.point());
        assertEquals(1.5, burial.belowM(), 1e-12); // rounding alone
        Burial less = deepest(
                        new Point(3, -4, 2.5),
                        new Point(7, -4, 2.5),
                        new Point(7, 0.1, 1.475),
                        new Point(3, 0.1, 1.475))
                .orElseThrow();
        assertEquals(0.525, less.belowM(), 1e-12); // rounding alone
    }

    @Test
    void aPeakInsideTheEdgeIsFoundWhereNoEdgeIsNear() {
        Terrain peak = new Terrain(List.of(
                new Triangle(new Point(-9, -9, 0), new Point(9, -9, 0), new Point(0, 0, 3)),
                new Triangle(new Point(9, -9, 0), new Point(9, 9, 0), new Point(0, 0, 3)),
                new Triangle(new Point(9, 9, 0), new Point(-9, 9, 0), new Point(0, 0, 3)),
                new Triangle(new Point(-9, 9, 0), new Point(-9, -9, 0), new Point(0, 0, 3))));
        // 2.9 m high in the west, 2.7 m in the east, 2.8 m over the peak; the ground at its corners is 1 m high
        List<Point> sloping =
                List.of(new Point(-6, -6, 2.9), new Point(6, -6, 2.7), new Point(6, 6, 2.7), new Point(-6, 6, 2.9));
        Burial burial = Burial.deepest(sloping, peak, 0.01).orElseThrow();
        // rounding alone
        assertEquals(0.2, burial.belowM(), 1e-12);
        assertEquals(0, burial.point().distanceM(new Point(0, 0, 2.8)), 1e-12);
    }
}
