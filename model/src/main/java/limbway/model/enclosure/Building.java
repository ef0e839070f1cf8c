package limbway.model.enclosure;

import limbway.model.geometry.Outline;

/**
 * A solid block beside or in the enclosure that matters only for the shade it casts.
 *
 * @param id name, unique within the enclosure
 * @param footprint its edge, in plan
 * @param baseZM height of its lower end [m]
 * @param topZM height of its upper end [m], above {@code baseZM}
 */
public record Building(String id, Outline footprint, double baseZM, double topZM) {

    /**
     * Checks the heights.
     *
     * @throws IllegalArgumentException naming the building and the heights
     */
    public Building {
        if (!(topZM > baseZM)) {
            throw new IllegalArgumentException("building \"" + id + "\": baseZM = " + baseZM + ", topZM = " + topZM
                    + ", allowed topZM above baseZM");
        }
    }
}
