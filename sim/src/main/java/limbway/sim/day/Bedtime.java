package limbway.sim.day;

import limbway.sim.animal.Ape;
import limbway.sim.animal.Nights;
import limbway.sim.animal.Stalls;
import limbway.sim.journal.Motive;

/** When animals go to bed and how they sleep. */
final class Bedtime {

    private final RunPlan plan;
    private final Diary diary;
    private final Stalls stalls;
    private final Nights nights;

    Bedtime(RunPlan plan, Diary diary, Stalls stalls) {
        this.plan = plan;
        this.diary = diary;
        this.stalls = stalls;
        this.nights = new Nights(
                plan.resources(), stalls, plan.keepersHours(), plan.settings().choice());
    }

    /** Where each animal would sleep. */
    Nights nights() {
        return nights;
    }

    /** Whether it is night for an animal, or time to set out for its nest. */
    boolean hasCome(Ape ape) {
        long now = diary.nowMs();
        return now < plan.almanac().wakeMs(Almanac.day(now)) || (timeLeftAtLeastMs(ape) <= 0 && now >= setOutMs(ape));
    }

    /** Time that is left whatever bed it would choose, which need not be looked for; 0 or less when that is not known. */
    long timeLeftAtLeastMs(Ape ape) {
        long now = diary.nowMs();
        return plan.almanac().settledMs(Almanac.day(now)) - ape.outlook().longestMs() - now;
    }

    /** Time until an animal must set out for its nest; at least one millisecond, so that the clock goes on. */
    long timeLeftMs(Ape ape) {
        return Math.max(1, setOutMs(ape) - diary.nowMs());
    }

    private long setOutMs(Ape ape) {
        long now = diary.nowMs();
        return plan.almanac().settledMs(Almanac.day(now)) - nights.travelMs(ape, ape.start(), now);
    }

    /** Sleeps at the place where a stall was taken; a nest that nobody owns becomes the animal's own. */
    void settle(Ape ape) {
        if (ape.holdings().nest() != ape.place() && stalls.isUnowned(ape.place())) {
            ape.holdings().sleepOnStall();
            stalls.leave(ape);
            stalls.own(ape, ape.place());
            stalls.take(ape, ape.place());
        }
        sleep(ape);
    }

    /** Sleeps where it is, without a stall. */
    void sleepHere(Ape ape) {
        stalls.leave(ape);
        sleep(ape);
    }

    /** Sleeps until the next morning. */
    void sleep(Ape ape) {
        ape.sleep(diary.nowMs());
        ape.needs().rest(1);
        diary.doing(ape).stay(Motive.NIGHT, diary.nowMs());
        diary.expect(ape, plan.almanac().nextWakeMs(diary.nowMs()), EventClass.WAKE);
    }
}
