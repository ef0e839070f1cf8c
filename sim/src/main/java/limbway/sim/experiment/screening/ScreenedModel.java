package limbway.sim.experiment.screening;

import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;

/** Something with numbers that may be doubted, and answers. Used by one thread at a time. */
@FunctionalInterface
public interface ScreenedModel {

    /**
     * The answers for some values. The same values give the same answers.
     *
     * @param values values by the names of parameters
     * @param stop asked now and then; true to give up
     * @return the answers, as many at every call, not a number where there is none; empty if it was given up
     */
    Optional<double[]> answers(Map<String, Double> values, BooleanSupplier stop);

    /**
     * The values that are used if some are wanted: whole numbers are rounded.
     *
     * @param wanted values by the names of parameters
     * @return values by the names of parameters
     * @throws IllegalArgumentException if the model does not work with them together
     */
    default Map<String, Double> used(Map<String, Double> wanted) {
        return wanted;
    }
}
