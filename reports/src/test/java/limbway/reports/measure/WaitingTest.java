package limbway.reports.measure;

import java.util.List;
import java.util.Map;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.reports.Pole;
import limbway.sim.experiment.Outcome;
import limbway.sim.habitat.Habitat;
import limbway.sim.journal.Displacement;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Motive;
import limbway.sim.journal.Stay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Waiting and displacements, from journals small enough to add up by hand. */
class WaitingTest {

    private static final double ROUNDING = 1e-9;

    private final Habitat habitat = Pole.habitat();

    private static Stay wait(int animal, int minutes, boolean waiting) {
        return new Stay(1, animal, 0, minutes * 60_000L, Pole.FOOD, 0, Motive.HUNGER, waiting, 0, 0);
    }

    private static Journal journal(int replication, List<Stay> stays, List<Displacement> displacements) {
        return new Journal(replication, List.of(), stays, Pole.journal(1).reserves(), List.of(), displacements);
    }

    @Test
    @Tag("derived")
    void minutesAndDisplacementsAreADayAndByAnimalAndPlace() {
        Displacement atFood = new Displacement(1, 1000, Pole.FOOD, 0, 1, Motive.HUNGER);
        Displacement atWater = new Displacement(2, 90_000_000, Pole.WATER, 1, 0, Motive.THIRST);
        Outcome outcome = Pole.outcome(
                habitat,
                2,
                journal(
                        1,
                        List.of(wait(0, 10, true), wait(1, 6, true), wait(1, 50, false)),
                        List.of(atFood, atFood, atWater)),
                journal(2, List.of(wait(1, 4, true)), List.of(atFood)));
        Waiting waiting = Waiting.of(outcome);
        // 16 and 4 minutes of two animals in two days: 4 and 1
        assertEquals(2.5, waiting.minutesPerDay().mean(), ROUNDING);
        // 3 and 1 in two days
        assertEquals(1, waiting.displacementsPerDay().mean(), ROUNDING);
        assertEquals(2.5, waiting.byAnimal().get(0).minutesPerDay().mean(), ROUNDING);
        assertEquals(2.5, waiting.byAnimal().get(1).minutesPerDay().mean(), ROUNDING);
        // 2 and 1 won by the first, 1 and 0 by the second, in two days
        assertEquals(0.75, waiting.byAnimal().get(0).wonPerDay().mean(), ROUNDING);
        assertEquals(0.25, waiting.byAnimal().get(0).lostPerDay().mean(), ROUNDING);
        assertEquals(0.25, waiting.byAnimal().get(1).wonPerDay().mean(), ROUNDING);
        assertEquals(0.75, waiting.byAnimal().get(1).lostPerDay().mean(), ROUNDING);
        assertEquals(List.of("food", "water"), List.copyOf(waiting.byPlace().keySet()));
        assertEquals(0.75, waiting.byPlace().get("food").mean(), ROUNDING);
    }

    @Test
    void whereNobodyMeetsNothingIsCounted() {
        Waiting waiting = Waiting.of(Pole.outcome(habitat, 1, Pole.journal(1)));
        assertEquals(0, waiting.minutesPerDay().mean());
        assertEquals(Map.of(), waiting.byPlace());
        assertTrue(waiting.byAnimal().stream()
                .allMatch(animal -> animal.wonPerDay().mean() == 0));
    }
}
