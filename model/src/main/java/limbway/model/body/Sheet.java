package limbway.model.body;

import limbway.model.parameter.Parameter;
import limbway.model.parameter.Standing;

/** Writes the figures of one body, with the sources that several bodies share. */
record Sheet(String body) {

    static final String SPAN = "0.8 of the arm span";
    static final String SCALED_SPAN = "span 2.4 m at 74 kg scaled by the cube root of mass";
    static final String REACH_OF_SCALED_SPAN = SPAN + "; " + SCALED_SPAN;
    static final String GRIP = "hook grip twice the full wrap, full wrap = hand length / pi; male hand 25 cm (from "
            + "memory) scaled by the cube root of mass; no measured limit was found";
    static final String HUG = "both arms reach half-way round a rough stem: 0.4 of the arm span";
    static final String WALKWAY = "a beam counts as broad from 0.3 m for the largest male, less for smaller bodies";
    static final String LEVEL_LEAP = "the speed of that leap over a level gap, sqrt(g d)";

    Parameter kg(String key, double value, double low, double high, Standing standing, String source) {
        return figure(key, "kg", value, low, high, standing, source);
    }

    Parameter m(String key, double value, double low, double high, Standing standing, String source) {
        return figure(key, "m", value, low, high, standing, source);
    }

    Parameter takeOff(double value, double low, double high, Standing standing, String source) {
        return figure("take-off", "m/s", value, low, high, standing, source);
    }

    Parameter brachiates(boolean does, Standing standing, String source) {
        return figure("brachiates", "1", does ? 1 : 0, 0, 1, standing, source);
    }

    private Parameter figure(
            String key, String unit, double value, double low, double high, Standing standing, String source) {
        String article = "aeiou".indexOf(body.charAt(0)) < 0 ? "a " : "an ";
        return new Parameter(
                "body." + body.replace(' ', '-') + "." + key,
                key.replace('-', ' ') + " of " + article + body,
                unit,
                value,
                low,
                high,
                standing,
                source);
    }
}
