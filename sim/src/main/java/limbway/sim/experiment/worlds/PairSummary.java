package limbway.sim.experiment.worlds;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import limbway.sim.experiment.screening.Factor;
import limbway.sim.experiment.statistics.FirstOrder;
import limbway.sim.experiment.statistics.ShareInterval;

/** Sums up what two layouts did in all worlds. */
final class PairSummary {

    private PairSummary() {}

    /** The summary, or nothing where too few worlds give a difference. */
    static Optional<PairFound> of(List<Factor> inputs, List<World> worlds, int a, int b, int criterion) {
        List<World> told = worlds.stream()
                .filter(world -> world.difference(a, b, criterion).isPresent())
                .toList();
        if (told.size() < WorldSettings.FEWEST) {
            return Optional.empty();
        }
        double[] differences = told.stream()
                .mapToDouble(world -> world.difference(a, b, criterion).orElseThrow())
                .toArray();
        int more = 0;
        int less = 0;
        double sum = 0;
        for (double difference : differences) {
            more += difference > 0 ? 1 : 0;
            less += difference < 0 ? 1 : 0;
            sum += difference;
        }
        int n = differences.length;
        return Optional.of(new PairFound(
                a,
                b,
                criterion,
                more,
                less,
                n - more - less,
                ShareInterval.wilson(more, n),
                sum / n,
                quantiles(differences),
                chanceShare(told, a, b, criterion, differences, sum / n),
                effects(inputs, told, differences),
                List.of()));
    }

    private static List<InputEffect> effects(List<Factor> inputs, List<World> worlds, double[] differences) {
        List<InputEffect> effects = new ArrayList<>();
        int n = differences.length;
        double floor = FirstOrder.floor(n, FirstOrder.binsFor(n), inputs.size());
        for (Factor input : inputs) {
            double[] shares = worlds.stream()
                    .mapToDouble(world ->
                            input.shareOf(world.values().get(input.parameter().name())))
                    .toArray();
            effects.add(InputEffect.of(input, shares, differences, floor));
        }
        effects.sort(Comparator.comparingDouble(
                        (InputEffect effect) -> effect.index().index())
                .reversed());
        return effects;
    }

    private static List<Double> quantiles(double[] differences) {
        double[] sorted = differences.clone();
        java.util.Arrays.sort(sorted);
        List<Double> quantiles = new ArrayList<>();
        for (double at : PairFound.AT) {
            double place = at * (sorted.length - 1);
            int below = (int) place;
            int above = Math.min(below + 1, sorted.length - 1);
            quantiles.add(sorted[below] + (place - below) * (sorted[above] - sorted[below]));
        }
        return quantiles;
    }

    private static OptionalDouble chanceShare(
            List<World> worlds, int a, int b, int criterion, double[] differences, double mean) {
        double chance = 0;
        double all = 0;
        for (int i = 0; i < differences.length; i++) {
            OptionalDouble one = worlds.get(i).found().chanceVariance(a, b, criterion);
            if (one.isEmpty()) {
                return OptionalDouble.empty();
            }
            chance += one.getAsDouble() / differences.length;
            all += (differences[i] - mean) * (differences[i] - mean) / (differences.length - 1);
        }
        return all > 0 ? OptionalDouble.of(Math.min(1, chance / all)) : OptionalDouble.empty();
    }
}
