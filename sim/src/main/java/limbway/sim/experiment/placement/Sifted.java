package limbway.sim.experiment.placement;

import java.util.EnumMap;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What the rules leave of some candidates, and which of them contradict each other.
 *
 * @param broken the rules that each candidate breaks, in the order of the candidates
 */
public record Sifted(List<Set<PlacingRule>> broken) {

    /** Keeps a copy of the list. */
    public Sifted {
        broken = List.copyOf(broken);
    }

    /**
     * How many candidates some rules leave.
     *
     * @param of the rules
     * @return number of candidates that break none of them
     */
    public int left(Set<PlacingRule> of) {
        return (int) broken.stream()
                .filter(set -> set.stream().noneMatch(of::contains))
                .count();
    }

    /**
     * The fewest rules that together leave too few.
     *
     * @param count how many candidates are needed
     * @return one rule, or two, or all that were broken; empty if enough are left
     */
    public Set<PlacingRule> contradiction(int count) {
        Set<PlacingRule> all = EnumSet.noneOf(PlacingRule.class);
        broken.forEach(all::addAll);
        if (left(all) >= count) {
            return Set.of();
        }
        for (PlacingRule one : all) {
            if (left(EnumSet.of(one)) < count) {
                return EnumSet.of(one);
            }
        }
        for (PlacingRule one : all) {
            for (PlacingRule other : all) {
                if (left(EnumSet.of(one, other)) < count) {
                    return EnumSet.of(one, other);
                }
            }
        }
        return all;
    }

    /**
     * How many candidates each rule leaves out, counting those that break several each time.
     *
     * @return rules that leave out any
     */
    public Map<PlacingRule, Integer> out() {
        Map<PlacingRule, Integer> counts = new EnumMap<>(PlacingRule.class);
        broken.forEach(set -> set.forEach(rule -> counts.merge(rule, 1, Integer::sum)));
        return counts;
    }
}
