package limbway.reports.measure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import limbway.sim.experiment.statistics.Interval;
import limbway.sim.journal.Journal;

/** How much the share of travel off the ground differs between two layouts that were lived in under the same chance. */
public final class LayoutDifference {

    private LayoutDifference() {}

    /**
     * The second layout less the first, replication by replication.
     *
     * @param first measures of one layout
     * @param second measures of another, run with the same settings
     * @param aspect what travel is counted by
     * @return difference of the shares, -1 to 1, with the interval of the paired differences; empty if there is no
     *     replication in which somebody travelled in both layouts
     */
    public static Optional<Interval> of(Measures first, Measures second, Aspect aspect) {
        Map<Integer, Journal> others = new LinkedHashMap<>();
        second.outcome().journals().forEach(journal -> others.put(journal.replication(), journal));
        List<Double> differences = new ArrayList<>();
        for (Journal journal : first.outcome().journals()) {
            Journal other = others.get(journal.replication());
            if (other != null) {
                OptionalDouble before = OffGroundShare.of(journal, trip -> true, aspect);
                OptionalDouble after = OffGroundShare.of(other, trip -> true, aspect);
                if (before.isPresent() && after.isPresent()) {
                    differences.add(after.getAsDouble() - before.getAsDouble());
                }
            }
        }
        return Interval.of(differences);
    }
}
