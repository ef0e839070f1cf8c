package limbway.model.enclosure;

import limbway.model.geometry.Facet;

/**
 * A flat roof or sail that gives shade. Nothing climbs on it, and it stops no move: what carries animals is a platform or
 * a panel.
 *
 * @param id name, unique within the enclosure
 * @param kind roof or sail
 * @param facet its shape in space
 * @param transmittance share of the direct sunlight that passes through it, 0 to below 1; 0 for a roof
 */
public record Cover(String id, CoverKind kind, Facet facet, double transmittance) {

    /**
     * Checks the transmittance.
     *
     * @throws IllegalArgumentException naming the cover and the value outside its range
     */
    public Cover {
        if (!(transmittance >= 0 && transmittance < 1)) {
            throw new IllegalArgumentException(
                    kind.word() + " \"" + id + "\": transmittance = " + transmittance + ", allowed 0 to below 1");
        }
    }
}
