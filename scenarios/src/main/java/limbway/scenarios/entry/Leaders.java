package limbway.scenarios.entry;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import limbway.model.study.Animal;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.format.Node;
import limbway.scenarios.format.ScalarNode;
import limbway.scenarios.problem.Place;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Checks that everybody follows an animal that there is, in its own group, and nobody in a ring. */
final class Leaders {

    private final Problems problems;
    private final Map<String, Place> places = new LinkedHashMap<>();
    private final Set<String> leftOut = new LinkedHashSet<>();

    Leaders(Problems problems) {
        this.problems = problems;
    }

    /** Notes an entry that could not be read: who follows its animals is told nothing. */
    void leaveOut(MappingNode entry) {
        entry.find("name")
                .or(() -> entry.find("body"))
                .filter(ScalarNode.class::isInstance)
                .ifPresent(node -> leftOut.add(((ScalarNode) node).text().strip()));
    }

    /** Notes where an animal says whom it follows. */
    void note(String name, MappingNode entry) {
        entry.find("follows").map(Node::place).ifPresent(place -> places.putIfAbsent(name, place));
    }

    /** Whether nothing is wrong; otherwise problems are added. */
    boolean check(List<Animal> animals) {
        Map<String, Animal> byName = new LinkedHashMap<>();
        animals.forEach(animal -> byName.putIfAbsent(animal.name(), animal));
        boolean sound = true;
        Set<String> told = new LinkedHashSet<>();
        for (Animal animal : byName.values()) {
            sound &= animal.follows().isEmpty() || check(animal, byName, told);
        }
        return sound;
    }

    private boolean check(Animal animal, Map<String, Animal> byName, Set<String> told) {
        String name = animal.follows().orElseThrow();
        Place place = places.get(animal.name());
        String who = Wording.quote(animal.name());
        Animal leader = byName.get(name);
        if (leader == null) {
            if (leftOut.stream().noneMatch(stem -> name.equals(stem) || name.startsWith(stem + " "))) {
                problems.add(Problem.at(place, who + " follows an unknown animal " + Wording.quote(name))
                        .allowed(Wording.list(byName.keySet()))
                        .mend(problems.didYouMean(name, byName.keySet(), "take the name of another animal")));
            }
            return false;
        }
        if (!leader.group().equals(animal.group())) {
            problems.add(Problem.at(place, who + " follows an animal of another group")
                    .found(who + " is of " + groupOf(animal) + ", " + Wording.quote(name) + " of " + groupOf(leader))
                    .mend("give both the same group, or let it follow nobody"));
            return false;
        }
        List<String> ring = ring(animal, byName);
        if (!ring.isEmpty() && ring.stream().noneMatch(told::contains)) {
            told.addAll(ring);
            String headline = ring.size() == 1 ? who + " follows itself" : "animals follow one another in a ring";
            problems.add(Problem.at(place, headline)
                    .found(String.join(", ", ring) + " and again " + ring.get(0))
                    .mend("let one of them follow nobody"));
        }
        return ring.isEmpty();
    }

    private static String groupOf(Animal animal) {
        return animal.group().isEmpty() ? "the group without a name" : "group " + Wording.quote(animal.group());
    }

    /** The ring in which an animal goes, itself first; empty if it goes in none. */
    private static List<String> ring(Animal start, Map<String, Animal> byName) {
        List<String> passed = new ArrayList<>();
        Animal next = start;
        while (next != null && passed.size() <= byName.size()) {
            passed.add(next.name());
            next = next.follows().map(byName::get).orElse(null);
            if (start.equals(next)) {
                return passed;
            }
        }
        return List.of();
    }
}
