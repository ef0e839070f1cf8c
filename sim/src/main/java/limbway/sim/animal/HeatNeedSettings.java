package limbway.sim.animal;

import limbway.model.parameter.Parameter;
import limbway.model.parameter.ParameterGroup;
import limbway.model.parameter.Standing;

/**
 * How heat troubles an animal.
 *
 * @param troublesFromC operative temperature from which it is troubled at all [°C]
 * @param greatestAtC operative temperature at which the trouble is greatest [°C], above {@code troublesFromC}
 * @param responseMin time in which it comes 63 % of the way to the trouble of its place [min]
 * @param weight how much heat counts against hunger
 */
public record HeatNeedSettings(double troublesFromC, double greatestAtC, double responseMin, double weight) {

    /** What the numbers are. */
    public static final ParameterGroup<HeatNeedSettings> GROUP = ParameterGroup.of(
            HeatNeedSettings.class,
            new Parameter(
                    "need.heat-from",
                    "operative temperature from which heat troubles an animal",
                    "°C",
                    29.5,
                    25,
                    36,
                    Standing.ASSUMPTION,
                    "the upper limit of 9 CFR 3.91(d) for the transport of primates; not specific to a species"),
            new Parameter(
                    "need.heat-greatest",
                    "operative temperature at which heat troubles it most",
                    "°C",
                    50,
                    40,
                    60,
                    Standing.ASSUMPTION,
                    "no source; the dark pelage of chimpanzees in the sun reaches 60 °C within minutes (Kosheleff and"
                            + " Anderson 2009)"),
            new Parameter(
                    "need.heat-response",
                    "time in which an animal comes 63 % of the way to the heat of its place",
                    "min",
                    20,
                    5,
                    60,
                    Standing.ASSUMPTION,
                    "no source"),
            new Parameter(
                    "need.heat-weight",
                    "how much heat counts",
                    "1",
                    1,
                    0,
                    2,
                    Standing.ASSUMPTION,
                    "no source; 0 switches it off"));

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException naming the value outside its range
     */
    public HeatNeedSettings {
        if (!(greatestAtC > troublesFromC)) {
            throw new IllegalArgumentException("heat need: greatestAtC = " + greatestAtC + ", allowed above "
                    + troublesFromC + ", where the trouble begins");
        }
        if (!(responseMin > 0)) {
            throw new IllegalArgumentException("heat need: responseMin = " + responseMin + ", allowed above 0");
        }
        if (!(weight >= 0)) {
            throw new IllegalArgumentException("heat need: weight = " + weight + ", allowed 0 or more");
        }
    }

    /**
     * The trouble that a place gives in the end.
     *
     * @param operativeC operative temperature there [°C]
     * @return 0 to 1
     */
    public double trouble(double operativeC) {
        return Math.min(1, Math.max(0, (operativeC - troublesFromC) / (greatestAtC - troublesFromC)));
    }
}
