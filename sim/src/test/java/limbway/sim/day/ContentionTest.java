package limbway.sim.day;

import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Test;

import limbway.model.enclosure.ResourceKind;
import limbway.model.study.Animal;
import limbway.sim.Runs;
import limbway.sim.animal.DaySettings;
import limbway.sim.animal.Physiology;
import limbway.sim.chance.Chance;
import limbway.sim.habitat.Habitat;
import limbway.sim.journal.Displacement;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Motive;
import limbway.sim.journal.Stay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Five animals and one feeder: who is driven away, who waits, and what becomes of the food in hand. */
class ContentionTest {

    private static final int DAYS = 20;
    private static final long BARRED_MS = 15 * 60_000;

    private final Habitat habitat = StallTest.crowded();
    private final DaySettings settings = DaySettings.standard();
    private final Journal journal = lived(settings);

    private Journal lived(DaySettings chosen) {
        RunPlan plan = new RunPlan(habitat, chosen, Runs.DATE, DAYS);
        return new Replication(plan, new Chance(5, 1), AccountAudit.STRICT)
                .run(() -> false)
                .orElseThrow();
    }

    private boolean isFeeder(int resource) {
        return habitat.graph().resources().get(resource).kind() == ResourceKind.FOOD;
    }

    private List<Stay> meals() {
        return journal.stays().stream()
                .filter(stay -> stay.motive() == Motive.HUNGER && !stay.waiting())
                .toList();
    }

    @Test
    void theWinnerBeginsWhereTheLoserLeavesOff() {
        List<Displacement> atFeeders = journal.displacements().stream()
                .filter(displacement -> isFeeder(displacement.resource()))
                .toList();
        assertTrue(atFeeders.size() >= 10, () -> "n = " + atFeeders.size());
        int meals = 0;
        for (Displacement displacement : atFeeders) {
            meals += count(displacement.loser(), displacement, true);
            // whoever is driven away again within the same moment has not begun
            boolean again = atFeeders.stream()
                    .anyMatch(next -> next.timeMs() == displacement.timeMs() && next.loser() == displacement.winner());
            assertEquals(again ? 0 : 1, count(displacement.winner(), displacement, false), displacement::toString);
        }
        assertTrue(meals > 0, "somebody is driven from its meal");
    }

    private int count(int animal, Displacement displacement, boolean ends) {
        return (int) meals().stream()
                .filter(stay -> stay.animal() == animal
                        && stay.resource() == displacement.resource()
                        && (ends ? stay.endMs() : stay.startMs()) == displacement.timeMs())
                .count();
    }

    @Test
    void whoIsDrivenAwayKeepsAwayForAWhile() {
        for (Displacement displacement : journal.displacements()) {
            assertFalse(
                    journal.stays().stream()
                            .anyMatch(stay -> stay.animal() == displacement.loser()
                                    && stay.motive() == displacement.motive()
                                    && stay.resource() == displacement.resource()
                                    && stay.startMs() > displacement.timeMs()
                                    && stay.startMs() < displacement.timeMs() + BARRED_MS),
                    displacement::toString);
        }
    }

    @Test
    void nobodyIsBookedMoreThanItHadTimeToEat() {
        assertEquals(List.of(), tooFast(meals()));
        Stay meal = meals().get(0);
        Stay uncut = new Stay(
                meal.day(),
                meal.animal(),
                meal.startMs(),
                meal.startMs() + 1000,
                meal.resource(),
                meal.hold(),
                meal.motive(),
                false,
                meal.eatenJ(),
                0);
        assertEquals(List.of(uncut), tooFast(List.of(uncut)), "a portion that was not put back would be found");
    }

    private List<Stay> tooFast(List<Stay> meals) {
        return meals.stream().filter(this::isTooFast).toList();
    }

    private boolean isTooFast(Stay meal) {
        Animal animal = habitat.animals().get(meal.animal());
        double perMs = Physiology.of(animal.body(), habitat.energy().dailyOverResting(), settings)
                .eatingJPerMs();
        // bouts are whole milliseconds, rounded
        return meal.eatenJ() > perMs * (meal.endMs() - meal.startMs() + 1);
    }

    @Test
    void whoWaitsTakesTheStallAtTheMomentAtWhichItIsGivenUp() {
        List<Stay> waits = journal.stays().stream().filter(Stay::waiting).toList();
        List<Stay> called = waits.stream()
                .filter(wait -> journal.stays().stream()
                        .anyMatch(use -> !use.waiting()
                                && use.animal() == wait.animal()
                                && use.resource() == wait.resource()
                                && use.motive() == wait.motive()
                                && use.startMs() == wait.endMs()))
                .toList();
        assertTrue(called.size() > waits.size() / 4, () -> called.size() + " of " + waits.size());
        for (Stay wait : called) {
            assertTrue(
                    journal.stays().stream()
                            .anyMatch(use -> !use.waiting()
                                    && use.animal() != wait.animal()
                                    && use.resource() == wait.resource()
                                    && use.endMs() == wait.endMs()),
                    wait::toString);
        }
    }

    @Test
    void eventsThatMeanNothingChangeNoContest() {
        RunPlan plan = new RunPlan(habitat, settings, Runs.DATE, DAYS);
        Replication disturbed = new Replication(plan, new Chance(5, 1), AccountAudit.STRICT);
        for (int i = 0; i < 5000; i++) {
            disturbed.schedule.scheduleOnce((double) (i * 300_000L), 0, state -> {});
        }
        Runs.assertAlike(journal, disturbed.run(() -> false).orElseThrow());
    }

    @Test
    void underTheOrderOfRankNobodyDrivesAwayWhoIsAboveIt() {
        Map<String, Double> despotic = Map.of("company.contest-sharpness", 20.0, "company.hunger-in-contest", 0.0);
        Journal strict = lived(settings.with(despotic));
        // neighbours in rank differ by 0.25: the lower wins one contest in 149; a lottery lets it win every other
        assertTrue(upward(strict) <= 0.05 * strict.displacements().size(), () -> upward(strict) + " upward");
        Journal lottery = lived(settings.with(Map.of("company.contest-sharpness", 0.0)));
        assertTrue(upward(lottery) > 0.05 * lottery.displacements().size(), () -> upward(lottery) + " upward");
    }

    private long upward(Journal lived) {
        assertTrue(lived.displacements().size() > 20);
        return lived.displacements().stream()
                .filter(displacement ->
                        habitat.animals().get(displacement.winner()).rank()
                                > habitat.animals().get(displacement.loser()).rank())
                .count();
    }
}
