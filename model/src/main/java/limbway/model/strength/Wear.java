package limbway.model.strength;

import java.util.Optional;

import limbway.model.enclosure.Material;

/** What becomes of materials with the years, and where to look. Common practice, no source; it tells no date. */
public final class Wear {

    private Wear() {}

    /**
     * What to watch on a material.
     *
     * @param material what a support is made of
     * @return a clause, or empty where nothing is known to weaken it quickly
     */
    public static Optional<String> of(Material material) {
        return switch (material) {
            case TIMBER ->
                Optional.of("timber rots first where it meets the ground, a joint or a strap, and cracks: "
                        + "sound it there");
            case BARK ->
                Optional.of("living wood grows over its straps or dies back, dead wood rots under its bark: tap "
                        + "and look at it");
            case FIBRE_ROPE ->
                Optional.of(
                        "rope frays at knots and edges and loses strength in the sun: run it through " + "the hand");
            case FIRE_HOSE ->
                Optional.of("hose wears through at its folds and bolts, and its strength is not known here: "
                        + "look at the weave");
            case GALVANISED_STEEL, PAINTED_STEEL, STAINLESS_STEEL, CONCRETE -> Optional.empty();
        };
    }
}
