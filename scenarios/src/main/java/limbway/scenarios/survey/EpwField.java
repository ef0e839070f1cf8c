package limbway.scenarios.survey;

import java.util.regex.Pattern;

import limbway.scenarios.problem.Wording;

/**
 * The fields of a weather file that are read.
 *
 * @source fields, units and codes for what is missing: EnergyPlus Auxiliary Programs, "EnergyPlus Weather File (EPW) Data
 *     Dictionary"; the upper limits of temperature and radiation are narrower than there: no air above 60 °C was ever
 *     measured, and no beam is stronger than the sun above the air, 1361 W/m² and 3.4 % more in January; those of global and
 *     diffuse radiation are common sense, no source
 */
enum EpwField {
    /** Temperature of the air. */
    DRY_BULB(7, "dry bulb temperature", "°C", -70, 60, 99.9),
    /** All light on a level surface. */
    GLOBAL(14, "global horizontal radiation", "Wh/m²", 0, 1500, 9999),
    /** Direct light on a surface that faces the sun. */
    DIRECT(15, "direct normal radiation", "Wh/m²", 0, 1410, 9999),
    /** Light of the sky on a level surface. */
    DIFFUSE(16, "diffuse horizontal radiation", "Wh/m²", 0, 1000, 9999),
    /** Speed of the wind. */
    WIND(22, "wind speed", "m/s", 0, 40, 999);

    private static final Pattern NINES = Pattern.compile("9+(\\.9*)?0*");

    private final int number;
    private final String word;
    private final String unit;
    private final double least;
    private final double most;
    private final double missing;

    EpwField(int number, String word, String unit, double least, double most, double missing) {
        this.number = number;
        this.word = word;
        this.unit = unit;
        this.least = least;
        this.most = most;
        this.missing = missing;
    }

    /** Which field of a line it is, the first is 1. */
    int number() {
        return number;
    }

    /** What messages call it. */
    String word() {
        return word;
    }

    String shown(double value) {
        return Wording.measure(value, unit);
    }

    String range() {
        return shown(least) + " to " + shown(most);
    }

    double most() {
        return most;
    }

    boolean allows(double value) {
        return value >= least && value <= most;
    }

    /**
     * Whether a value stands for none: nines alone, from the code of the field on. The format counts every value from there
     * on as missing; others are refused as out of range here, so that kelvins are not taken for gaps.
     */
    boolean isMissing(String text, double value) {
        return value >= missing && NINES.matcher(text).matches();
    }
}
