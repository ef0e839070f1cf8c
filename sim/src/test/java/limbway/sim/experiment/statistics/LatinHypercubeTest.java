package limbway.sim.experiment.statistics;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.sim.experiment.statistics.LatinHypercube.Within;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

class LatinHypercubeTest {

    private static final List<String> COLUMNS = List.of("one", "two", "three", "four", "five");

    @Test
    void everyStratumOfEveryColumnIsHitExactlyOnce() {
        for (int points : new int[] {1, 2, 7, 200, 1000}) {
            for (Within within : Within.values()) {
                LatinHypercube drawn = LatinHypercube.draw(42, 1, COLUMNS, points, within);
                for (int column = 0; column < COLUMNS.size(); column++) {
                    int[] hits = new int[points];
                    for (int point = 0; point < points; point++) {
                        double share = drawn.share(point, column);
                        assertTrue(share > 0 && share < 1, () -> "share = " + share);
                        hits[(int) Math.floor(share * points)]++;
                    }
                    int[] once = new int[points];
                    Arrays.fill(once, 1);
                    assertArrayEquals(once, hits, within + ", " + points + " points, column " + column);
                }
            }
        }
    }

    @Test
    @Tag("derived")
    void aSumOverThePointsHasFarLessChanceThanFromIndependentPoints() {
        // McKay and others 1979: for a sum of functions of one column each, only what varies within a stratum is left.
        // f = sum of 5 columns: independent points give variance 5/12/n; here each column leaves 1/12/n^3
        int points = 20;
        int samples = 400;
        double squares = 0;
        for (int sample = 1; sample <= samples; sample++) {
            LatinHypercube drawn = LatinHypercube.draw(3, sample, COLUMNS, points, Within.RANDOM);
            double mean = 0;
            for (int point = 0; point < points; point++) {
                for (int column = 0; column < COLUMNS.size(); column++) {
                    mean += drawn.share(point, column) / points;
                }
            }
            squares += (mean - 2.5) * (mean - 2.5) / samples;
        }
        double expected = 5.0 / 12 / Math.pow(points, 3);
        // a variance from 400 samples of a nearly normal mean has a relative standard error of sqrt(2/400) = 0.071; 4
        // of them
        assertEquals(expected, squares, 0.28 * expected);
    }

    @Test
    @Tag("derived")
    void columnsAreNotCorrelated() {
        // correlation of two independent orders of n has variance 1/(n-1); over 10 pairs of 500 points: 5 standard
        // errors
        int points = 500;
        LatinHypercube drawn = LatinHypercube.draw(11, 1, COLUMNS, points, Within.CENTRED);
        double variance = (1 - 1.0 / points / points) / 12;
        for (int a = 0; a < COLUMNS.size(); a++) {
            for (int b = a + 1; b < COLUMNS.size(); b++) {
                double sum = 0;
                for (int point = 0; point < points; point++) {
                    sum += (drawn.share(point, a) - 0.5) * (drawn.share(point, b) - 0.5);
                }
                assertEquals(0, sum / points / variance, 5 / Math.sqrt(points - 1));
            }
        }
    }

    @Test
    void aColumnIsTheSameWhateverOtherColumnsThereAre() {
        LatinHypercube all = LatinHypercube.draw(42, 1, COLUMNS, 50, Within.RANDOM);
        LatinHypercube some = LatinHypercube.draw(42, 1, List.of("five", "two"), 50, Within.RANDOM);
        assertArrayEquals(column(all, 4), column(some, 0));
        assertArrayEquals(column(all, 1), column(some, 1));
        assertEquals(List.of("five", "two"), some.columns());
        assertEquals(50, some.points());
    }

    @Test
    void otherSeedsAndOtherSamplesAreOtherPoints() {
        double[] first = column(LatinHypercube.draw(42, 1, COLUMNS, 50, Within.CENTRED), 0);
        double[] seed = column(LatinHypercube.draw(43, 1, COLUMNS, 50, Within.CENTRED), 0);
        double[] sample = column(LatinHypercube.draw(42, 2, COLUMNS, 50, Within.CENTRED), 0);
        assertNotEquals(Arrays.toString(first), Arrays.toString(seed));
        assertNotEquals(Arrays.toString(first), Arrays.toString(sample));
    }

    @Test
    void nothingToDrawIsRefused() {
        IllegalArgumentException twice = assertThrows(
                IllegalArgumentException.class,
                () -> LatinHypercube.draw(1, 1, List.of("one", "one"), 5, Within.RANDOM));
        assertEquals(
                "Latin hypercube: columns = [one, one], points = 5, allowed one column or more, each once, and 1 point or more",
                twice.getMessage());
        assertThrows(IllegalArgumentException.class, () -> LatinHypercube.draw(1, 1, List.of(), 5, Within.RANDOM));
        assertThrows(IllegalArgumentException.class, () -> LatinHypercube.draw(1, 1, COLUMNS, 0, Within.RANDOM));
    }

    private static double[] column(LatinHypercube drawn, int column) {
        return IntStream.range(0, drawn.points())
                .mapToDouble(point -> drawn.share(point, column))
                .toArray();
    }
}
