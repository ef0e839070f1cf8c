package limbway.reports.measure.criterion;

import java.util.OptionalDouble;

/**
 * How much a zone is preferred to the mean zone: below 0 avoided, above 0 preferred.
 *
 * <p>With n zones it runs from -1 to (n - 1) / (n + 1), for two zones 1/3, and never to +1. A zone used exactly as its size
 * lets expect need not have 0, because it is compared with the mean of the others' use for their size.
 */
public final class Electivity {

    private Electivity() {}

    /**
     * The index of one zone.
     *
     * @param used time or counts in each zone, each 0 or more
     * @param size size of each zone in any one unit, each 0 or more; a zone without size counts for nothing and must not
     *     be used
     * @param zone which one
     * @return -1 to (n - 1) / (n + 1); empty if nothing was used, the zone has no size or is the only one
     * @throws IllegalArgumentException if a zone without size was used, or a number is below 0 or not finite
     * @source relativized electivity E*, (W − 1/n) / (W + 1/n) with W = (r/p) / Σ(r/p): Vanderploeg and Scavia 1979,
     *     Ecological Modelling 7:135-149, doi 10.1016/0304-3800(79)90004-8 (from memory)
     * @validity zones that the animals can get to, the same in all that is compared
     */
    public static OptionalDouble of(double[] used, double[] size, int zone) {
        ZoneChecks.require(used, size);
        double selected = 0;
        int zones = 0;
        for (int other = 0; other < used.length; other++) {
            if (size[other] > 0) {
                selected += used[other] / size[other];
                zones++;
            }
        }
        if (zones < 2 || !(size[zone] > 0) || !(selected > 0)) {
            return OptionalDouble.empty();
        }
        double share = used[zone] / size[zone] / selected;
        return OptionalDouble.of((share - 1.0 / zones) / (share + 1.0 / zones));
    }
}
