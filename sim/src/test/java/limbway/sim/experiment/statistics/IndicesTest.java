package limbway.sim.experiment.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.ToDoubleFunction;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.sim.experiment.statistics.LatinHypercube.Within;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

class IndicesTest {

    private static final double A = 7;
    private static final double B = 0.1;
    private static final double[] G = {0, 1, 4.5, 9, 99, 99, 99, 99};

    /** sin x1 + 7 sin2 x2 + 0.1 x3^4 sin x1, each x even over -pi to pi. */
    private static double ishigami(double[] u) {
        double x1 = Math.PI * (2 * u[0] - 1);
        double x2 = Math.PI * (2 * u[1] - 1);
        double x3 = Math.PI * (2 * u[2] - 1);
        double s = StrictMath.sin(x1);
        return s + A * StrictMath.sin(x2) * StrictMath.sin(x2) + B * StrictMath.pow(x3, 4) * s;
    }

    private static double g(double[] u) {
        double product = 1;
        for (int i = 0; i < G.length; i++) {
            product *= (Math.abs(4 * u[i] - 2) + G[i]) / (1 + G[i]);
        }
        return product;
    }

    /** Ishigami and Homma 1990, doi 10.1109/ISUMA.1990.151285: the closed form, against the figures known for a = 7, b = 0.1. */
    private static double[][] ishigamiExact() {
        double pi4 = StrictMath.pow(Math.PI, 4);
        double v1 = (1 + B * pi4 / 5) * (1 + B * pi4 / 5) / 2;
        double v2 = A * A / 8;
        double v13 = B * B * pi4 * pi4 * (1.0 / 18 - 1.0 / 50);
        double v = v1 + v2 + v13;
        return new double[][] {{v}, {v1 / v, v2 / v, 0}, {(v1 + v13) / v, v2 / v, v13 / v}};
    }

    /** Each factor has mean 1 and variance c = 1/3/(1+a)^2; the variance of the product is the product of (1+c), less 1. */
    private static double[][] gExact() {
        double all = 1;
        double[] c = Arrays.stream(G).map(a -> 1 / (3 * (1 + a) * (1 + a))).toArray();
        for (double one : c) {
            all *= 1 + one;
        }
        double v = all - 1;
        double product = all;
        return new double[][] {
            {v},
            Arrays.stream(c).map(one -> one / v).toArray(),
            Arrays.stream(c).map(one -> one * product / (1 + one) / v).toArray()
        };
    }

    @Test
    @Tag("published")
    void closedFormsGiveThePublishedFigures() {
        double halfLastDigit = 5e-7;
        double[][] i = ishigamiExact();
        assertEquals(13.844588, i[0][0], halfLastDigit);
        assertArrayEquals(new double[] {0.313905, 0.442411, 0}, i[1], halfLastDigit);
        assertArrayEquals(new double[] {0.557589, 0.442411, 0.243684}, i[2], halfLastDigit);
        double[][] g = gExact();
        assertEquals(0.465424, g[0][0], halfLastDigit);
        double[] first = {0.716192, 0.179048, 0.023676, 0.007162, 0.0000716, 0.0000716, 0.0000716, 0.0000716};
        double[] total = {0.787144, 0.242198, 0.034317, 0.010460, 0.000105, 0.000105, 0.000105, 0.000105};
        assertArrayEquals(first, g[1], halfLastDigit);
        assertArrayEquals(total, g[2], halfLastDigit);
    }

    @Test
    @Tag("derived")
    void ishigamiFromTwoSamples() {
        // first: a mean of 20,000 products of a deviation and a step, each with a spread of 1 to 1.4 of that of the
        // answer, so
        // a standard error of about 1.5 / sqrt(20,000) = 0.011; for totals it is given; 4 of them
        SobolIndices found = sobol(IndicesTest::ishigami, 3, 20_000);
        double[][] exact = ishigamiExact();
        assertEquals(exact[0][0], found.variance(), 4 * exact[0][0] * 0.008);
        for (int i = 0; i < 3; i++) {
            assertEquals(exact[1][i], found.first().get(i), 0.045, "first " + i);
            assertEquals(
                    exact[2][i], found.total().get(i), 4 * found.totalErrors().get(i) + 0.01, "total " + i);
        }
    }

