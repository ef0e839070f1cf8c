package limbway.model.enclosure;

import limbway.model.geometry.Polyline;

/**
 * Something long that an animal can move along.
 *
 * @param id name, unique within the enclosure
 * @param kind what it is built as
 * @param axis its centre line, from the foot or the first end
 * @param diameterM thickness at its first end [m], above 0; of a ladder, of its rungs
 * @param tipDiameterM thickness at its last end [m], above 0, at most {@code diameterM}; it tapers evenly between
 * @param material its surface and stuff
 * @param bearing stiffness and load where they are stated
 */
public record Support(
        String id,
        SupportKind kind,
        Polyline axis,
        double diameterM,
        double tipDiameterM,
        Material material,
        Bearing bearing) {

    /**
     * Checks the thickness.
     *
     * @throws IllegalArgumentException naming the support if a diameter is not above 0, or the tip is thicker than the foot
     */
    public Support {
        if (!(diameterM > 0)) {
            throw new IllegalArgumentException(
                    "support \"" + id + "\": diameterM = " + diameterM + ", allowed above 0");
        }
        if (!(tipDiameterM > 0 && tipDiameterM <= diameterM)) {
            throw new IllegalArgumentException("support \"" + id + "\": tipDiameterM = " + tipDiameterM
                    + ", allowed above 0 and up to diameterM = " + diameterM);
        }
    }

    /**
     * A support of one thickness with nothing stated about how it bears.
     *
     * @param id name, unique within the enclosure
     * @param kind what it is built as
     * @param axis its centre line
     * @param diameterM thickness [m], above 0
     * @param material its surface and stuff
     */
    public Support(String id, SupportKind kind, Polyline axis, double diameterM, Material material) {
        this(id, kind, axis, diameterM, diameterM, material, Bearing.UNSTATED);
    }

    /**
     * Thickness at a distance along the axis.
     *
     * @param alongM distance from the first end [m], 0 to the length
     * @return diameter [m]
     */
    public double diameterAtM(double alongM) {
        return diameterM + (tipDiameterM - diameterM) * Math.min(1, alongM / axis.lengthM());
    }
}
