package limbway.model.shade;

import java.util.List;

/**
 * The roofs among which the smallest is looked for: level rectangles over one platform with sides along its own, opaque.
 * Where no roof alone will do, some of its edges may carry a screen: a wall that hangs from the edge of the roof down to the
 * height of the deck. Such roofs reach less far, so that a screen stays near the deck.
 *
 * @param risesM heights of the roof above the deck [m], rising, each above 0
 * @param gridM every edge lies a whole number of these from the first corner of the deck [m], above 0
 * @param longestSideM no side is longer [m]
 * @param overhangM how far a roof without screens may reach beyond the deck on each side [m], 0 or more
 * @param screenedOverhangM how far a roof with screens may [m], 0 or more
 * @param mostScreens most edges that may carry a screen, 0 to 3: one side at least stays open for the animals
 */
public record RoofFamily(
        List<Double> risesM,
        double gridM,
        double longestSideM,
        double overhangM,
        double screenedOverhangM,
        int mostScreens) {

    /**
     * Checks the measures.
     *
     * @throws IllegalArgumentException naming the value outside its range
     */
    public RoofFamily {
        risesM = List.copyOf(risesM);
        double before = 0;
        for (double rise : risesM) {
            if (!(rise > before)) {
                throw new IllegalArgumentException("roofs: risesM = " + risesM + ", allowed rising from above 0");
            }
            before = rise;
        }
        if (!(gridM > 0 && longestSideM >= gridM)) {
            throw new IllegalArgumentException("roofs: gridM = " + gridM + ", longestSideM = " + longestSideM
                    + ", allowed 0 < gridM <= longestSideM");
        }
        if (!(overhangM >= 0 && screenedOverhangM >= 0)) {
            throw new IllegalArgumentException("roofs: overhangM = " + overhangM + ", screenedOverhangM = "
                    + screenedOverhangM + ", allowed 0 or more");
        }
        if (mostScreens < 0 || mostScreens > 3) {
            throw new IllegalArgumentException("roofs: mostScreens = " + mostScreens + ", allowed 0 to 3");
        }
    }

    /**
     * Roofs that a small crew can put up: 1.8, 2.4 or 3.0 m above the deck, in steps of a quarter of a metre, sides up to
     * 10 m, reaching up to 4 m beyond the deck; with up to three screens, then up to 1 m beyond it.
     *
     * @return the family
     * @source assumption: head-room for a standing ape below 1.8 m, and sizes of usual timber; no source
     */
    public static RoofFamily standard() {
        return new RoofFamily(List.of(1.8, 2.4, 3.0), 0.25, 10, 4, 1, 3);
    }

    int steps(double lengthM) {
        return (int) Math.floor(lengthM / gridM + 1e-9);
    }
}
