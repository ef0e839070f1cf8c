package limbway.reports.measure.criterion;

import java.util.OptionalDouble;

/**
 * Spread of participation over zones of unequal size: 0 where each zone is used as much as its size lets expect, towards 1
 * where the smallest zone alone is used.
 *
 * <p>It says nothing of which zone is preferred; using a larger zone alone gives less than 1, and cutting a zone in two
 * changes it. It is compared only over the same zones.
 */
public final class SpreadIndex {

    private SpreadIndex() {}

    /**
     * The index.
     *
     * @param used time or counts in each zone, each 0 or more
     * @param size size of each zone in any one unit, each 0 or more; a zone without size counts for nothing and must not
     *     be used
     * @return 0 to 1; empty if nothing was used, or only one zone has a size
     * @throws IllegalArgumentException if a zone without size was used, or a number is below 0 or not finite
     * @source modified spread of participation index, Σ|fo − fe| / (2 (N − least fe)): Plowman 2003, Applied Animal
     *     Behaviour Science 83:331-336, doi 10.1016/S0168-1591(03)00142-4
     * @validity zones that the animals can get to, the same in all that is compared
     */
    public static OptionalDouble of(double[] used, double[] size) {
        ZoneChecks.require(used, size);
        double n = ZoneChecks.sum(used);
        double whole = ZoneChecks.sum(size);
        if (!(n > 0) || !(whole > 0)) {
            return OptionalDouble.empty();
        }
        double away = 0;
        double least = Double.POSITIVE_INFINITY;
        int zones = 0;
        for (int zone = 0; zone < used.length; zone++) {
            if (size[zone] > 0) {
                double expected = n * size[zone] / whole;
                away += Math.abs(used[zone] - expected);
                least = Math.min(least, expected);
                zones++;
            }
        }
        return zones < 2 ? OptionalDouble.empty() : OptionalDouble.of(away / (2 * (n - least)));
    }
}
