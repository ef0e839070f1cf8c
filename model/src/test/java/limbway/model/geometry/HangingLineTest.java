package limbway.model.geometry;

import java.util.List;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

@Tag("derived")
class HangingLineTest {

    /** Sums of a few numbers below 100. */
    private static final double ROUNDING = 1e-12;

    private static final Point WEST = new Point(2, 3, 6);
    private static final Point EAST = new Point(12, 3, 4);

    @Test
    void withoutSagItIsTheStraightLine() {
        assertEquals(List.of(WEST, EAST), HangingLine.between(WEST, EAST, 0).points());
    }

    @Test
    void theMiddleIsAPointOfTheLineAndHangsTheWholeSagLower() {
        Polyline rope = HangingLine.between(WEST, EAST, 0.5);
        int pieces = rope.points().size() - 1;
        // 10.2 m in pieces of half a metre, an even number of them: 2 * ceil(10.198 / 1)
        assertEquals(22, pieces);
        Point middle = rope.points().get(pieces / 2);
        assertEquals(7, middle.xM(), ROUNDING);
        assertEquals(5 - 0.5, middle.zM(), ROUNDING);
        assertEquals(WEST, rope.start());
        assertEquals(EAST, rope.end());
    }

    @Test
    void everyPointLiesOnTheParabola() {
        Polyline rope = HangingLine.between(WEST, EAST, 0.5);
        for (Point point : rope.points()) {
            double t = (point.xM() - 2) / 10;
            // y = y0 + (y1 - y0) t - 4 f t (1 - t)
            assertEquals(6 - 2 * t - 4 * 0.5 * t * (1 - t), point.zM(), ROUNDING);
            assertEquals(3, point.yM(), ROUNDING);
        }
    }

    @Test
    void itsLengthIsThatOfTheParabola() {
        // level span L with sag f: L (1 + 8/3 (f/L)^2 - 32/5 (f/L)^4 ...), textbook
        Polyline rope = HangingLine.between(new Point(0, 0, 5), new Point(10, 0, 5), 0.5);
        double series = 10 * (1 + 8.0 / 3 * 0.0025 - 32.0 / 5 * 0.00000625);
        // straight pieces are shorter by a part of their number squared: less than a millimetre here
        assertEquals(series, rope.lengthM(), 1e-3);
        assertTrue(rope.lengthM() < series);
    }

    @Test
    void fromTheOtherEndItIsTheSameLine() {
        List<Point> there = HangingLine.between(WEST, EAST, 0.5).points();
        List<Point> back = HangingLine.between(EAST, WEST, 0.5).points();
        for (int i = 0; i < there.size(); i++) {
            assertEquals(0, there.get(i).distanceM(back.get(back.size() - 1 - i)), ROUNDING);
        }
    }
}
