package limbway.scenarios.format;

import limbway.scenarios.problem.Place;

/** A piece of a scenario: words, a list, or keys with values. */
public sealed interface Node permits ScalarNode, ListNode, MappingNode {

    /**
     * Where it begins.
     *
     * @return place of its first character
     */
    Place place();

    /**
     * What it is, for messages.
     *
     * @return a few words such as {@code a list}
     */
    String shown();
}
