package limbway.model.link;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import limbway.model.body.Body;
import limbway.model.enclosure.Enclosure;

/**
 * All links that keep within the limits.
 *
 * @param all links in the order of their ties
 * @param ties number of places to which something could be tied
 * @param highestTieM height above the ground of the highest of them [m]; 0 without any
 * @param pairs number of pairs of places looked at
 * @param tooWeak supports and decks that are known not to bear the heaviest animal, whose places do not count
 * @param refused how many pairs each limit removed; each pair is counted under the first limit that it breaks
 */
public record Candidates(
        List<Candidate> all, int ties, double highestTieM, int pairs, int tooWeak, Map<Limit, Integer> refused) {

    /** Keeps copies. */
    public Candidates {
        all = List.copyOf(all);
        Map<Limit, Integer> copy = new EnumMap<>(Limit.class);
        copy.putAll(refused);
        refused = Collections.unmodifiableMap(copy);
    }

    /**
     * No links, where none are asked for.
     *
     * @return nothing looked at
     */
    public static Candidates none() {
        return new Candidates(List.of(), 0, 0, 0, 0, Map.of());
    }

    /**
     * How many places there are to which something could be tied; every pair of them would be looked at.
     *
     * @param enclosure what stands there
     * @param bodies who lives there, at least one
     * @param limits what may be tied where
     * @return 0 or more
     */
    public static int places(Enclosure enclosure, List<Body> bodies, LinkLimits limits) {
        return Ties.of(enclosure, limits, heaviestKg(bodies)).found().size();
    }

    private static double heaviestKg(List<Body> bodies) {
        return bodies.stream().mapToDouble(Body::massKg).max().orElseThrow();
    }

    /**
     * Looks at every pair of places.
     *
     * @param enclosure what stands there
     * @param bodies who lives there, at least one
     * @param limits what may be tied where
     * @return what is left, and what removed the rest
     */
    public static Candidates of(Enclosure enclosure, List<Body> bodies, LinkLimits limits) {
        Ties ties = Ties.of(enclosure, limits, heaviestKg(bodies));
        Fit fit = new Fit(enclosure, bodies, limits);
        List<Candidate> all = new ArrayList<>();
        Map<Limit, Integer> refused = new EnumMap<>(Limit.class);
        for (Limit limit : Limit.values()) {
            refused.put(limit, 0);
        }
        List<Tie> found = ties.found();
        for (int i = 0; i < found.size(); i++) {
            for (int j = i + 1; j < found.size(); j++) {
                Candidate candidate = new Candidate(limits.kind(), found.get(i), found.get(j), limits.diameterM());
                Optional<Limit> broken = fit.firstBroken(candidate);
                if (broken.isPresent()) {
                    refused.merge(broken.get(), 1, Integer::sum);
                } else {
                    all.add(candidate);
                }
            }
        }
        double highestM = found.stream()
                .mapToDouble(tie -> tie.at().zM()
                        - enclosure
                                .ground()
                                .terrain()
                                .heightM(tie.at().xM(), tie.at().yM()))
                .max()
                .orElse(0);
        int pairs = found.size() * (found.size() - 1) / 2;
        return new Candidates(all, found.size(), highestM, pairs, ties.tooWeak(), refused);
    }
}
