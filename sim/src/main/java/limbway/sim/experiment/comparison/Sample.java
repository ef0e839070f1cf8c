package limbway.sim.experiment.comparison;

import java.util.ArrayList;
import java.util.List;

/** Values by layout, criterion and replication; not a number where a replication gives none. */
public final class Sample {

    private final double[][][] byLayout;

    /**
     * Keeps what trials gave.
     *
     * @param byLayout for each layout the values by replication and criterion; as many replications of each layout
     * @throws IllegalArgumentException if layouts differ in their number of replications
     */
    public Sample(List<double[][]> byLayout) {
        this.byLayout = byLayout.toArray(double[][][]::new);
        for (double[][] layout : this.byLayout) {
            if (layout.length != this.byLayout[0].length) {
                throw new IllegalArgumentException("sample: replications of a layout = " + layout.length + ", allowed "
                        + this.byLayout[0].length + " as of the first");
            }
        }
    }

    /** This sample with the replications of another one after its own. */
    Sample followedBy(Sample next) {
        List<double[][]> all = new ArrayList<>();
        for (int layout = 0; layout < byLayout.length; layout++) {
            double[][] values = new double[replications() + next.replications()][];
            System.arraycopy(byLayout[layout], 0, values, 0, replications());
            System.arraycopy(next.byLayout[layout], 0, values, replications(), next.replications());
            all.add(values);
        }
        return new Sample(all);
    }

    /**
     * How many layouts there are.
     *
     * @return 0 or more
     */
    public int layouts() {
        return byLayout.length;
    }

    /**
     * How many replications each layout has.
     *
     * @return 0 or more
     */
    public int replications() {
        return byLayout.length == 0 ? 0 : byLayout[0].length;
    }

    /**
     * The values of one criterion in one layout.
     *
     * @param layout number of the layout, from 0
     * @param criterion number of the criterion, from 0
     * @return one value for each replication, in their order
     */
    public double[] of(int layout, int criterion) {
        double[] values = new double[replications()];
        for (int r = 0; r < values.length; r++) {
            values[r] = byLayout[layout][r][criterion];
        }
        return values;
    }
}
