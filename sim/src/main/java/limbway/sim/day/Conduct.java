package limbway.sim.day;

import java.util.List;
import java.util.Optional;

import limbway.model.enclosure.ResourceKind;
import limbway.model.route.Way;
import limbway.sim.animal.Ape;
import limbway.sim.animal.Appraisal;
import limbway.sim.animal.Contest;
import limbway.sim.animal.Stalls;
import limbway.sim.habitat.Passages;
import limbway.sim.journal.Displacement;
import limbway.sim.journal.Motive;

/**
 * What animals do when an event of theirs comes up: decide, go, eat, drink, rest, wait, sleep.
 *
 * <p>An animal finds out whether a stall is free when it gets there. If none is, it challenges one of the holders. Who
 * loses a stall keeps away from that place for a while; who does not get one weighs whether to wait for it.
 */
final class Conduct {

    private final RunPlan plan;
    private final List<Ape> group;
    private final Diary diary;
    private final Larder larder;
    private final Stalls stalls;
    private final Contest contest;
    private final Recorder recorder;
    private final Bedtime bedtime;
    private final Bouts bouts;

    Conduct(
            RunPlan plan,
            List<Ape> group,
            Diary diary,
            Larder larder,
            Stalls stalls,
            Contest contest,
            Recorder recorder) {
        this.plan = plan;
        this.group = group;
        this.diary = diary;
        this.larder = larder;
        this.stalls = stalls;
        this.contest = contest;
        this.recorder = recorder;
        this.bedtime = new Bedtime(plan, diary, stalls);
        this.bouts = new Bouts(plan, diary, larder, bedtime, recorder);
    }

    /** Is asleep when the run begins. */
    void begin(Ape ape) {
        bedtime.sleep(ape);
        ape.holdings().sleepOnStall();
    }

    /** Wakes, arrives, or has done what it was doing. */
    void happen(Ape ape, EventClass what) {
        ape.advance(diary.nowMs());
        if (what == EventClass.WAKE) {
            ape.wake(diary.nowMs(), plan.almanac().wakingMs(Almanac.day(diary.nowMs())));
        }
        Doing doing = diary.doing(ape);
        doing.expectNothing();
        if (what == EventClass.ARRIVAL) {
            ape.arrive(doing.target(), doing.targetStart());
            use(ape, doing.motive());
        } else {
            bouts.endStay(ape);
            if (what == EventClass.BOUT_END && ape.holdings().queue() != Ape.NONE && hasWaitedLongEnough(ape)) {
                giveUpWaiting(ape);
            }
            decide(ape);
        }
        callWhoWaits();
    }

    private boolean hasWaitedLongEnough(Ape ape) {
        return diary.nowMs() - ape.holdings().queueSinceMs()
                >= plan.settings().intake().barredMs();
    }

    /** Hears that food was put out; an animal that rests or waits, is hungry and can get there thinks again. */
    void hear(Ape ape, Delivery delivery) {
        lookRound(ape);
        boolean reached = false;
        for (Delivery.Portion portion : delivery.portions()) {
            ape.foraging().memory().hear(portion.resource(), portion.joule(), diary.nowMs());
            reached |= passages(ape).isOpen(passages(ape).passage(ape.start(), portion.resource()));
        }
        if (reached && diary.doing(ape).canBeRoused()) {
            ape.advance(diary.nowMs());
            if (ape.needs().hunger() >= plan.settings().choice().leastRelief()) {
                bouts.endStay(ape);
                decide(ape);
                callWhoWaits();
            }
        }
    }

    /** Ends what the animal is doing because the run ends. */
    void close(Ape ape) {
        ape.advance(diary.nowMs());
        bouts.endStay(ape);
    }

    private void decide(Ape ape) {
        long now = diary.nowMs();
        int day = Almanac.day(now);
        long decision = ape.nextDecision(day);
        lookRound(ape);
        see(ape);
        if (bedtime.hasCome(ape)) {
            stalls.quit(ape);
            int bed = bedtime.nights().bed(ape, ape.start(), now);
            if (bed == Ape.NONE) {
                bedtime.sleepHere(ape);
            } else {
                go(ape, bed, Motive.NIGHT, decision);
            }
            return;
        }
        expectWait(ape);
        int place = plan.appraisal()
                .choose(ape, stalls, bedtime.nights(), now, plan.almanac().settledMs(day), decision);
        if (ape.holdings().queue() != Ape.NONE) {
            if (place == ape.holdings().queue()) {
                bouts.waitForStall(ape, plan.appraisal().motive(ape, place, now));
                return;
            }
            giveUpWaiting(ape);
        }
        if (place == Appraisal.HERE) {
            stalls.leave(ape);
            bouts.restHere(ape);
        } else {
            go(ape, place, plan.appraisal().motive(ape, place, now), decision);
        }
    }

    private void go(Ape ape, int place, Motive motive, long decision) {
        if (place != ape.place()) {
            stalls.leave(ape);
        }
        int passage = passages(ape).passage(ape.start(), place);
        boolean off = ape.goesOffGround(passage, decision, diary.nowMs());
        Way way = passages(ape).way(passage, off);
        int end = passages(ape).end(passage, off);
        if (way.moves().isEmpty()) {
            if (place != ape.place()) {
                ape.setOut(passage, off);
            }
            ape.arrive(place, end);
            use(ape, motive);
            return;
        }
        long now = diary.nowMs();
        recorder.trip(ape, now, place, motive, passages(ape).ways(passage), way);
        if (motive != Motive.NIGHT) {
            rouseFollowers(ape);
        }
        ape.setOut(passage, off);
        ape.account().move(way);
        ape.needs().spend(way.milliJ() / 1000.0);
        ape.needs().beActive();
        if (motive == Motive.HUNGER) {
            ape.foraging().rate().pass(-way.milliJ() / 1000.0, (double)
                    passages(ape).ms(passage, off));
        }
        diary.doing(ape).travel(motive, place, end);
        diary.expect(ape, now + Math.max(1, passages(ape).ms(passage, off)), EventClass.ARRIVAL);
    }

