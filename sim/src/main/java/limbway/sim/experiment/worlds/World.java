package limbway.sim.experiment.worlds;

import java.util.Map;
import java.util.OptionalDouble;

/**
 * One plausible world and what came of it.
 *
 * @param number which of the worlds drawn, from 1
 * @param values values of all inputs by their names
 * @param found values of all layouts
 */
public record World(int number, Map<String, Double> values, ByLayout found) {

    /**
     * How much more one layout has than another.
     *
     * @param a number of a layout
     * @param b number of the layout that is taken off
     * @param criterion number of the criterion
     * @return mean over the replications that give both; empty if none does
     */
    public OptionalDouble difference(int a, int b, int criterion) {
        return found.difference(a, b, criterion);
    }
}
