package limbway.sim.experiment.statistics;

import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

import limbway.sim.chance.Chance;
import limbway.sim.chance.Purpose;
import limbway.sim.chance.Stream;

/**
 * Points spread over the ranges of several columns at once: with n points each column is cut into n equal strata, and every
 * stratum is hit exactly once.
 *
 * <p>Values are shares of a range, 0 to 1. Each column is keyed by seed, sample and its name: another column leaves the others
 * alone, and their order does not matter. Another number of points is another sample; nothing of it is kept.
 *
 * @source McKay, Beckman and Conover 1979, Technometrics 21:239-245, doi 10.1080/00401706.1979.10489755
 */
public final class LatinHypercube {

    /** Where in its stratum a value lies. */
    public enum Within {
        /** Anywhere, by chance: means over the points are then without bias. */
        RANDOM,
        /** In the middle. */
        CENTRED
    }

    private final List<String> columns;
    private final double[][] shares;

    private LatinHypercube(List<String> columns, double[][] shares) {
        this.columns = List.copyOf(columns);
        this.shares = shares;
    }

    /**
     * Draws points.
     *
     * @param seed master seed, 1 to 2147483647
     * @param sample which sample, 1 or more: samples of other numbers are independent of this one
     * @param columns names of the columns, at least one, each once
     * @param points number of points, 1 or more
     * @param within where in its stratum a value lies
     * @return the points
     * @throws IllegalArgumentException if there is no column, one stands twice, or there is no point
     */
    public static LatinHypercube draw(int seed, int sample, List<String> columns, int points, Within within) {
        if (columns.isEmpty() || columns.stream().distinct().count() < columns.size() || points < 1) {
            throw new IllegalArgumentException("Latin hypercube: columns = " + columns + ", points = " + points
                    + ", allowed one column or more, each once, and 1 point or more");
        }
        Chance chance = new Chance(seed, sample);
        double[][] shares = new double[points][columns.size()];
        for (int column = 0; column < columns.size(); column++) {
            Stream order = chance.stream(columns.get(column), Purpose.STRATUM);
            Stream place = chance.stream(columns.get(column), Purpose.STRATUM_POINT);
            List<Integer> strata = IntStream.range(0, points)
                    .boxed()
                    .sorted(Comparator.comparingDouble(order::uniform))
                    .toList();
            for (int point = 0; point < points; point++) {
                double inside = within == Within.CENTRED ? 0.5 : place.uniform(point);
                shares[point][column] = (strata.get(point) + inside) / points;
            }
        }
        return new LatinHypercube(columns, shares);
    }

    /**
     * The columns.
     *
     * @return their names, in the order given
     */
    public List<String> columns() {
        return columns;
    }

    /**
     * How many points there are.
     *
     * @return 1 or more
     */
    public int points() {
        return shares.length;
    }

    /**
     * A value.
     *
     * @param point number of the point, from 0
     * @param column number of the column, from 0
     * @return place in the range, 0 to 1
     */
    public double share(int point, int column) {
        return shares[point][column];
    }
}
