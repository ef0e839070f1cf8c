package limbway.sim.day;

import java.time.LocalTime;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import org.junit.jupiter.api.Test;

import limbway.model.enclosure.OpenHours;
import limbway.model.enclosure.ResourceKind;
import limbway.model.energy.EnergySettings;
import limbway.model.route.ChoiceSharpness;
import limbway.model.study.Animal;
import limbway.model.study.BeddingRound;
import limbway.model.study.Closure;
import limbway.model.study.Keeping;
import limbway.model.study.Variant;
import limbway.sim.Runs;
import limbway.sim.Yard;
import limbway.sim.animal.DaySettings;
import limbway.sim.experiment.RunSettings;
import limbway.sim.habitat.Habitat;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Motive;
import limbway.sim.journal.Stay;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

class WorthOfPlacesTest {

    private static final int HIGH = 1;

    private static final DaySettings WITH = DaySettings.standard();

    /** A nest on the floor, one as good on a deck, food and water between. */
    private static Yard twoNests() {
        return new Yard()
                .mast("mast", 6, 6, 6)
                .deck("deck", 6, 6, 4)
                .at("floor", ResourceKind.NEST, 4, 10, 0, 2)
                .on("high", ResourceKind.NEST, "deck", 6.4, 6.4, 4, 2)
                .at("hatch", ResourceKind.FOOD, 8, 10, 0, 2)
                .at("trough", ResourceKind.WATER, 8, 12, 0, 2)
                .animal("A", "adult female", 1)
                .feed("hatch", "08:00", 4000)
                .feed("hatch", "14:00", 4000);
    }

    private static Habitat kept(Habitat as, List<Animal> animals, Keeping keeping, Set<String> added) {
        return new Habitat(
                new Variant("as built", "", as.layout().enclosure(), keeping, added),
                animals,
                Optional.empty(),
                EnergySettings.standard(),
                ChoiceSharpness.GROUP.standard());
    }

    private static List<Journal> run(Habitat habitat, DaySettings day, int days) {
        return Runs.all(habitat, new RunSettings(3, 20, days, Runs.DATE, 2), day)
                .journals();
    }

    private static double share(List<Journal> journals, Motive motive, int resource) {
        double there = 0;
        double all = 0;
        for (Journal journal : journals) {
            for (Stay stay : journal.stays()) {
                if (stay.motive() == motive) {
                    all += stay.endMs() - stay.startMs();
                    there += stay.resource() == resource ? stay.endMs() - stay.startMs() : 0;
                }
            }
        }
        return there / all;
    }

    @Test
    void animalsSleepWhereTheBeddingLies() {
        Habitat bare = twoNests().build();
        List<BeddingRound> rounds = List.of(new BeddingRound("high", LocalTime.of(15, 0), 1));
        Keeping bedded = new Keeping(bare.layout().feedings(), rounds, List.of(), List.of(), List.of());
        Habitat habitat = kept(bare, bare.animals(), bedded, Set.of());
        DaySettings strongly = WITH.with(Map.of("worth.bedding", 0.3));
        double without = share(run(bare, strongly, 4), Motive.NIGHT, HIGH);
        double with = share(run(habitat, strongly, 4), Motive.NIGHT, HIGH);
        assertTrue(with > without + 0.3, () -> without + " became " + with);
        assertEquals(
                share(run(bare, WITH.withoutWorth(), 4), Motive.NIGHT, HIGH),
                share(run(habitat, WITH.withoutWorth(), 4), Motive.NIGHT, HIGH));
    }

    @Test
    void whoFollowsIsWhereItsLeaderIs() {
        Habitat bare = Yard.furnished().build();
        List<Animal> apart = bare.animals();
        Animal young = apart.get(4);
        List<Animal> led = List.of(
                apart.get(0),
                apart.get(1),
                apart.get(2),
                apart.get(3),
                new Animal(young.name(), young.body(), young.rank(), Optional.of("B"), ""));
        Keeping keeping = bare.layout().keeping();
        double alone = together(run(kept(bare, apart, keeping, Set.of()), WITH, 3), 1, 4);
        double follows = together(run(kept(bare, led, keeping, Set.of()), WITH, 3), 1, 4);
        assertTrue(follows > alone + 0.1, () -> alone + " became " + follows);
    }

