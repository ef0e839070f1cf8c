package limbway.sim.animal;

import limbway.model.body.Body;
import limbway.model.energy.DailyExpenditure;

/**
 * What one body burns, loses and takes in, in the units that the day reckons with.
 *
 * @param energyNeedJ energy it spends in a whole day of its kind [J]
 * @param restingJPerMs energy spent whatever it does [J/ms]
 * @param otherJPerDay energy spent in a day, while awake, on all that is neither rest nor moving about [J]
 * @param hungriestJ missing energy at which hunger is greatest [J]
 * @param waterMlPerMs water lost whatever it does [ml/ms]
 * @param thirstiestMl missing water at which thirst is greatest [ml]
 * @param eatingJPerMs speed of eating [J/ms]
 * @param drinkingMlPerMs speed of drinking [ml/ms]
 */
public record Physiology(
        double energyNeedJ,
        double restingJPerMs,
        double otherJPerDay,
        double hungriestJ,
        double waterMlPerMs,
        double thirstiestMl,
        double eatingJPerMs,
        double drinkingMlPerMs) {

    private static final double MS_PER_MIN = 60_000;
    private static final double MS_PER_DAY = 86_400_000;
    private static final double EATING_REFERENCE_KG = 40;
    private static final double EATING_EXPONENT = 0.75;

    /**
     * The figures of one body.
     *
     * @param body who
     * @param dailyOverResting daily expenditure over resting expenditure, above 1
     * @param settings the numbers of the day
     * @return its figures
     */
    public static Physiology of(Body body, double dailyOverResting, DaySettings settings) {
        double needJ = DailyExpenditure.jPerDay(body.massKg());
        double waterMl = settings.needs().waterMlPerKg() * body.massKg();
        double eatingKjPerMin = settings.intake().eatingKjPerMin()
                * StrictMath.pow(body.massKg() / EATING_REFERENCE_KG, EATING_EXPONENT);
        double restingJPerMs = DailyExpenditure.restingW(body.massKg(), dailyOverResting) / 1000;
        return new Physiology(
                needJ,
                restingJPerMs,
                settings.needs().otherActivity() * (needJ - restingJPerMs * MS_PER_DAY),
                settings.needs().hungerScale() * needJ,
                waterMl / MS_PER_DAY,
                settings.needs().thirstScale() * waterMl,
                eatingKjPerMin * 1000 / MS_PER_MIN,
                settings.intake().drinkingMlPerMin() / MS_PER_MIN);
    }
}
