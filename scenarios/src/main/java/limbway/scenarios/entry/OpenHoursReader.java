package limbway.scenarios.entry;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import limbway.model.enclosure.OpenHours;
import limbway.scenarios.format.ListNode;
import limbway.scenarios.format.Node;
import limbway.scenarios.format.ScalarNode;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;

/** Reads when a door is open. */
final class OpenHoursReader {

    private static final String ALLOWED = "always, never, or hours such as [\"08:00-12:00\", \"14:00-18:00\"]";

    /** Hours that last all day: they end when they begin. */
    private static final OpenHours ALL_DAY = new OpenHours(LocalTime.MIDNIGHT, LocalTime.MIDNIGHT);

    private final Problems problems;
    private final Values values;

    OpenHoursReader(Problems problems) {
        this.problems = problems;
        this.values = new Values(problems);
    }

    /** Hours in the order of the day, none for a door that stays shut; empty after a problem. */
    Optional<List<OpenHours>> read(Node node, String what) {
        if (node instanceof ScalarNode scalar && scalar.text().strip().equals("always")) {
            return Optional.of(List.of(ALL_DAY));
        }
        if (node instanceof ScalarNode scalar && scalar.text().strip().equals("never")) {
            return Optional.of(List.of());
        }
        List<Node> items = node instanceof ListNode list ? list.items() : List.of(node);
        if (items.isEmpty()) {
            problems.add(Problem.at(node.place(), what + " hold no hours")
                    .allowed(ALLOWED)
                    .mend("write never for a door that stays shut"));
            return Optional.empty();
        }
        List<OpenHours> hours = new ArrayList<>();
        for (Node item : items) {
            values.words(item, what, ALLOWED)
                    .flatMap(text -> stretch(item, text, what))
                    .ifPresent(hours::add);
        }
        if (hours.size() < items.size()) {
            return Optional.empty();
        }
        hours.sort(Comparator.comparing(OpenHours::from));
        return overlap(hours) ? overlapping(node, what) : Optional.of(hours);
    }

    private Optional<OpenHours> stretch(Node node, String text, String what) {
        String[] ends = text.split("-", -1);
        if (ends.length == 2) {
            Optional<LocalTime> from = Clock.time(ends[0].strip());
            String end = ends[1].strip();
            Optional<LocalTime> to = Clock.time(end.equals("24:00") ? "00:00" : end);
            if (from.isPresent() && to.isPresent() && !from.equals(to)) {
                return Optional.of(new OpenHours(from.get(), to.get()));
            }
        }
        problems.add(Problem.at(node.place(), what + " are no hours of the day")
                .found(node.shown())
                .allowed(ALLOWED)
                .mend("write when it opens, a dash and when it shuts, for example \"08:00-16:00\""));
        return Optional.empty();
    }

    /** Whether two stretches share a time; the last may run over midnight into the first. */
    private static boolean overlap(List<OpenHours> hours) {
        int n = hours.size();
        for (int i = 0; n > 1 && i < n; i++) {
            int start = hours.get(i).from().toSecondOfDay();
            int end = secondsAfter(start, hours.get(i).to().toSecondOfDay());
            int next = secondsAfter(start, hours.get((i + 1) % n).from().toSecondOfDay());
            if (end > next) {
                return true;
            }
        }
        return false;
    }

    private static int secondsAfter(int start, int time) {
        return Math.floorMod(time - start, 24 * 60 * 60);
    }

    private Optional<List<OpenHours>> overlapping(Node node, String what) {
        problems.add(Problem.at(node.place(), what + " overlap").mend("write each hour of the day once"));
        return Optional.empty();
    }
}
