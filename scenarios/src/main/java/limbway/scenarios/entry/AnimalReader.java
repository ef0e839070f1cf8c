package limbway.scenarios.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import limbway.model.body.Body;
import limbway.model.parameter.Parameter;
import limbway.model.parameter.Standing;
import limbway.model.study.Animal;
import limbway.scenarios.format.ListNode;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.format.Node;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Reads the entries under {@code animals}. */
public final class AnimalReader {

    /** Mass of a carried infant. */
    public static final Parameter INFANT_MASS = new Parameter(
            "body.infant.mass",
            "mass of an infant carried by its mother",
            "kg",
            5,
            1.6,
            7,
            Standing.ASSUMPTION,
            "within the range of wild infants, 1.6 to 7 kg (from memory)");

    private static final int MOST_ANIMALS = 200;

    private final Problems problems;
    private final Values values;
    private final Bodies bodies;

    /**
     * A reader of animals.
     *
     * @param bodies the bodies that a scenario may name
     * @param problems where mistakes go
     */
    public AnimalReader(Bodies bodies, Problems problems) {
        this.bodies = bodies;
        this.problems = problems;
        this.values = new Values(problems);
    }

    /**
     * Reads the group.
     *
     * @param node the list of animals
     * @return the animals with their ranks, or empty if a problem was added
     */
    public Optional<List<Animal>> read(Node node) {
        List<MappingNode> entries = values.mappings(node, "animals");
        Group group = new Group(problems);
        boolean sound = true;
        for (MappingNode entry : entries) {
            if (group.size() <= MOST_ANIMALS && !addTo(group, entry)) {
                group.leaveOut(entry);
                sound = false;
            }
        }
        if (group.size() > MOST_ANIMALS) {
            problems.add(Problem.at(node.place(), "there are too many animals")
                    .found("more than " + MOST_ANIMALS)
                    .allowed("at most " + MOST_ANIMALS));
        } else if (node instanceof ListNode list && list.items().isEmpty()) {
            problems.add(Problem.at(node.place(), "there are no animals")
                    .mend("add one, for example {name: Ana, body: adult female}"));
        }
        return group.checkLeaders() && sound ? Optional.of(group.ranked()) : Optional.empty();
    }

    private boolean addTo(Group group, MappingNode entry) {
        Fields fields = Fields.of(entry, Form.ANIMAL, problems);
        String bodyName = fields.oneOf("body", bodies.names(), bodies.names().get(0));
        OptionalDouble massKg = fields.number("mass", Quantity.MASS);
        boolean withInfant = fields.yesNo("with-infant").orElse(false);
        boolean known = fields.find("body")
                .filter(body -> body.shown().equals(Wording.quote(bodyName)))
                .isPresent();
        if (withInfant && known && !bodies.mothers().contains(bodyName)) {
            fields.fault(Problem.at(fields.find("with-infant").orElse(entry).place(), "only a mother carries an infant")
                    .found(Wording.quote(bodyName))
                    .allowed(Wording.list(bodies.mothers())));
        }
        int count = fields.count(Quantity.COUNT, 1);
        int rank = fields.count(Quantity.RANK, 0);
        if (rank > 0 && count > 1) {
            fields.fault(Problem.at(fields.find("rank").orElse(entry).place(), "several animals cannot share one rank")
                    .found(count + " animals")
                    .mend("write an entry for each, or leave the rank out"));
        }
        String name = fields.words("name", "what to call it", "");
        String follows = fields.words("follows", "the name of another animal", "");
        String own = fields.words("group", "a name of the group that it belongs to", "");
        Optional<Body> body = fields.build(() -> body(bodyName, massKg, withInfant));
        if (body.isEmpty()) {
            return false;
        }
        Animal first = new Animal(
                name.isEmpty() ? bodyName : name,
                body.get(),
                rank,
                Optional.of(follows).filter(leader -> !leader.isEmpty()),
                own);
        return group.add(entry, first, name.isEmpty() || count > 1, count);
    }

    private Body body(String name, OptionalDouble massKg, boolean withInfant) {
        Body body = bodies.find(name).orElseThrow();
        if (massKg.isPresent() && massKg.getAsDouble() != body.massKg()) {
            body = body.weighing(massKg.getAsDouble());
        }
        return withInfant ? body.carrying(INFANT_MASS.value()) : body;
    }

    /**
     * The figures that this reader assumed for a group.
     *
     * @param animals the group
     * @return the mass of an infant if one is carried
     */
    public static List<Parameter> assumed(List<Animal> animals) {
        List<Parameter> used = new ArrayList<>();
        if (animals.stream().anyMatch(animal -> animal.body().name().endsWith(" and infant"))) {
            used.add(INFANT_MASS);
        }
        return used;
    }
}
