package limbway.model.heat;

import java.util.OptionalDouble;

/**
 * From which temperature of a surface an adult human's skin is burnt, by how long it is touched.
 *
 * <p>Thresholds, not limits of what is allowed, for less than a tenth of the skin. Whether the palms and soles of apes bear
 * more or less is not known.
 *
 * @source ISO 13732-1, from memory: buy the standard before quoting it
 */
public final class ContactLimits {

    private ContactLimits() {}

    /** How long a surface is touched. */
    public enum Hold {
        /** A touch of one second. */
        SECOND("1 s"),
        /** A grip of one minute. */
        MINUTE("1 min"),
        /** A rest of ten minutes. */
        TEN_MINUTES("10 min"),
        /** A night or a day of eight hours and more. */
        EIGHT_HOURS("8 h");

        private final String word;

        Hold(String word) {
            this.word = word;
        }

        /**
         * The time in words.
         *
         * @return number and unit
         */
        public String word() {
            return word;
        }
    }

    /**
     * The threshold of a burn.
     *
     * @param touch kind of surface
     * @param hold how long it is touched
     * @return degrees Celsius; none where no figure is known to us: a touch of one second of stone, wood or plastic, which
     *     takes more than 70 °C. Paint is taken to save nothing within one second
     */
    public static OptionalDouble burnsFromC(Surface.Touch touch, Hold hold) {
        return switch (hold) {
            case SECOND ->
                switch (touch) {
                    // the standard gives a band of 65 to 70 °C for smooth bare metal: its lower edge
                    case METAL, COATED_METAL -> OptionalDouble.of(65);
                    case STONE, WOOD_OR_PLASTIC -> OptionalDouble.empty();
                };
            case MINUTE ->
                switch (touch) {
                    case METAL, COATED_METAL -> OptionalDouble.of(51);
                    case STONE -> OptionalDouble.of(56);
                    case WOOD_OR_PLASTIC -> OptionalDouble.of(60);
                };
            case TEN_MINUTES -> OptionalDouble.of(48);
            case EIGHT_HOURS -> OptionalDouble.of(43);
        };
    }

    /**
     * Whether a surface burns.
     *
     * @param touch kind of surface
     * @param hold how long it is touched
     * @param surfaceC its temperature [°C]
     * @return true from the threshold on; false where no threshold is known
     */
    public static boolean burns(Surface.Touch touch, Hold hold, double surfaceC) {
        OptionalDouble from = burnsFromC(touch, hold);
        return from.isPresent() && surfaceC >= from.getAsDouble();
    }
}
