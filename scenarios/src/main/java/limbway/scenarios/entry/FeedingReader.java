package limbway.scenarios.entry;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.Stream;

import limbway.model.parameter.Parameter;
import limbway.model.parameter.Standing;
import limbway.model.study.Feeding;
import limbway.model.study.FeedingMethod;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.format.ScalarNode;
import limbway.scenarios.problem.Problems;

/** Reads the feedings under {@code keepers}. */
public final class FeedingReader {

    /** Work that a portion costs where the scenario does not say how much. */
    public static final Parameter USUAL_HANDLING = new Parameter(
            "keepers.handling",
            "work that a portion from a puzzle costs where the scenario does not say",
            "min",
            2,
            0.5,
            10,
            Standing.ASSUMPTION,
            "no source; devices differ, and animals learn them: measure yours");

    private static final List<String> METHODS =
            Stream.of(FeedingMethod.values()).map(FeedingMethod::word).toList();
    private static final String HANDLING = Quantity.HANDLING.key();

    private final Problems problems;
    private final TimesReader times;

    /**
     * A reader of feedings.
     *
     * @param problems where mistakes go
     */
    public FeedingReader(Problems problems) {
        this.problems = problems;
        this.times = new TimesReader(problems);
    }

    /**
     * Reads one entry.
     *
     * @param node the entry
     * @return the feedings, or empty if a problem was added
     */
    public Optional<FeedingEntry> read(MappingNode node) {
        Fields fields = Fields.of(node, Form.FEED, problems);
        ScalarNode resource = fields.placedWords("feed", "the name of a food place");
        Optional<List<LocalTime>> at = fields.read("at", value -> times.times(value, "time of " + fields.what()));
        double energyKj = fields.number(Quantity.ENERGY);
        FeedingMethod method = method(fields);
        OptionalDouble handlingMin = fields.number(HANDLING, Quantity.HANDLING);
        if (method != FeedingMethod.PUZZLE) {
            fields.refuse(List.of(HANDLING), "unless it says given: puzzle");
        }
        double usedMin = method == FeedingMethod.PUZZLE ? handlingMin.orElse(USUAL_HANDLING.value()) : 0;
        return fields.build(() -> new FeedingEntry(resource, at.orElseThrow(), energyKj, method, usedMin));
    }

    private static FeedingMethod method(Fields fields) {
        String word = fields.oneOf("given", METHODS, FeedingMethod.HEAP.word());
        return FeedingMethod.values()[METHODS.indexOf(word)];
    }

    /**
     * The figures that this reader assumed.
     *
     * @param feedings what is put out in all layouts
     * @return the work of a puzzle if one takes as much as usual
     */
    public static List<Parameter> assumed(List<Feeding> feedings) {
        boolean used = feedings.stream()
                .anyMatch(feeding ->
                        feeding.method() == FeedingMethod.PUZZLE && feeding.handlingMin() == USUAL_HANDLING.value());
        return used ? List.of(USUAL_HANDLING) : List.of();
    }
}
