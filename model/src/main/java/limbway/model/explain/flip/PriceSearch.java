package limbway.model.explain.flip;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import limbway.model.energy.EnergySettings;
import limbway.model.graph.RouteGraph;
import limbway.model.parameter.Parameter;

/** Looks for assumed costs on which the answer hangs: one number at a time, the layout as it is. */
final class PriceSearch {

    /** The multipliers of ways of moving are looked at so far beyond their range. */
    private static final double FARTHEST_FACTOR = 4;

    private static final String MULTIPLIER = "-multiplier";
    private static final int SCANNED = 4;
    private static final double STEP = 0.01;
    private static final double FINE_STEP = 0.001;

    private final TripQuestion question;
    private final RouteGraph graph;
    private final int from;
    private final int to;
    private final TripCost now;
    private final boolean nowOff;

    PriceSearch(TripQuestion question, TripTrees trees) {
        this.question = question;
        this.graph = trees.graph();
        this.from = graph.resourceNumber(question.from());
        this.to = graph.resourceNumber(question.to());
        this.now = trees.now();
        this.nowOff = now.isOffGround();
    }

    /** Every cost that can turn the answer, the least change first. */
    List<PriceTurn> find() {
        List<PriceTurn> found = new ArrayList<>();
        for (Parameter parameter : question.energy().parameters()) {
            find(parameter).ifPresent(found::add);
        }
        found.sort(Comparator.comparingDouble((PriceTurn turn) -> turn.isPlausible() ? 0 : 1)
                .thenComparingDouble(turn -> Math.abs(StrictMath.log(turn.factor())))
                .thenComparing(turn -> turn.parameter().name()));
        return found;
    }

    private Optional<PriceTurn> find(Parameter parameter) {
        double value = parameter.value();
        if (!(value > 0)) {
            return Optional.empty();
        }
        boolean multiplier = parameter.name().endsWith(MULTIPLIER);
        // nothing costs less than walking the same distance on the ground
        double low = multiplier ? Math.min(value, 1) : Math.max(parameter.low(), value / FARTHEST_FACTOR);
        double high = multiplier ? value * FARTHEST_FACTOR : parameter.high();
        Optional<Double> down = towards(parameter, low);
        Optional<Double> up = towards(parameter, high);
        return nearer(value, down, up).map(turnsAt -> new PriceTurn(parameter, turnsAt, !nowOff));
    }

    private static Optional<Double> nearer(double value, Optional<Double> down, Optional<Double> up) {
        if (down.isEmpty() || up.isEmpty()) {
            return down.or(() -> up);
        }
        return value / down.get() <= up.get() / value ? down : up;
    }

    /** The nearest value on one side at which the answer is another. */
    private Optional<Double> towards(Parameter parameter, double end) {
        double value = parameter.value();
        if (end == value || costs(parameter, end).equals(Optional.of(now))) {
            return Optional.empty();
        }
        double same = value;
        for (int i = 1; i <= SCANNED; i++) {
            double tried = value * StrictMath.pow(end / value, (double) i / SCANNED);
            if (turns(parameter, tried)) {
                return Optional.of(narrowed(parameter, same, tried));
            }
            same = tried;
        }
        return Optional.empty();
    }

    private double narrowed(Parameter parameter, double sameAt, double turnsAt) {
        double same = sameAt;
        double turned = turnsAt;
        double step = turnsAt < 1 ? FINE_STEP : STEP;
        while (Math.abs(turned - same) > step / 4) {
            double middle = (same + turned) / 2;
            if (turns(parameter, middle)) {
                turned = middle;
            } else {
                same = middle;
            }
        }
        double steps = turned / step;
        double rounded = (turned < parameter.value() ? Math.floor(steps) : Math.ceil(steps)) / Math.rint(1 / step);
        return turns(parameter, rounded) ? rounded : turned;
    }

    private boolean turns(Parameter parameter, double value) {
        return costs(parameter, value).map(cost -> cost.isOffGround() != nowOff).orElse(false);
    }

    /** Costs with one number changed; empty where the model refuses the number. */
    private Optional<TripCost> costs(Parameter parameter, double value) {
        try {
            EnergySettings prices = question.energy().with(Map.of(parameter.name(), value));
            return Optional.of(TripCost.of(graph, question.costs(graph, prices), question.sharpness(), from, to));
        } catch (IllegalArgumentException | ArithmeticException e) {
            return Optional.empty();
        }
    }
}
