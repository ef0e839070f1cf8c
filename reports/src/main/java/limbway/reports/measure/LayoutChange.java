package limbway.reports.measure;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import limbway.model.body.Body;

/**
 * The trip whose use of the ground differs most between two layouts.
 *
 * @param body who travels
 * @param from name of the resource where it starts
 * @param to name of the resource where it ends
 * @param before its use of the ground in the first layout, if there is any
 * @param after its use of the ground in the second, if there is any
 */
public record LayoutChange(Body body, String from, String to, Optional<PairUse> before, Optional<PairUse> after) {

    private record Key(Body body, String from, String to) {}

    /**
     * Finds the trip with the greatest change.
     *
     * @param first measures of one layout
     * @param second measures of another
     * @return the trip, or empty where neither uses the ground
     */
    public static Optional<LayoutChange> greatest(Measures first, Measures second) {
        Map<Key, PairUse> before = byKey(first);
        Map<Key, PairUse> after = byKey(second);
        Set<Key> keys = new LinkedHashSet<>(before.keySet());
        keys.addAll(after.keySet());
        LayoutChange greatest = null;
        for (Key key : keys) {
            LayoutChange change = new LayoutChange(
                    key.body,
                    key.from,
                    key.to,
                    Optional.ofNullable(before.get(key)),
                    Optional.ofNullable(after.get(key)));
            if (greatest == null || Math.abs(change.differenceM()) > Math.abs(greatest.differenceM())) {
                greatest = change;
            }
        }
        return Optional.ofNullable(greatest);
    }

    /**
     * Metres on the ground in the first layout.
     *
     * @return metres a day, 0 or more
     */
    public double beforeM() {
        return before.map(use -> use.groundMPerDay().mean()).orElse(0.0);
    }

    /**
     * Metres on the ground in the second layout.
     *
     * @return metres a day, 0 or more
     */
    public double afterM() {
        return after.map(use -> use.groundMPerDay().mean()).orElse(0.0);
    }

    /**
     * What the second layout adds.
     *
     * @return metres on the ground a day, negative where there are fewer
     */
    public double differenceM() {
        return afterM() - beforeM();
    }

    private static Map<Key, PairUse> byKey(Measures measures) {
        Map<Key, PairUse> map = new LinkedHashMap<>();
        measures.groundUse().forEach(use -> map.put(new Key(use.body(), use.from(), use.to()), use));
        return map;
    }
}
