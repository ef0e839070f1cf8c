package limbway.model.enclosure;

import limbway.model.geometry.Point;

/**
 * A place that an animal goes to for something.
 *
 * @param id name, unique within the enclosure
 * @param kind what it is gone to for
 * @param at where it is
 * @param on id of the support or platform that carries it, or empty if it was placed by coordinates
 * @param stalls how many animals can use it at once, 1 or more
 */
public record Resource(String id, ResourceKind kind, Point at, String on, int stalls) {

    /**
     * Checks the number of stalls.
     *
     * @throws IllegalArgumentException naming the resource if nobody could use it
     */
    public Resource {
        if (stalls < 1) {
            throw new IllegalArgumentException("resource \"" + id + "\": stalls = " + stalls + ", allowed 1 or more");
        }
    }
}
