package limbway.model.enclosure;

import java.util.List;

/**
 * Everything that stands in one layout of an enclosure.
 *
 * @param site where on Earth
 * @param ground what can be walked on
 * @param supports poles, beams, branches, ropes, trunks, ladders
 * @param platforms level decks and hammocks
 * @param crowns branches of trees
 * @param panels climbable mesh and nets
 * @param bounds what stops an animal
 * @param shading what stands there for its shade alone
 * @param resources what the animals go to
 */
public record Enclosure(
        Site site,
        Ground ground,
        List<Support> supports,
        List<Platform> platforms,
        List<Crown> crowns,
        List<Panel> panels,
        Bounds bounds,
        Shading shading,
        List<Resource> resources) {

    /** Keeps copies of the lists. */
    public Enclosure {
        supports = List.copyOf(supports);
        platforms = List.copyOf(platforms);
        crowns = List.copyOf(crowns);
        panels = List.copyOf(panels);
        resources = List.copyOf(resources);
    }

    /**
     * An enclosure without panels, barriers, wire, doors and what gives shade alone.
     *
     * @param site where on Earth
     * @param ground what can be walked on
     * @param supports poles, beams, branches, ropes, trunks, ladders
     * @param platforms level decks and hammocks
     * @param crowns branches of trees
     * @param resources what the animals go to
     */
    public Enclosure(
            Site site,
            Ground ground,
            List<Support> supports,
            List<Platform> platforms,
            List<Crown> crowns,
            List<Resource> resources) {
        this(site, ground, supports, platforms, crowns, List.of(), Bounds.NONE, Shading.NONE, resources);
    }

    /**
     * The same enclosure with other supports.
     *
     * @param others supports to use instead
     * @return a copy
     */
    public Enclosure withSupports(List<Support> others) {
        return new Enclosure(site, ground, others, platforms, crowns, panels, bounds, shading, resources);
    }

    /**
     * The same enclosure with other platforms.
     *
     * @param others platforms to use instead
     * @return a copy
     */
    public Enclosure withPlatforms(List<Platform> others) {
        return new Enclosure(site, ground, supports, others, crowns, panels, bounds, shading, resources);
    }

    /**
     * The same enclosure with other places to go to.
     *
     * @param others resources to use instead
     * @return a copy
     */
    public Enclosure withResources(List<Resource> others) {
        return new Enclosure(site, ground, supports, platforms, crowns, panels, bounds, shading, others);
    }

    /**
     * The same enclosure with other panels.
     *
     * @param others panels to use instead
     * @return a copy
     */
    public Enclosure withPanels(List<Panel> others) {
        return new Enclosure(site, ground, supports, platforms, crowns, others, bounds, shading, resources);
    }

    /**
     * The same enclosure with other bounds.
     *
     * @param others barriers, wire and doors to use instead
     * @return a copy
     */
    public Enclosure withBounds(Bounds others) {
        return new Enclosure(site, ground, supports, platforms, crowns, panels, others, shading, resources);
    }

    /**
     * The same enclosure with other roofs, sails and surroundings.
     *
     * @param others what stands there for its shade alone, to use instead
     * @return a copy
     */
    public Enclosure withShading(Shading others) {
        return new Enclosure(site, ground, supports, platforms, crowns, panels, bounds, others, resources);
    }
}
