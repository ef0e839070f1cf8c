package limbway.scenarios.entry;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.model.enclosure.OpenHours;
import limbway.scenarios.format.ListNode;
import limbway.scenarios.format.Node;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;

/** Reads times of the day, and hours from one time to another. */
final class TimesReader {

    private static final String ALLOWED = "00:00 to 23:59";
    private static final String MEND = "write hours and minutes, for example \"08:30\"";

    private final Problems problems;
    private final Values values;

    TimesReader(Problems problems) {
        this.problems = problems;
        this.values = new Values(problems);
    }

    /** One time or a list of different times; empty after a problem. */
    Optional<List<LocalTime>> times(Node node, String what) {
        List<Node> items = node instanceof ListNode list ? list.items() : List.of(node);
        String allowed = ALLOWED + ", one or a list";
        if (items.isEmpty()) {
            problems.add(Problem.at(node.place(), what + " holds no time").allowed(allowed));
            return Optional.empty();
        }
        List<LocalTime> times = new ArrayList<>();
        for (Node item : items) {
            Optional<LocalTime> time = time(item, what, allowed);
            if (time.isPresent() && times.contains(time.get())) {
                problems.add(
                        Problem.at(item.place(), what + " says a time twice").found(item.shown()));
                return Optional.empty();
            }
            time.ifPresent(times::add);
        }
        return times.size() == items.size() ? Optional.of(times) : Optional.empty();
    }

    /** The hours between the keys from and to of an entry, over midnight if to comes first; empty after a problem. */
    Optional<OpenHours> hours(Fields fields) {
        Optional<LocalTime> from = fields.read("from", node -> time(node, "start of " + fields.what(), ALLOWED));
        Optional<LocalTime> to = fields.read("to", node -> end(node, "end of " + fields.what()));
        if (from.isEmpty() || to.isEmpty()) {
            return Optional.empty();
        }
        boolean allDay = from.get().equals(LocalTime.MIDNIGHT)
                && fields.find("to").map(Node::shown).orElse("").contains("24");
        if (from.equals(to) && !allDay) {
            fields.fault(Problem.at(
                            fields.find("to").map(Node::place).orElse(fields.place()),
                            "end of " + fields.what() + " is its start")
                    .found(from.get().toString())
                    .mend("write another time, or from 00:00 to 24:00 for the whole day"));
            return Optional.empty();
        }
        return Optional.of(new OpenHours(from.get(), to.get()));
    }

    private Optional<LocalTime> end(Node node, String what) {
        return node.shown().equals("\"24:00\"") ? Optional.of(LocalTime.MIDNIGHT) : time(node, what, "00:00 to 24:00");
    }

    private Optional<LocalTime> time(Node node, String what, String allowed) {
        Optional<String> text = values.words(node, what, allowed);
        Optional<LocalTime> time = text.flatMap(Clock::time);
        if (text.isPresent() && time.isEmpty()) {
            problems.add(Problem.at(node.place(), what + " is no time of the day")
                    .found(node.shown())
                    .allowed(allowed)
                    .mend(MEND));
        }
        return time;
    }
}
