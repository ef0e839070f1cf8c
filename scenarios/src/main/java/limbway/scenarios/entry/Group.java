package limbway.scenarios.entry;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

import limbway.model.study.Animal;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.format.Node;
import limbway.scenarios.problem.Place;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Names and ranks the animals of a scenario as they are read. */
final class Group {

    private final Problems problems;
    private final List<Animal> animals = new ArrayList<>();
    private final Map<String, Place> names = new LinkedHashMap<>();
    private final Map<String, Integer> numbers = new TreeMap<>();
    private final Map<Integer, Place> ranks = new TreeMap<>();
    private final Leaders leaders;

    Group(Problems problems) {
        this.problems = problems;
        this.leaders = new Leaders(problems);
    }

    /** Notes an entry that could not be read. */
    void leaveOut(MappingNode entry) {
        leaders.leaveOut(entry);
    }

    /** Whether everybody follows somebody that can be followed; otherwise problems are added. */
    boolean checkLeaders() {
        return leaders.check(animals);
    }

    int size() {
        return animals.size();
    }

    /** Adds so many animals like the one given, under numbers if wanted; rank 0 means: to be decided. */
    boolean add(MappingNode entry, Animal like, boolean numbered, int count) {
        boolean sound = true;
        int rank = like.rank();
        if (rank > 0) {
            Place place = entry.find("rank").map(Node::place).orElse(entry.place());
            Place earlier = ranks.putIfAbsent(rank, place);
            if (earlier != null) {
                problems.add(Problem.at(place, "two animals have rank " + rank)
                        .found("the first is at " + earlier)
                        .mend("give each animal a rank of its own"));
                sound = false;
            }
        }
        for (int i = 1; i <= count; i++) {
            String stem = like.name();
            String full = numbered ? stem + " " + numbers.merge(stem, 1, Integer::sum) : stem;
            Place place = entry.find("name").map(Node::place).orElse(entry.place());
            Place earlier = names.putIfAbsent(full, place);
            if (earlier != null) {
                problems.add(Problem.at(place, "two animals are called " + Wording.quote(full))
                        .found("the first is at " + earlier)
                        .mend("give each animal a name of its own"));
                sound = false;
            }
            leaders.note(full, entry);
            animals.add(new Animal(full, like.body(), rank, like.follows(), like.group()));
        }
        return sound;
    }

    /** The animals in file order; those without a rank take the free ones, the heavier first. */
    List<Animal> ranked() {
        List<Integer> byMass = new ArrayList<>();
        for (int i = 0; i < animals.size(); i++) {
            if (animals.get(i).rank() == 0) {
                byMass.add(i);
            }
        }
        byMass.sort(Comparator.comparingDouble(i -> -animals.get(i).body().massKg()));
        List<Animal> ranked = new ArrayList<>(animals);
        int next = 1;
        for (int i : byMass) {
            while (ranks.containsKey(next)) {
                next++;
            }
            Animal animal = animals.get(i);
            ranked.set(i, new Animal(animal.name(), animal.body(), next++, animal.follows(), animal.group()));
        }
        return ranked;
    }
}
