package limbway.sim.experiment.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Systems whose sums are compared after each replication, and which of them are still in it. */
final class Elimination {

    private final int systems;
    private final int firstStage;
    private final double indifference;
    private final double h2;
    private final double[][] known;
    private final double[] sum;
    private final int[] replications;
    private final double[][] differenceVariance;
    private List<Integer> left = new ArrayList<>();
    private int done;

    Elimination(int systems, int firstStage, double indifference, double h2) {
        this.systems = systems;
        this.firstStage = firstStage;
        this.indifference = indifference;
        this.h2 = h2;
        known = new double[systems][0];
        sum = new double[systems];
        replications = new int[systems];
        differenceVariance = new double[systems][systems];
        for (int i = 0; i < systems; i++) {
            left.add(i);
        }
    }

    void begin() {
        for (int i = 0; i < systems; i++) {
            for (int l = 0; l < i; l++) {
                differenceVariance[i][l] = variance(known[i], known[l]);
                differenceVariance[l][i] = differenceVariance[i][l];
            }
            for (int r = 0; r < firstStage; r++) {
                sum[i] += known[i][r];
            }
            replications[i] = firstStage;
        }
        done = firstStage;
        screen();
    }

    private double variance(double[] a, double[] b) {
        double mean = 0;
        for (int r = 0; r < firstStage; r++) {
            mean += (a[r] - b[r]) / firstStage;
        }
        double squares = 0;
        for (int r = 0; r < firstStage; r++) {
            double off = a[r] - b[r] - mean;
            squares += off * off;
        }
        return squares / (firstStage - 1);
    }

    /** Systems still in it, in order. */
    List<Integer> left() {
        return left;
    }

    /** Replications that were judged of those still in it. */
    int done() {
        return done;
    }

    /** Whether the next replication of a system is not known yet. */
    boolean needsMore(int system) {
        return known[system].length == done;
    }

    void append(int system, double[] more) {
        double[] all = Arrays.copyOf(known[system], done + more.length);
        System.arraycopy(more, 0, all, done, more.length);
        known[system] = all;
    }

    void step() {
        for (int i : left) {
            sum[i] += known[i][done];
            replications[i]++;
        }
        done++;
        screen();
    }

    private void screen() {
        List<Integer> still = new ArrayList<>();
        for (int i : left) {
            boolean keeps = true;
            for (int l : left) {
                keeps &= i == l || sum[i] >= sum[l] - allowance(i, l);
            }
            if (keeps) {
                still.add(i);
            }
        }
        left = still;
    }

    private double allowance(int i, int l) {
        double room = h2 * differenceVariance[i][l] / (indifference * indifference) - done;
        return Math.max(0, indifference / 2 * room);
    }

    int used() {
        return Arrays.stream(replications).sum();
    }

    /** After so many replications nothing is allowed for any more. */
    int atMost() {
        double most = 0;
        for (int i : left) {
            for (int l : left) {
                most = Math.max(most, h2 * differenceVariance[i][l] / (indifference * indifference));
            }
        }
        return Math.max(firstStage, (int) Math.min(Integer.MAX_VALUE - 1.0, Math.floor(most)) + 1);
    }

    boolean isOver() {
        return left.size() == 1 || done >= atMost();
    }

    KimNelson.Selected selected() {
        int best = left.get(0);
        for (int i : left) {
            if (sum[i] > sum[best]) {
                best = i;
            }
        }
        List<Integer> counts = Arrays.stream(replications).boxed().toList();
        return new KimNelson.Selected(best, left, isOver(), counts, left.size() == 1 ? done : atMost());
    }
}
