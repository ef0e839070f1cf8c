package limbway.sim.day;

import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

import org.junit.jupiter.api.Test;
import org.opentest4j.AssertionFailedError;

import limbway.model.enclosure.ResourceKind;
import limbway.model.study.BeddingRound;
import limbway.model.study.Feeding;
import limbway.model.study.Keeping;
import limbway.sim.RichDays;
import limbway.sim.Runs;
import limbway.sim.Yard;
import limbway.sim.animal.Ape;
import limbway.sim.animal.DaySettings;
import limbway.sim.chance.Chance;
import limbway.sim.habitat.Habitat;
import limbway.sim.journal.Journal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

/**
 * With all that is worth something switched on, events that mean nothing leave every trip, stay and reserve alone to the
 * last bit.
 */
class NothingAddedTest {

    private static final int DAYS = 4;
    private static final int SEED = 5;
    private static final int EVENTS = 3000;

    private final Journal usual = lived(RichDays.of(Yard.furnished().build()), DaySettings.standard(), nothing -> {});

    /** Lives with events at odd times, none of which is a time at which something happens anyway. */
    private static Journal lived(Habitat habitat, DaySettings day, Consumer<List<Ape>> event) {
        RunPlan plan = new RunPlan(habitat, day, Runs.DATE, DAYS);
        Replication replication = new Replication(plan, new Chance(SEED, 1), AccountAudit.STRICT);
        int[] happened = {0};
        for (int i = 0; i < EVENTS; i++) {
            int ordering = i % 8;
            replication.schedule.scheduleOnce((double) (i * 113_117L + 1), ordering, state -> {
                happened[0]++;
                event.accept(replication.group());
            });
        }
        Journal journal = replication.run(() -> false).orElseThrow();
        assertEquals(EVENTS, happened[0]);
        return journal;
    }

    @Test
    void eventsThatMeanNothingChangeNothing() {
        RunPlan plan = new RunPlan(RichDays.of(Yard.furnished().build()), DaySettings.standard(), Runs.DATE, DAYS);
        Journal without = new Replication(plan, new Chance(SEED, 1), AccountAudit.STRICT)
                .run(() -> false)
                .orElseThrow();
        Runs.assertAlike(without, usual);
    }

    /** Planted mistake: time is cut in two, which is right on paper and not to the last bit. */
    @Test
    void anEventThatBringsAnAnimalUpToDateIsFound() {
        int[] times = {0};
        Journal wrong = lived(RichDays.of(Yard.furnished().build()), DaySettings.standard(), group -> {
            if (times[0]++ % 100 == 0) {
                group.forEach(ape -> ape.advance(ape.needs().atMs() + 1));
            }
        });
        assertThrows(AssertionFailedError.class, () -> Runs.assertAlike(usual, wrong));
    }

    /** Planted mistake: one number of chance is used up. */
    @Test
    void anEventThatDrawsIsFound() {
        Journal wrong = lived(RichDays.of(Yard.furnished().build()), DaySettings.standard(), group -> group.get(2)
                .nextDecision(1));
        assertThrows(AssertionFailedError.class, () -> Runs.assertAlike(usual, wrong));
    }

    @Test
    void whatKeepersAndVisitorsDoWithoutWeightOrOutOfReachChangesNothing() {
        DaySettings day = DaySettings.standard().with(Map.of("worth.staff", 0.0, "worth.seclusion", 0.0));
        Habitat yard = Yard.furnished()
                .at("cloud", ResourceKind.FOOD, 15, 10, 19, 1)
                .at("cloud-bed", ResourceKind.NEST, 17, 10, 19, 1)
                .build();
        Keeping quiet = new Keeping(
                yard.layout().feedings(),
                List.of(),
                List.of(),
                List.of(RichDays.staff("keeper", 15, "07:30", "08:30")),
                List.of());
        Keeping busy = new Keeping(
                RichDays.oneMore(yard.layout().feedings(), new Feeding("cloud", LocalTime.of(10, 7), 900)),
                List.of(new BeddingRound("cloud-bed", LocalTime.of(11, 3), 1)),
                List.of(RichDays.closure("cloud", "09:13", "12:47"), RichDays.closure("cloud-bed", "14:01", "17:59")),
                List.of(RichDays.staff("keeper", 15, "09:31", "16:11")),
                List.of(RichDays.visitors("window", 2, "10:00", "15:00")));
        Journal before = lived(RichDays.with(yard, quiet), day, nothing -> {});
        Journal after = lived(RichDays.with(yard, busy), day, nothing -> {});
        Runs.assertAlike(before.trips(), after.trips());
        Runs.assertAlike(before.stays(), after.stays());
        Runs.assertAlike(before.reserves(), after.reserves());
        Journal minded = lived(RichDays.with(yard, busy), DaySettings.standard(), nothing -> {});
        Journal unminded = lived(RichDays.with(yard, quiet), DaySettings.standard(), nothing -> {});
        assertThrows(AssertionFailedError.class, () -> Runs.assertAlike(unminded, minded), "with weight it counts");
    }
}
