package limbway.model.enclosure;

import java.util.List;

/**
 * Everything that stands in one layout of an enclosure.
 *
 * @param site where on Earth
 * @param ground what can be walked on
 * @param supports poles, beams, ropes, trunks
 * @param platforms level decks
 * @param crowns branches of trees
 * @param resources what the animals go to
 */
public record Enclosure(
        Site site,
        Ground ground,
        List<Support> supports,
        List<Platform> platforms,
        List<Crown> crowns,
        List<Resource> resources) {

    /** Keeps copies of the lists. */
    public Enclosure {
        supports = List.copyOf(supports);
        platforms = List.copyOf(platforms);
        crowns = List.copyOf(crowns);
        resources = List.copyOf(resources);
    }

    /**
     * The same enclosure with other supports.
     *
     * @param others supports to use instead
     * @return a copy
     */
    public Enclosure withSupports(List<Support> others) {
        return new Enclosure(site, ground, others, platforms, crowns, resources);
    }
}
