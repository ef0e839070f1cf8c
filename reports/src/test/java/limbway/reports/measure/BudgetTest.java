package limbway.reports.measure;

import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.reports.Pole;
import limbway.sim.experiment.statistics.Interval;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Motive;
import limbway.sim.journal.Stay;
import limbway.sim.journal.Trip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** How a day divides, from journals small enough to add up by hand. */
@Tag("derived")
class BudgetTest {

    private static final double ROUNDING = 1e-12;
    private static final long MINUTE_MS = 60_000;

    private static Stay stay(int animal, int fromMin, int toMin, Motive motive, boolean waiting) {
        return new Stay(
                1 + fromMin / 1440,
                animal,
                fromMin * MINUTE_MS,
                toMin * MINUTE_MS,
                Pole.FOOD,
                0,
                motive,
                waiting,
                0,
                0);
    }

    private static Budget budget(Trip trip, Stay... stays) {
        Journal journal =
                new Journal(1, List.of(trip), List.of(stays), Pole.journal(1).reserves(), List.of());
        return Budget.of(Pole.outcome(Pole.habitat(), 2, journal));
    }

    /** A trip of 10 m takes 10 s at the speed of the figures; it begins at 08:00. */
    private static Trip trip(int seconds) {
        return Pole.trip(0, 8, seconds, 0, 1, 0);
    }

    @Test
    void everyMotiveAndWaitBelongsToOneActivity() {
        Budget budget = budget(
                trip(600),
                stay(0, 490, 500, Motive.HUNGER, false),
                stay(0, 500, 510, Motive.THIRST, false),
                stay(0, 510, 520, Motive.HUNGER, true),
                stay(0, 520, 540, Motive.FATIGUE, false),
                stay(0, 540, 550, Motive.HEAT, false),
                stay(0, 550, 565, Motive.COMFORT, false),
                stay(0, 565, 580, Motive.COMPANY, false),
                stay(0, 580, 1440, Motive.NIGHT, false));
        // 10 + 20 + 10 + 30 + 30 minutes awake
        assertEquals(
                Map.of(
                        Activity.MOVING, 0.1,
                        Activity.FEEDING, 0.2,
                        Activity.WAITING, 0.1,
                        Activity.RESTING, 0.3,
                        Activity.COMFORT, 0.3),
                rounded(budget.waking()));
        assertEquals(0.6, budget.atRest().orElseThrow().mean(), ROUNDING);
        double sum =
                budget.waking().values().stream().mapToDouble(Interval::mean).sum();
        assertEquals(1, sum, ROUNDING);
    }

    @Test
    void aStayIsDividedAmongTheHoursThatItLastsAlsoOverMidnight() {
        Budget budget = budget(
                trip(600),
                stay(0, 490, 550, Motive.HUNGER, false),
                stay(1, 510, 540, Motive.NIGHT, false),
                // 23:30 of day 1 to 00:30 of day 2
                stay(1, 1410, 1470, Motive.FATIGUE, false));
        assertEquals(
                List.of(0, 8, 9, 23),
                budget.byHour().stream().map(Budget.Hour::hour).toList());
        // 08:00 to 09:00: 10 minutes moving, 50 feeding, 30 in bed
        Map<Activity, Interval> eight = budget.byHour().get(1).shares();
        assertEquals(10.0 / 90, eight.get(Activity.MOVING).mean(), ROUNDING);
        assertEquals(50.0 / 90, eight.get(Activity.FEEDING).mean(), ROUNDING);
        assertEquals(30.0 / 90, eight.get(Activity.NIGHT).mean(), ROUNDING);
        assertEquals(1, budget.byHour().get(2).shares().get(Activity.FEEDING).mean(), ROUNDING);
        assertEquals(1, budget.byHour().get(0).shares().get(Activity.RESTING).mean(), ROUNDING);
        assertEquals(1, budget.byHour().get(3).shares().get(Activity.RESTING).mean(), ROUNDING);
    }

    @Test
    void whereNobodyWakesThereIsNothingToDivide() {
        Budget budget = Budget.of(Pole.outcome(
                Pole.habitat(),
                1,
                new Journal(
                        1,
                        List.of(),
                        List.of(stay(0, 0, 1440, Motive.NIGHT, false)),
                        Pole.journal(1).reserves(),
                        List.of())));
        assertTrue(budget.waking().isEmpty());
        assertTrue(budget.atRest().isEmpty());
        assertEquals(List.of(), budget.byHour());
    }

    private static Map<Activity, Double> rounded(Map<Activity, Interval> shares) {
        return shares.entrySet().stream()
                .collect(java.util.stream.Collectors.toMap(
                        Map.Entry::getKey, entry -> Math.round(entry.getValue().mean() * 1e9) / 1e9));
    }
}
