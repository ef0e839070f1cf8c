package limbway.scenarios.entry;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;

import limbway.model.enclosure.OpenHours;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.format.Node;
import limbway.scenarios.format.ScalarNode;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;

/** Reads what keepers do with a place beside feeding: bedding, shutting, cleaning. */
public final class CareReader {

    private final Problems problems;
    private final TimesReader times;

    /**
     * A reader of rounds.
     *
     * @param problems where mistakes go
     */
    public CareReader(Problems problems) {
        this.problems = problems;
        this.times = new TimesReader(problems);
    }

    /**
     * Reads an entry that puts bedding out.
     *
     * @param node the entry
     * @return the rounds, or empty if a problem was added
     */
    public Optional<BeddingEntry> bedding(MappingNode node) {
        Fields fields = Fields.of(node, Form.BED, problems);
        ScalarNode resource = fields.placedWords("bed", "the name of a place to rest or sleep");
        Optional<List<LocalTime>> at = fields.read("at", value -> times.times(value, "time of " + fields.what()));
        boolean given = fields.find(Quantity.BEDDING.key()).isPresent();
        Optional<BeddingEntry> entry = entry(fields, resource, at, fields.share(Quantity.BEDDING));
        if (given && entry.isPresent() && entry.get().amount() == 0) {
            problems.add(Problem.at(
                            fields.find(Quantity.BEDDING.key()).map(Node::place).orElse(node.place()),
                            fields.what() + " puts out no bedding")
                    .found("0")
                    .allowed("above 0, at most 1")
                    .mend("take the entry out; bedding is taken out by {clean: ...}"));
            return Optional.empty();
        }
        return entry;
    }

    private static Optional<BeddingEntry> entry(
            Fields fields, ScalarNode resource, Optional<List<LocalTime>> at, double amount) {
        return fields.build(() -> new BeddingEntry(resource, at.orElseThrow(), amount));
    }

    /**
     * Reads an entry that shuts a place.
     *
     * @param node the entry
     * @param form {@link Form#CLOSE} or {@link Form#CLEAN}
     * @return the hours, or empty if a problem was added
     */
    public Optional<ClosureEntry> closure(MappingNode node, Form form) {
        Fields fields = Fields.of(node, form, problems);
        ScalarNode resource = fields.placedWords(form.word(), "the name of a place under resources");
        Optional<OpenHours> hours = times.hours(fields);
        return fields.build(() -> new ClosureEntry(resource, hours.orElseThrow(), form == Form.CLEAN));
    }
}
