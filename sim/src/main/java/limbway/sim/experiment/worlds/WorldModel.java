package limbway.sim.experiment.worlds;

import java.util.Map;
import java.util.function.BooleanSupplier;

/** Layouts that can be lived in under any values of the inputs. Asked by several threads. */
public interface WorldModel {

    /** What came of living in all layouts. */
    sealed interface Lived {

        /**
         * All went well.
         *
         * @param values what came of it
         */
        record Values(ByLayout values) implements Lived {}

        /**
         * The model does not work with these values.
         *
         * @param why what it says
         */
        record Refused(String why) implements Lived {}

        /** It was given up. */
        record GivenUp() implements Lived {}
    }

    /**
     * Lives in all layouts under the same chance.
     *
     * @param values values by the names of the inputs; inputs without a value are as assumed
     * @param first number of the first replication, 1 or more: the same number is the same chance
     * @param count replications, 1 or more
     * @param stop asked now and then; true to give up
     * @return what came of it; the same for the same values and replications
     */
    Lived live(Map<String, Double> values, int first, int count, BooleanSupplier stop);
}
