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
 * @param bedding how much bedding always lies there, 0 (none) to 1 (as much as a deep nest takes)
 */
public record Resource(String id, ResourceKind kind, Point at, String on, int stalls, double bedding) {

    /**
     * A place without bedding.
     *
     * @param id name, unique within the enclosure
     * @param kind what it is gone to for
     * @param at where it is
     * @param on id of the support or platform that carries it, or empty if it was placed by coordinates
     * @param stalls how many animals can use it at once, 1 or more
     */
    public Resource(String id, ResourceKind kind, Point at, String on, int stalls) {
        this(id, kind, at, on, stalls, 0);
    }

    /**
     * Checks the number of stalls and the bedding.
     *
     * @throws IllegalArgumentException naming the resource if nobody could use it, or the bedding is none
     */
    public Resource {
        if (!(bedding >= 0 && bedding <= 1)) {
            throw new IllegalArgumentException("resource \"" + id + "\": bedding = " + bedding + ", allowed 0 to 1");
        }
        if (stalls < 1) {
            throw new IllegalArgumentException("resource \"" + id + "\": stalls = " + stalls + ", allowed 1 or more");
        }
    }
}
