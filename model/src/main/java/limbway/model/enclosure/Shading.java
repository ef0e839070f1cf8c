package limbway.model.enclosure;

import java.util.List;

/**
 * What stands in a layout for its shade alone.
 *
 * @param covers roofs and sails
 * @param buildings solid blocks beside or in the enclosure
 * @param neighbours crowns of trees that no animal can come to
 */
public record Shading(List<Cover> covers, List<Building> buildings, List<Crown> neighbours) {

    /** Nothing. */
    public static final Shading NONE = new Shading(List.of(), List.of(), List.of());

    /** Keeps copies of the lists. */
    public Shading {
        covers = List.copyOf(covers);
        buildings = List.copyOf(buildings);
        neighbours = List.copyOf(neighbours);
    }
}