    @Test
    @Tag("derived")
    void sobolGFromTwoSamples() {
        SobolIndices found = sobol(IndicesTest::g, G.length, 20_000);
        double[][] exact = gExact();
        // the variance itself has a relative standard error of about 0.01 here, and the indices are divided by it
        assertEquals(exact[0][0], found.variance(), 0.04 * exact[0][0]);
        for (int i = 0; i < G.length; i++) {
            assertEquals(exact[1][i], found.first().get(i), 0.045, "first " + i);
            assertEquals(
                    exact[2][i],
                    found.total().get(i),
                    4 * found.totalErrors().get(i) + 0.04 * exact[2][i],
                    "total " + i);
        }
        assertTrue(found.totalErrors().get(0) < 0.02 && found.totalErrors().get(7) < 1e-5);
    }

    @Test
    @Tag("derived")
    void firstOrderFromGivenData() {
        // 20,000 points in 20 bins. What varies within a bin is lost: of sin x a share of about (pi/20)^2/3 = 0.008,
        // of sin2 x2 four times that, 0.033 of 0.442 = 0.015; chance adds at most 2 sqrt(S(1-S)/n) = 0.007, four times
        // 0.014
        double[][] points = points(1, 3, 20_000);
        double[] answer = answers(IndicesTest::ishigami, points);
        double[] exact = ishigamiExact()[1];
        for (int i = 0; i < 3; i++) {
            FirstOrder found = FirstOrder.of(column(points, i), answer, 20, FirstOrder.floor(20_000, 20, 3));
            assertEquals(exact[i], found.index(), 0.03, "input " + i);
            assertEquals(i < 2, found.isAboveFloor());
        }
    }

    @Test
    @Tag("derived")
    void anInputWithoutEffectHasIndexZeroOnAverageAndPassesTheFloorAsOftenAsSaid() {
        int samples = 1000;
        int inputs = 10;
        double floor = FirstOrder.floor(60, 5, inputs);
        double sum = 0;
        int alarms = 0;
        for (int sample = 1; sample <= samples; sample++) {
            double[][] points = points(sample, inputs + 1, 60);
            double[] answer = answers(u -> normal(u[inputs]), points);
            boolean any = false;
            for (int i = 0; i < inputs; i++) {
                FirstOrder found = FirstOrder.of(column(points, i), answer, 5, floor);
                sum += found.index() / inputs / samples;
                any |= found.isAboveFloor();
            }
            alarms += any ? 1 : 0;
        }
        // eta squared of 5 bins and 60 points has standard deviation 0.047; over 10,000 indices 0.0005; four of them
        assertEquals(0, sum, 0.002);
        // 5 % of 1,000 has a standard deviation of 0.7 points, and a little fewer as Bonferroni's bound is an upper
        // one; four of them
        assertEquals(0.0489, (double) alarms / samples, 0.028);
    }

    @Test
    void nothingToDivideIsNoIndex() {
        double[] same = {1, 1, 1, 1};
        assertEquals(0, FirstOrder.of(new double[] {1, 2, 3, 4}, same, 2, 0).index());
        assertEquals(
                List.of(0.0), SobolIndices.of(same, same, new double[][] {same}).total());
        assertThrows(IllegalArgumentException.class, () -> FirstOrder.of(same, same, 4, 0));
        assertThrows(
                IllegalArgumentException.class, () -> SobolIndices.of(same, new double[] {1}, new double[][] {same}));
    }

    private static SobolIndices sobol(ToDoubleFunction<double[]> model, int inputs, int n) {
        double[][] a = points(1, inputs, n);
        double[][] b = points(2, inputs, n);
        double[][] mixed = new double[inputs][];
        for (int i = 0; i < inputs; i++) {
            double[][] points = new double[n][];
            for (int p = 0; p < n; p++) {
                points[p] = a[p].clone();
                points[p][i] = b[p][i];
            }
            mixed[i] = answers(model, points);
        }
        return SobolIndices.of(answers(model, a), answers(model, b), mixed);
    }

    private static double[][] points(int sample, int inputs, int n) {
        List<String> names = new ArrayList<>();
        for (int i = 0; i < inputs; i++) {
            names.add("x" + i);
        }
        LatinHypercube drawn = LatinHypercube.draw(5, sample, names, n, Within.RANDOM);
        double[][] points = new double[n][inputs];
        for (int p = 0; p < n; p++) {
            for (int i = 0; i < inputs; i++) {
                points[p][i] = drawn.share(p, i);
            }
        }
        return points;
    }

    private static double[] answers(ToDoubleFunction<double[]> model, double[][] points) {
        return Arrays.stream(points).mapToDouble(model).toArray();
    }

    private static double[] column(double[][] points, int i) {
        return Arrays.stream(points).mapToDouble(p -> p[i]).toArray();
    }

    private static double normal(double u) {
        return new org.apache.commons.math3.distribution.NormalDistribution(null, 0, 1).inverseCumulativeProbability(u);
    }
}