    /** Share of the time by day that two animals are at the same resource. */
    private static double together(List<Journal> journals, int one, int other) {
        double both = 0;
        double all = 0;
        for (Journal journal : journals) {
            for (Stay a : journal.stays()) {
                if (a.animal() != one || a.motive() == Motive.NIGHT) {
                    continue;
                }
                all += a.endMs() - a.startMs();
                for (Stay b : journal.stays()) {
                    if (b.animal() == other && b.resource() == a.resource()) {
                        both += Math.max(0, Math.min(a.endMs(), b.endMs()) - Math.max(a.startMs(), b.startMs()));
                    }
                }
            }
        }
        return both / all;
    }

    @Test
    void nobodyIsAtAPlaceWhileItIsShut() {
        Habitat bare = Yard.furnished().build();
        OpenHours hours = new OpenHours(LocalTime.of(9, 0), LocalTime.of(13, 0));
        Keeping shut = new Keeping(
                bare.layout().feedings(), List.of(), List.of(new Closure("roof-1", hours, true)), List.of(), List.of());
        int roof = bare.graph().resourceNumber("roof-1");
        for (Journal journal : run(kept(bare, bare.animals(), shut, Set.of()), WITH, 3)) {
            for (Stay stay : journal.stays()) {
                long clockMs = stay.startMs() % Almanac.DAY_MS;
                long endMs = clockMs + stay.endMs() - stay.startMs();
                boolean within = clockMs < 13 * 3_600_000L && endMs > 9 * 3_600_000L + 1;
                assertTrue(stay.resource() != roof || stay.motive() == Motive.NIGHT || !within, stay::toString);
            }
        }
    }

    @Test
    void addedStructuresAreTakenUpOverWeeks() {
        Habitat bare = twoNests().build();
        Habitat changed = kept(bare, bare.animals(), bare.layout().keeping(), Set.of("mast", "deck", "high"));
        DaySettings cautious = WITH.with(Map.of("scale.new-at-start", 0.0, "worth.familiarity", 0.3));
        List<Journal> weeks = run(changed, cautious, 60);
        double first = shareOfDays(weeks, 1, 14);
        double last = shareOfDays(weeks, 47, 60);
        assertTrue(last > first + 0.05, () -> first + " in the first two weeks, " + last + " in the last");
    }

    private static double shareOfDays(List<Journal> journals, int from, int to) {
        double high = 0;
        double all = 0;
        for (Journal journal : journals) {
            for (Stay stay : journal.stays()) {
                if (stay.day() >= from && stay.day() <= to) {
                    all += stay.endMs() - stay.startMs();
                    high += stay.resource() == HIGH ? stay.endMs() - stay.startMs() : 0;
                }
            }
        }
        return high / all;
    }

    @Test
    void daysToWarmUpAreTheFirstDaysOfALongerRunLeftOut() {
        Habitat habitat = Yard.furnished().build();
        RunSettings five = new RunSettings(3, 2, 5, Runs.DATE.minusDays(2), 1, 0);
        RunSettings three = new RunSettings(3, 2, 3, Runs.DATE, 1, 2);
        Journal whole = Runs.all(habitat, five, WITH).journals().get(0);
        Journal counted = Runs.all(habitat, three, WITH).journals().get(0);
        assertEquals(
                whole.trips().stream()
                        .filter(trip -> trip.day() > 2)
                        .map(trip -> trip.startMs() - 2 * Almanac.DAY_MS)
                        .toList(),
                counted.trips().stream().map(trip -> trip.startMs()).toList());
        assertEquals(1, counted.stays().get(0).day());
        assertEquals(0, counted.stays().get(0).startMs());
    }
}
