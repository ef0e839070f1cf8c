package limbway.model.heat;

import limbway.model.parameter.Standing;

/**
 * What a surface does with sunlight and heat rays.
 *
 * @param word what it is called in reports
 * @param absorptance share of sunlight that it takes up, 0 to 1
 * @param emittance heat rays over those of a black body, above 0, at most 1
 * @param touch how it burns
 * @param standing how well both numbers are known
 * @param source where they come from
 */
public record Surface(
        String word, double absorptance, double emittance, Touch touch, Standing standing, String source) {

    /**
     * Checks both shares.
     *
     * @throws IllegalArgumentException naming the surface and the share outside its range
     */
    public Surface {
        if (!(absorptance >= 0 && absorptance <= 1)) {
            throw new IllegalArgumentException(
                    "surface \"" + word + "\": absorptance = " + absorptance + ", allowed 0 to 1");
        }
        if (!(emittance > 0 && emittance <= 1)) {
            throw new IllegalArgumentException(
                    "surface \"" + word + "\": emittance = " + emittance + ", allowed above 0 and up to 1");
        }
    }

    /** How fast a surface gives its heat to a hand. */
    public enum Touch {
        /** Metal without a coat. */
        METAL("metal"),
        /** Metal under paint, powder or plastic. */
        COATED_METAL("coated metal"),
        /** Stone, concrete, glass, glazed clay. */
        STONE("stone"),
        /** Wood, plastic, fibre. */
        WOOD_OR_PLASTIC("wood or plastic");

        private final String word;

        Touch(String word) {
            this.word = word;
        }

        /**
         * The word used in reports.
         *
         * @return lower-case English words
         */
        public String word() {
            return word;
        }
    }
}
