package limbway.sim.experiment.statistics;

import java.util.Optional;
import java.util.OptionalDouble;

import org.apache.commons.math3.distribution.TDistribution;

/**
 * How much more one thing gives than another, from repetitions under the same chance.
 *
 * @param mean mean of the first less the second
 * @param halfWidth half the width of the 95 % interval of Student's t, 0 or more; 0 if all differences are alike
 * @param p chance of a mean so far from 0 if there were no difference, 0 to 1; 1 if every difference is exactly 0, and 0 if
 *     all are alike but not 0
 * @param n pairs of repetitions, 2 or more
 * @param spread standard deviation of the differences, 0 or more
 * @param correlation correlation of the two over the repetitions, -1 to 1; empty if one of them never varies
 * @source Student 1908, Biometrika 6:1-25, doi 10.1093/biomet/6.1.1; quantiles by Apache Commons Math
 * @validity repetitions are independent of each other and differences roughly normal, or repetitions many
 */
public record PairedDifference(
        double mean, double halfWidth, double p, int n, double spread, OptionalDouble correlation) {

    private static final double UPPER_TAIL = 0.975;

    /**
     * The difference of two things.
     *
     * @param first values by repetition; not a number where there is none
     * @param second values of the same repetitions
     * @return the first less the second over those repetitions in which both have a value; empty if these are fewer than two
     * @throws IllegalArgumentException if there are not as many values of one as of the other
     */
    public static Optional<PairedDifference> of(double[] first, double[] second) {
        if (first.length != second.length) {
            throw new IllegalArgumentException(
                    "paired difference: second values = " + second.length + ", allowed " + first.length);
        }
        int n = 0;
        double sumA = 0;
        double sumB = 0;
        double sum = 0;
        double least = Double.POSITIVE_INFINITY;
        double greatest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < first.length; i++) {
            if (Double.isFinite(first[i]) && Double.isFinite(second[i])) {
                n++;
                sumA += first[i];
                sumB += second[i];
                sum += first[i] - second[i];
                least = Math.min(least, first[i] - second[i]);
                greatest = Math.max(greatest, first[i] - second[i]);
            }
        }
        if (n < 2) {
            return Optional.empty();
        }
        double squaresA = 0;
        double squaresB = 0;
        double products = 0;
        double squares = 0;
        for (int i = 0; i < first.length; i++) {
            if (Double.isFinite(first[i]) && Double.isFinite(second[i])) {
                double a = first[i] - sumA / n;
                double b = second[i] - sumB / n;
                double d = first[i] - second[i] - sum / n;
                squaresA += a * a;
                squaresB += b * b;
                products += a * b;
                squares += d * d;
            }
        }
        // where all are alike, rounding of their mean must not look like a spread
        double mean = least == greatest ? least : sum / n;
        double spread = least == greatest ? 0 : Math.sqrt(squares / (n - 1));
        double error = spread / Math.sqrt(n);
        TDistribution student = new TDistribution(null, n - 1);
        return Optional.of(new PairedDifference(
                mean,
                student.inverseCumulativeProbability(UPPER_TAIL) * error,
                p(mean, error, student),
                n,
                spread,
                squaresA > 0 && squaresB > 0
                        ? OptionalDouble.of(clip(products / Math.sqrt(squaresA * squaresB)))
                        : OptionalDouble.empty()));
    }

    private static double p(double mean, double error, TDistribution student) {
        if (error == 0) {
            return mean == 0 ? 1 : 0;
        }
        return Math.min(1, 2 * student.cumulativeProbability(-Math.abs(mean) / error));
    }

    private static double clip(double correlation) {
        return Math.max(-1, Math.min(1, correlation));
    }

    /**
     * Lower end of the interval.
     *
     * @return mean less half the width
     */
    public double lo() {
        return mean - halfWidth;
    }

    /**
     * Upper end of the interval.
     *
     * @return mean plus half the width
     */
    public double hi() {
        return mean + halfWidth;
    }
}
