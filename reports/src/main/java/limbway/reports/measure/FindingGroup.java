package limbway.reports.measure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * Findings that say the same of several bodies or places, to be told in one line.
 *
 * @param findings one or more, of one kind and weight: each of the places for each of the bodies
 * @param places names of the places, each once
 * @param bodies names of the bodies, each once; empty where it is all of them
 */
public record FindingGroup(List<Finding> findings, List<String> places, List<String> bodies) {

    private record SamePlace(String kind, Weight weight, String shared, String place) {}

    private record SameBodies(String kind, Weight weight, String shared, List<String> bodies) {}

    /** Keeps copies of the lists. */
    public FindingGroup {
        findings = List.copyOf(findings);
        places = List.copyOf(places);
        bodies = List.copyOf(bodies);
    }

    /**
     * Puts together what says the same.
     *
     * @param findings findings in any order
     * @return groups in the order of their first findings; each finding is in one group
     */
    public static List<FindingGroup> of(List<Finding> findings) {
        Map<SamePlace, List<Finding>> byPlace = new LinkedHashMap<>();
        for (Finding finding : findings) {
            SamePlace key = new SamePlace(finding.kind(), finding.weight(), finding.shared(), finding.place());
            byPlace.computeIfAbsent(key, k -> new ArrayList<>()).add(finding);
        }
        Map<SameBodies, List<Finding>> byBodies = new LinkedHashMap<>();
        byPlace.forEach((key, same) -> byBodies.computeIfAbsent(
                        new SameBodies(key.kind, key.weight, key.shared, bodies(same)), k -> new ArrayList<>())
                .addAll(same));
        List<FindingGroup> groups = new ArrayList<>();
        byBodies.forEach((key, same) -> {
            Set<String> places = new LinkedHashSet<>();
            same.forEach(finding -> places.add(finding.place()));
            groups.add(new FindingGroup(same, new ArrayList<>(places), key.bodies));
        });
        return groups;
    }

    /**
     * What was found, for all of the bodies and places together.
     *
     * @param everyBody how many bodies the group of animals has
     * @return a sentence without a full stop
     */
    public String text(int everyBody) {
        Finding one = strictest();
        if (one.shared().equals(one.text())) {
            return one.text();
        }
        String who = bodies.isEmpty() || bodies.size() == everyBody ? "every animal" : String.join(", ", bodies);
        String limit = one.limit()
                .map(least -> " (" + (bodies.size() > 1 ? one.body() + " " : "") + least.words()
                        + (bodies.size() > 1 ? ", others no less)" : ")"))
                .orElse("");
        return String.join(", ", places) + ", for " + who + ": " + one.shared() + limit;
    }

    /**
     * The finding of the body that can do least; what helps it helps the others.
     *
     * @return one of the findings
     */
    public Finding strictest() {
        return findings.stream()
                .min(Comparator.comparingDouble(
                        finding -> finding.limit().map(Finding.Limit::metres).orElse(Double.POSITIVE_INFINITY)))
                .orElseThrow();
    }

    private static List<String> bodies(List<Finding> findings) {
        Set<String> bodies = new LinkedHashSet<>();
        findings.stream().map(Finding::body).filter(body -> !body.isEmpty()).forEach(bodies::add);
        return new ArrayList<>(bodies);
    }
}
