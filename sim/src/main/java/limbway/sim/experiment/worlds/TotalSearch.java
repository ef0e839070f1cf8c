package limbway.sim.experiment.worlds;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.BooleanSupplier;

import limbway.sim.experiment.screening.Factor;
import limbway.sim.experiment.statistics.LatinHypercube;
import limbway.sim.experiment.statistics.LatinHypercube.Within;
import limbway.sim.experiment.statistics.SobolIndices;

/** Total indices of few inputs, from two samples of points and, for each input, one sample mixed from both. */
final class TotalSearch {

    private static final int SAMPLE_A = 2;
    private static final int SAMPLE_B = 3;

    private final List<Factor> inputs;
    private final int points;
    private final LatinHypercube a;
    private final LatinHypercube b;

    TotalSearch(List<Factor> inputs, int points, int seed) {
        List<String> names =
                inputs.stream().map(input -> input.parameter().name()).toList();
        this.inputs = inputs;
        this.points = points;
        this.a = LatinHypercube.draw(seed, SAMPLE_A, names, points, Within.RANDOM);
        this.b = LatinHypercube.draw(seed, SAMPLE_B, names, points, Within.RANDOM);
    }

    /** How many worlds it takes. */
    int count() {
        return points * (inputs.size() + 2);
    }

    /** Values of one of these worlds: first those of A, then those of B, then A with one input after the other from B. */
    Map<String, Double> values(int number) {
        int sample = number / points;
        int point = number % points;
        Map<String, Double> values = new LinkedHashMap<>();
        for (int i = 0; i < inputs.size(); i++) {
            boolean fromB = sample == 1 || sample - 2 == i;
            Factor input = inputs.get(i);
            values.put(input.parameter().name(), input.at((fromB ? b : a).share(point, i)));
        }
        return values;
    }

    /** Lives in one of them, always under the same chance. */
    Optional<Optional<World>> live(WorldModel model, int number, int replications, BooleanSupplier stop) {
        Map<String, Double> values = values(number);
        WorldModel.Lived lived = model.live(values, 1, replications, stop);
        if (lived instanceof WorldModel.Lived.Values found) {
            return Optional.of(Optional.of(new World(number + 1, values, found.values())));
        }
        return lived instanceof WorldModel.Lived.GivenUp ? Optional.empty() : Optional.of(Optional.empty());
    }

    /** The indices; points with a world that the model refuses, or that gives no difference, are left out. */
    List<TotalEffect> effects(List<Optional<World>> worlds, int first, int second, int criterion) {
        List<double[]> rows = new ArrayList<>();
        for (int point = 0; point < points; point++) {
            double[] row = new double[inputs.size() + 2];
            for (int sample = 0; sample < row.length; sample++) {
                OptionalDouble found = worlds.get(sample * points + point)
                        .map(world -> world.difference(first, second, criterion))
                        .orElse(OptionalDouble.empty());
                row[sample] = found.orElse(Double.NaN);
            }
            if (java.util.Arrays.stream(row).allMatch(Double::isFinite)) {
                rows.add(row);
            }
        }
        if (rows.size() < 2) {
            return List.of();
        }
        double[][] mixed = new double[inputs.size()][];
        for (int i = 0; i < mixed.length; i++) {
            mixed[i] = column(rows, i + 2);
        }
        SobolIndices found = SobolIndices.of(column(rows, 0), column(rows, 1), mixed);
        List<TotalEffect> effects = new ArrayList<>();
        for (int i = 0; i < inputs.size(); i++) {
            effects.add(new TotalEffect(
                    inputs.get(i),
                    found.first().get(i),
                    found.total().get(i),
                    found.totalErrors().get(i),
                    rows.size()));
        }
        return effects;
    }

    private static double[] column(List<double[]> rows, int number) {
        return rows.stream().mapToDouble(row -> row[number]).toArray();
    }
}