    /** Those who follow it and were with it see it go, and think again at the next moment. */
    private void rouseFollowers(Ape leader) {
        for (int follower : leader.company().followersOf(leader.number())) {
            Ape other = group.get(follower);
            if (diary.doing(other).canBeRoused() && leader.worth().notices(leader, follower)) {
                diary.expect(other, diary.nowMs() + 1, EventClass.BOUT_END);
            }
        }
    }

    /** A place is shut: who is there and awake must go elsewhere. */
    void shut(int resource) {
        for (Ape ape : group) {
            Doing doing = diary.doing(ape);
            if (ape.place() == resource && doing.isStaying() && doing.motive() != Motive.NIGHT) {
                ape.advance(diary.nowMs());
                bouts.breakOff(ape);
                stalls.leave(ape);
                stalls.quit(ape);
                decide(ape);
            }
        }
        callWhoWaits();
    }

    private void use(Ape ape, Motive motive) {
        see(ape);
        long now = diary.nowMs();
        if (plan.keepersHours().isShut(ape.place(), now)) {
            ape.bar(ape.place(), plan.keepersHours().opensAtMs(ape.place(), now));
            decide(ape);
            return;
        }
        boolean lies = kind(ape.place()).isRestingPlace() && stalls.isFree(ape, ape.place());
        if (motive == Motive.COMPANY && !lies) {
            bouts.restHere(ape);
            return;
        }
        if (stalls.take(ape, ape.place())) {
            begin(ape, motive);
        } else if (motive == Motive.NIGHT) {
            keepAway(ape);
            decide(ape);
        } else {
            contend(ape, motive);
        }
    }

    private void begin(Ape ape, Motive motive) {
        switch (motive) {
            case HUNGER -> {
                if (!bouts.eat(ape)) {
                    // somebody else was faster, or it is not worth eating
                    decide(ape);
                }
            }
            case THIRST -> bouts.drink(ape);
            case FATIGUE, HEAT, COMFORT, COMPANY -> bouts.rest(ape, motive);
            case NIGHT -> {
                bedtime.settle(ape);
                ape.holdings().sleepOnStall();
            }
        }
    }

    /** Challenges a holder of a stall; who does not get it stands in the queue, and thinks again. */
    private void contend(Ape ape, Motive motive) {
        Optional<Ape> holder = contest.challenged(ape, ape.place(), stalls, this::isAwake);
        if (holder.isPresent() && wins(ape, holder.get())) {
            drivesAway(ape, holder.get(), motive);
        } else {
            stalls.queue(ape, ape.place());
            decide(ape);
        }
    }

    private boolean isAwake(Ape ape) {
        return diary.doing(ape).motive() != Motive.NIGHT;
    }

    private boolean wins(Ape ape, Ape holder) {
        long now = diary.nowMs();
        Doing doing = diary.doing(holder);
        holder.advance(now);
        return contest.isWon(ape, ape.place(), holder, doing.uneatenJ(now), doing.undrunkMl(now));
    }

    private void drivesAway(Ape winner, Ape loser, Motive motive) {
        long now = diary.nowMs();
        bouts.breakOff(loser);
        stalls.displace(loser, winner);
        recorder.add(new Displacement(Almanac.day(now), now, winner.place(), winner.number(), loser.number(), motive));
        see(winner);
        begin(winner, motive);
        keepAway(loser);
        decide(loser);
    }

    /** Stalls that were given up go to those who wait, within the same moment. */
    private void callWhoWaits() {
        for (Optional<Ape> next = stalls.called(); next.isPresent(); next = stalls.called()) {
            Ape ape = next.get();
            ape.advance(diary.nowMs());
            bouts.endStay(ape);
            use(ape, diary.doing(ape).motive());
        }
    }

    private void expectWait(Ape ape) {
        if (ape.holdings().queue() != Ape.NONE) {
            double waitMs = stalls.expectedWaitMs(ape, plan.settings().intake().portionMs());
            ape.holdings().expectWait(waitMs, plan.settings().choice().patienceMin() * 60_000);
        }
    }

    private void giveUpWaiting(Ape ape) {
        stalls.quit(ape);
        keepAway(ape);
    }

    private void keepAway(Ape ape) {
        ape.bar(ape.place(), diary.nowMs() + plan.settings().intake().barredMs());
    }

    private void see(Ape ape) {
        if (kind(ape.place()) == ResourceKind.FOOD) {
            ape.foraging().memory().see(ape.place(), larder.leftJ(ape.place()), diary.nowMs());
        }
    }

    private ResourceKind kind(int resource) {
        return plan.resources().get(resource).kind();
    }

    /** Sees which doors are open. */
    private void lookRound(Ape ape) {
        ape.expect(plan.outlook(ape.number(), diary.nowMs()));
    }

    private static Passages passages(Ape ape) {
        return ape.outlook().passages();
    }
}
