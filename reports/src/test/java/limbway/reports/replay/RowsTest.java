package limbway.reports.replay;

import java.util.List;

import com.fasterxml.jackson.databind.node.TextNode;
import org.junit.jupiter.api.Test;

import limbway.model.geometry.Point;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

class RowsTest {

    private static double[] read(String row) {
        return RowsRead.of(new TextNode(row));
    }

    @Test
    void numbersComeInTheNarrowestTypeThatHoldsThem() {
        assertEquals("u8:AQ==", Rows.unsigned(new long[] {1}));
        assertEquals("u16:AAE=", Rows.unsigned(new long[] {256}));
        assertEquals("u32:AAABAA==", Rows.unsigned(new long[] {65_536}));
        assertArrayEquals(new double[] {0, 4_294_967_295.0}, read(Rows.unsigned(new long[] {0, 4_294_967_295L})));
        assertArrayEquals(new double[] {-32_768, 32_767}, read(Rows.i16(new int[] {-32_768, 32_767})));
        assertArrayEquals(new double[] {-127, 127}, read(Rows.i8(new int[] {-127, 127})));
        assertArrayEquals(new double[] {0.5, -2}, read(Rows.f32(new double[] {0.5, -2})));
    }

    @Test
    void whatDoesNotFitIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> Rows.unsigned(new long[] {-1}));
        assertThrows(IllegalArgumentException.class, () -> Rows.unsigned(new long[] {1L << 32}));
        assertThrows(IllegalArgumentException.class, () -> Rows.i16(new int[] {32_768}));
        assertThrows(IllegalArgumentException.class, () -> Rows.i8(new int[] {-129}));
    }

    @Test
    void theGridGetsCoarserWithTheSizeOfTheLayoutAndStillHoldsItsCorners() {
        double[] widthsM = {30, 131, 132, 700, 2_000};
        double[] stepsM = {0.002, 0.002, 0.005, 0.02, 0.05};
        for (int i = 0; i < widthsM.length; i++) {
            List<Point> corners = List.of(new Point(-7, 3, 0), new Point(widthsM[i] - 7, 8, 5));
            PlaceGrid grid = PlaceGrid.around(List.of(), corners);
            assertEquals(stepsM[i], grid.stepM(), 1e-12, "width " + widthsM[i]);
            assertTrue(Rows.i16(grid.steps(corners)).startsWith("i16:"));
        }
    }
}
