package limbway.sim.experiment.placement;

/** Which of several answers no other beats in everything. */
public final class Front {

    private Front() {}

    /**
     * The answers that are on the front.
     *
     * @param values by answer and aim; greater is better in each
     * @return for each answer whether no other is as good in every aim and better in one
     */
    public static boolean[] of(double[][] values) {
        boolean[] on = new boolean[values.length];
        for (int a = 0; a < values.length; a++) {
            on[a] = true;
            for (int b = 0; b < values.length; b++) {
                on[a] &= a == b || !dominates(values[b], values[a]);
            }
        }
        return on;
    }

    private static boolean dominates(double[] a, double[] b) {
        boolean better = false;
        for (int i = 0; i < a.length; i++) {
            if (a[i] < b[i]) {
                return false;
            }
            better |= a[i] > b[i];
        }
        return better;
    }
}
