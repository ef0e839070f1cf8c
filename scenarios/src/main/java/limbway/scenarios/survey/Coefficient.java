package limbway.scenarios.survey;

import limbway.model.parameter.Parameter;
import limbway.model.parameter.Standing;

/** The coefficients that lead from the diameter of a stem to height and crown; the key is that of the scenario. */
public enum Coefficient {
    /** Constant of the height curve. */
    HEIGHT_CONSTANT("height-constant", "constant of ln H", 0.893, 0.7, 1.1, Standing.UNVERIFIED, Sources.CHAVE),
    /** Slope of the height curve. */
    HEIGHT_SLOPE("height-slope", "factor of ln D in ln H", 0.760, 0.7, 0.82, Standing.UNVERIFIED, Sources.CHAVE),
    /** Bend of the height curve. */
    HEIGHT_CURVE(
            "height-curve",
            "factor of (ln D) squared in ln H",
            -0.0340,
            -0.045,
            -0.025,
            Standing.UNVERIFIED,
            Sources.CHAVE),
    /** Climate term of the height curve. */
    HEIGHT_STRESS(
            "height-stress",
            "environmental stress E, taken off the constant",
            0,
            -0.2,
            0.6,
            Standing.ASSUMPTION,
            "0 where the climate of the place is not known; the published map gives E for any place"),
    /** Factor of the crown curve. */
    CROWN_RADIUS_FACTOR(
            "crown-radius-factor",
            "crown radius in metres of a stem of 1 cm",
            0.55,
            0.35,
            0.8,
            Standing.ASSUMPTION,
            Sources.CROWN),
    /** Exponent of the crown curve. */
    CROWN_RADIUS_EXPONENT(
            "crown-radius-exponent",
            "exponent of D in the crown radius",
            0.5,
            0.4,
            0.7,
            Standing.ASSUMPTION,
            Sources.CROWN),
    /** Where the crown begins. */
    CROWN_BASE_SHARE(
            "crown-base-share",
            "height of the lowest branches as a share of the tree's height",
            0.6,
            0.4,
            0.8,
            Standing.ASSUMPTION,
            "no source; varies much between trees");

    /** Texts that several coefficients share. */
    private static final class Sources {
        static final String CHAVE =
                "Chave et al. 2014, doi 10.1111/gcb.12629, equation 6a, D in cm (from memory; check before relying on it)";
        static final String CROWN =
                "no source; chosen so that stems of 10, 30 and 100 cm have crowns of 1.7, 3.0 and 5.5 m";
    }

    private final String key;
    private final String meaning;
    private final double value;
    private final double low;
    private final double high;
    private final Standing standing;
    private final String source;

    Coefficient(String key, String meaning, double value, double low, double high, Standing standing, String source) {
        this.key = key;
        this.meaning = meaning;
        this.value = value;
        this.low = low;
        this.high = high;
        this.standing = standing;
        this.source = source;
    }

    /**
     * The key under {@code allometry}.
     *
     * @return words with dashes
     */
    public String key() {
        return key;
    }

    /**
     * The coefficient with its default.
     *
     * @return value, range and source
     */
    public Parameter usual() {
        return new Parameter("allometry." + key, meaning, "1", value, low, high, standing, source);
    }
}
