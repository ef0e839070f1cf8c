package limbway.scenarios.entry;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.scenarios.format.ListNode;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.format.Node;
import limbway.scenarios.format.ScalarNode;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;

/** Reads the entries under {@code keepers}. */
public final class FeedingReader {

    private static final String ALLOWED = "00:00 to 23:59, one or a list";

    private final Problems problems;
    private final Values values;

    /**
     * A reader of feedings.
     *
     * @param problems where mistakes go
     */
    public FeedingReader(Problems problems) {
        this.problems = problems;
        this.values = new Values(problems);
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
        Optional<List<LocalTime>> times = fields.read("at", value -> times(value, "time of " + fields.what()));
        double energyKj = fields.number(Quantity.ENERGY);
        return fields.build(() -> new FeedingEntry(resource, times.orElseThrow(), energyKj));
    }

    private Optional<List<LocalTime>> times(Node node, String what) {
        List<Node> items = node instanceof ListNode list ? list.items() : List.of(node);
        if (items.isEmpty()) {
            problems.add(Problem.at(node.place(), what + " holds no time").allowed(ALLOWED));
            return Optional.empty();
        }
        List<LocalTime> times = new ArrayList<>();
        for (Node item : items) {
            Optional<LocalTime> time = values.words(item, what, ALLOWED).flatMap(text -> time(item, text, what));
            if (time.isPresent() && times.contains(time.get())) {
                problems.add(
                        Problem.at(item.place(), what + " says a time twice").found(item.shown()));
                return Optional.empty();
            }
            time.ifPresent(times::add);
        }
        return times.size() == items.size() ? Optional.of(times) : Optional.empty();
    }

    private Optional<LocalTime> time(Node node, String text, String what) {
        Optional<LocalTime> time = Clock.time(text);
        if (time.isEmpty()) {
            problems.add(Problem.at(node.place(), what + " is no time of the day")
                    .found(node.shown())
                    .allowed(ALLOWED)
                    .mend("write hours and minutes, for example \"08:30\""));
        }
        return time;
    }
}
