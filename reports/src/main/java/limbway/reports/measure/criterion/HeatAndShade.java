package limbway.reports.measure.criterion;

import java.util.OptionalDouble;

import limbway.sim.animal.HeatNeedSettings;
import limbway.sim.experiment.Outcome;
import limbway.sim.habitat.Passages;
import limbway.sim.habitat.Warmth;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Stay;
import limbway.sim.journal.Trip;

/** What animals of one replication bear of heat, and what the platforms give of shade on its days. */
final class HeatAndShade {

    private HeatAndShade() {}

    /** The yardstick is the same in all that is compared, whatever the animals are assumed to mind [°C]. */
    static double hotC() {
        return HeatNeedSettings.GROUP.standard().troublesFromC();
    }

    /**
     * Hours at places where the operative temperature is {@link #hotC} or more, for each animal and day; half of a trip
     * counts at either end. Empty where the weather is unknown.
     */
    static OptionalDouble hotHours(LayoutFacts facts, Outcome one) {
        Warmth warmth = facts.warmth(
                one.habitat(), one.settings().date(), one.settings().days());
        if (!warmth.isKnown()) {
            return OptionalDouble.empty();
        }
        // holds and their order are the same for all bodies
        Passages any = one.habitat().passages(one.habitat().bodies().get(0)).get(0);
        Journal journal = one.journals().get(0);
        long hotMs = 0;
        for (Stay stay : journal.stays()) {
            hotMs += hotMs(warmth, any.startAt(stay.hold()), stay.startMs(), stay.endMs());
        }
        for (Trip trip : journal.trips()) {
            long halfWayMs = (trip.startMs() + trip.endMs()) / 2;
            hotMs += hotMs(warmth, any.startAt(trip.way().holds().get(0)), trip.startMs(), halfWayMs);
            hotMs += hotMs(warmth, any.startAt(trip.toHold()), halfWayMs, trip.endMs());
        }
        double animalDays =
                (double) one.habitat().animals().size() * one.settings().days();
        return OptionalDouble.of(hotMs / DayMs.HOUR_MS / animalDays);
    }

    private static long hotMs(Warmth warmth, int start, long fromMs, long toMs) {
        long hot = 0;
        long now = fromMs;
        while (start >= 0 && now < toMs) {
            long end = Math.min(toMs, (now / warmth.stepMs() + 1) * warmth.stepMs());
            // what goes on beyond the last day is judged by its last step
            int slot = (int) Math.min(warmth.slots() - 1L, now / warmth.stepMs());
            hot += warmth.operativeC(start, slot) >= hotC() ? end - now : 0;
            now = end;
        }
        return hot;
    }

    /** Minutes a day at which fewer than two platforms lie in shade; mean over the days of the run. */
    static OptionalDouble breachMin(LayoutFacts facts, Outcome one) {
        int days = one.settings().days();
        double minutes = 0;
        for (int day = 0; day < days; day++) {
            minutes += facts.breachMinutes(
                    one.habitat().layout().enclosure(), one.settings().date().plusDays(day));
        }
        return OptionalDouble.of(minutes / days);
    }
}
