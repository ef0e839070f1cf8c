package limbway.sim.experiment.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.sim.chance.Chance;
import limbway.sim.chance.Purpose;
import limbway.sim.experiment.statistics.Bootstrap;
import limbway.sim.experiment.statistics.Holm;
import limbway.sim.experiment.statistics.PairedDifference;
import limbway.sim.experiment.statistics.Repeats;
import limbway.sim.experiment.statistics.StoppingRule;
import limbway.sim.experiment.trial.Criterion;

/** Computes the differences of every pair of layouts in every criterion. */
final class Differences {

    private final List<String> layouts;
    private final List<Criterion> criteria;
    private final Sample sample;
    private final StoppingRule rule;

    Differences(List<String> layouts, List<Criterion> criteria, Sample sample, StoppingRule rule) {
        this.layouts = layouts;
        this.criteria = criteria;
        this.sample = sample;
        this.rule = rule;
    }

    /** Without medians and ratios, which take longer. */
    List<Difference> plain() {
        List<Difference> all = new ArrayList<>();
        for (int criterion = 0; criterion < criteria.size(); criterion++) {
            all.addAll(corrected(pairs(criterion)));
        }
        return all;
    }

    /** With medians and ratios. */
    List<Difference> full(int seed) {
        return plain().stream().map(difference -> resampled(difference, seed)).toList();
    }

    private List<Difference> pairs(int criterion) {
        List<Difference> pairs = new ArrayList<>();
        for (int a = 0; a < layouts.size(); a++) {
            for (int b = a + 1; b < layouts.size(); b++) {
                double[] first = sample.of(a, criterion);
                double[] second = sample.of(b, criterion);
                Optional<PairedDifference> paired = PairedDifference.of(first, second);
                if (paired.isPresent()) {
                    double target = criteria.get(criterion).isShare()
                            ? rule.targetOfShare()
                            : rule.targetOfAmount((size(first) + size(second)) / 2);
                    pairs.add(new Difference(
                            a,
                            b,
                            criterion,
                            paired.get(),
                            paired.get().p(),
                            target,
                            Optional.empty(),
                            Optional.empty()));
                }
            }
        }
        return pairs;
    }

    /** Mean size, whatever the sign: what an amount that may be negative is related to. */
    private static double size(double[] values) {
        double sum = 0;
        int n = 0;
        for (double value : values) {
            if (Double.isFinite(value)) {
                sum += Math.abs(value);
                n++;
            }
        }
        return n == 0 ? 0 : sum / n;
    }

    private static List<Difference> corrected(List<Difference> pairs) {
        double[] adjusted =
                Holm.adjusted(pairs.stream().mapToDouble(Difference::pHolm).toArray());
        List<Difference> all = new ArrayList<>();
        for (int i = 0; i < adjusted.length; i++) {
            Difference d = pairs.get(i);
            all.add(new Difference(
                    d.a(), d.b(), d.criterion(), d.paired(), adjusted[i], d.targetHalfWidth(), d.median(), d.ratio()));
        }
        return all;
    }

    private Difference resampled(Difference d, int seed) {
        double[] first = new double[d.paired().n()];
        double[] second = new double[d.paired().n()];
        double[] difference = new double[d.paired().n()];
        double[] allFirst = sample.of(d.a(), d.criterion());
        double[] allSecond = sample.of(d.b(), d.criterion());
        int n = 0;
        boolean positive = !criteria.get(d.criterion()).isShare();
        for (int r = 0; r < allFirst.length; r++) {
            if (Double.isFinite(allFirst[r]) && Double.isFinite(allSecond[r])) {
                first[n] = allFirst[r];
                second[n] = allSecond[r];
                difference[n] = allFirst[r] - allSecond[r];
                n++;
                positive &= allFirst[r] > 0 && allSecond[r] > 0;
            }
        }
        String key = criteria.get(d.criterion()).name() + ": " + layouts.get(d.a()) + " - " + layouts.get(d.b());
        Bootstrap bootstrap =
                new Bootstrap(new Chance(seed, 1).stream(key, Purpose.RESAMPLING), Bootstrap.LEAST_RESAMPLES);
        return new Difference(
                d.a(),
                d.b(),
                d.criterion(),
                d.paired(),
                d.pHolm(),
                d.targetHalfWidth(),
                bootstrap.of(n, chosen -> Repeats.median(difference, chosen)),
                positive
                        ? bootstrap.of(n, chosen -> Repeats.mean(first, chosen) / Repeats.mean(second, chosen))
                        : Optional.empty());
    }
}
