package limbway.model.energy;

/**
 * What an orangutan spends in a day, and the part of it spent at rest.
 *
 * <p>A line through two animals on logarithmic axes: 1600 kcal at 54.4 kg and 2000 kcal at 113 kg. The share at rest,
 * 1/1.6, is an assumption (1.3 to 2.0).
 *
 * @source Pontzer et al. 2010, doi 10.1073/pnas.1001031107, doubly labelled water in four captive orangutans; the two
 *     figures as reported in the press
 * @validity 54 to 113 kg; lighter bodies are an extrapolation
 */
public final class DailyExpenditure {

    private static final double KCAL_AT_REFERENCE = 1600;
    private static final double REFERENCE_KG = 54.4;
    private static final double EXPONENT = 0.304;
    private static final double J_PER_KCAL = 4184;
    private static final double DAY_S = 86_400;

    private DailyExpenditure() {}

    /**
     * Total energy spent in a day.
     *
     * @param massKg body mass [kg], above 0
     * @return energy [J]
     */
    public static double jPerDay(double massKg) {
        return KCAL_AT_REFERENCE * StrictMath.pow(massKg / REFERENCE_KG, EXPONENT) * J_PER_KCAL;
    }

    /**
     * Power spent while doing nothing.
     *
     * @param massKg body mass [kg], above 0
     * @param dailyOverResting daily expenditure divided by resting expenditure, above 1
     * @return power [W]
     */
    public static double restingW(double massKg, double dailyOverResting) {
        return jPerDay(massKg) / dailyOverResting / DAY_S;
    }
}
