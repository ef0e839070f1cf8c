package limbway.scenarios.format;

import java.util.List;

import limbway.scenarios.problem.Place;

/**
 * A list, written with dashes or in square brackets.
 *
 * @param place where it begins
 * @param items what it holds, in order
 */
public record ListNode(Place place, List<Node> items) implements Node {

    /** Keeps a copy of the list. */
    public ListNode {
        items = List.copyOf(items);
    }

    @Override
    public String shown() {
        return items.isEmpty() ? "an empty list" : "a list of " + items.size();
    }
}
