package limbway.model.enclosure;

import limbway.model.geometry.Polyline;

/**
 * Something long that an animal can move along.
 *
 * @param id name, unique within the enclosure
 * @param kind what it is built as
 * @param axis its centre line
 * @param diameterM thickness [m], above 0
 * @param material its surface
 */
public record Support(String id, SupportKind kind, Polyline axis, double diameterM, Material material) {

    /**
     * Checks the thickness.
     *
     * @throws IllegalArgumentException naming the support if the diameter is not above 0
     */
    public Support {
        if (!(diameterM > 0)) {
            throw new IllegalArgumentException(
                    "support \"" + id + "\": diameterM = " + diameterM + ", allowed above 0");
        }
    }
}
