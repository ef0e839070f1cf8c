package limbway.reports.patterns;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleBinaryOperator;

/** What is measured: one number for each replication, in their order; none where there was nothing to measure. */
@FunctionalInterface
interface Measurement {

    List<Double> of(Lives lives);

    /** This less another, replication by replication: they share their chance. */
    default Measurement minus(Measurement other) {
        return with(other, (a, b) -> a - b);
    }

    /** This over another, replication by replication. */
    default Measurement over(Measurement other) {
        return with(other, (a, b) -> a / b);
    }

    private Measurement with(Measurement other, DoubleBinaryOperator operator) {
        return lives -> {
            List<Double> mine = of(lives);
            List<Double> theirs = other.of(lives);
            List<Double> found = new ArrayList<>();
            for (int i = 0; i < Math.min(mine.size(), theirs.size()); i++) {
                found.add(operator.applyAsDouble(mine.get(i), theirs.get(i)));
            }
            return found;
        };
    }
}
