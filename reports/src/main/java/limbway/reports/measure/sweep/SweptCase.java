package limbway.reports.measure.sweep;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.sim.experiment.statistics.Interval;

/** One layout at one point, with the value of each criterion in each replication. */
public final class SweptCase {

    private final int point;
    private final String layout;
    private final List<String> values;
    private final List<Double> positions;
    private final double[][] byReplication;

    /**
     * What came out.
     *
     * @param point number of the point, from 1
     * @param layout name of the layout
     * @param values value of each factor as it is written
     * @param positions of each factor the number of its value, from 0, or the share of its range
     * @param byReplication {@code [replication][criterion]}, not a number where there is none
     */
    public SweptCase(int point, String layout, List<String> values, List<Double> positions, double[][] byReplication) {
        this.point = point;
        this.layout = layout;
        this.values = List.copyOf(values);
        this.positions = List.copyOf(positions);
        this.byReplication = byReplication.clone();
    }

    /**
     * The mean over points that differ in what nobody can choose.
     *
     * @param cases one case or more, in the same layout
     * @param values value of each factor, those that nobody can choose in words
     * @return a case with the number of the first; where any has no value, there is none
     */
    static SweptCase mean(List<SweptCase> cases, List<String> values) {
        SweptCase first = cases.get(0);
        double[][] sums = new double[first.replications()][];
        for (int r = 0; r < sums.length; r++) {
            sums[r] = new double[first.byReplication[r].length];
            for (int c = 0; c < sums[r].length; c++) {
                for (SweptCase one : cases) {
                    sums[r][c] += one.byReplication[r][c];
                }
                sums[r][c] /= cases.size();
            }
        }
        return new SweptCase(first.point, first.layout, values, first.positions, sums);
    }

    /**
     * Number of the point.
     *
     * @return 1 or more
     */
    public int point() {
        return point;
    }

    /**
     * Name of the layout.
     *
     * @return as in the scenario
     */
    public String layout() {
        return layout;
    }

    /**
     * Value of each factor.
     *
     * @return as it is written in the scenario
     */
    public List<String> values() {
        return values;
    }

    double position(int factor) {
        return positions.get(factor);
    }

    int replications() {
        return byReplication.length;
    }

    double value(int replication, int criterion) {
        return byReplication[replication][criterion];
    }

    /**
     * A criterion over all replications.
     *
     * @param criterion number of the criterion
     * @return mean and interval; empty where no replication gave a value
     */
    public Optional<Interval> of(int criterion) {
        List<Double> found = new ArrayList<>();
        for (double[] values : byReplication) {
            if (!Double.isNaN(values[criterion])) {
                found.add(values[criterion]);
            }
        }
        return Interval.of(found);
    }

    /**
     * How much more of a criterion there is here than in another case, under the same chance.
     *
     * @param other another case
     * @param criterion number of the criterion
     * @return mean and interval of the differences by replication; empty where none has both values
     */
    public Optional<Interval> lessThat(SweptCase other, int criterion) {
        List<Double> differences = new ArrayList<>();
        for (int r = 0; r < Math.min(replications(), other.replications()); r++) {
            double difference = value(r, criterion) - other.value(r, criterion);
            if (!Double.isNaN(difference)) {
                differences.add(difference);
            }
        }
        return Interval.of(differences);
    }
}
