package limbway.sim.day;

import java.util.List;

import limbway.model.enclosure.ResourceKind;
import limbway.model.route.Way;
import limbway.sim.animal.Ape;
import limbway.sim.animal.Appraisal;
import limbway.sim.animal.Stalls;
import limbway.sim.habitat.Passages;
import limbway.sim.journal.Motive;

/**
 * What animals do when an event of theirs comes up: decide, go, eat, drink, rest, wait, sleep.
 *
 * <p>An animal finds out whether a stall is free when it gets there. If none is, it keeps away from that place for a
 * while and decides again; if nothing else is worth going to, it waits where it is.
 */
final class Conduct {

    private final RunPlan plan;
    private final List<Ape> group;
    private final Diary diary;
    private final Larder larder;
    private final Stalls stalls;
    private final Recorder recorder;
    private final Bedtime bedtime;
    private final Bouts bouts;

    Conduct(RunPlan plan, List<Ape> group, Diary diary, Larder larder, Stalls stalls, Recorder recorder) {
        this.plan = plan;
        this.group = group;
        this.diary = diary;
        this.larder = larder;
        this.stalls = stalls;
        this.recorder = recorder;
        this.bedtime = new Bedtime(plan, diary, stalls);
        this.bouts = new Bouts(plan, diary, larder, bedtime);
    }

    /** Is asleep when the run begins. */
    void begin(Ape ape) {
        bedtime.sleep(ape);
    }

    /** Wakes, arrives, or has done what it was doing. */
    void happen(Ape ape, EventClass what) {
        ape.advance(diary.nowMs());
        Doing doing = diary.doing(ape);
        doing.expectNothing();
        if (what == EventClass.ARRIVAL) {
            ape.arrive(doing.target(), doing.targetStart());
            use(ape, doing.motive());
        } else {
            endStay(ape);
            decide(ape);
        }
    }

    /** Hears that food was put out; an animal that rests or waits, is hungry and can get there thinks again. */
    void hear(Ape ape, Delivery delivery) {
        lookRound(ape);
        boolean reached = false;
        for (Delivery.Portion portion : delivery.portions()) {
            ape.believe(portion.resource(), portion.joule());
            reached |= passages(ape).isOpen(passages(ape).passage(ape.start(), portion.resource()));
        }
        if (reached && diary.doing(ape).canBeRoused()) {
            ape.advance(diary.nowMs());
            if (ape.needs().hunger() >= plan.settings().choice().leastRelief()) {
                endStay(ape);
                decide(ape);
            }
        }
    }

    /** Ends what the animal is doing because the run ends. */
    void close(Ape ape) {
        ape.advance(diary.nowMs());
        endStay(ape);
    }

    private void decide(Ape ape) {
        long now = diary.nowMs();
        int day = Almanac.day(now);
        long decision = ape.nextDecision(day);
        lookRound(ape);
        see(ape);
        if (bedtime.hasCome(ape)) {
            int bed = bedtime.nights().bed(ape, ape.start(), now);
            if (bed == Ape.NONE) {
                bedtime.sleepHere(ape);
            } else {
                go(ape, bed, Motive.NIGHT, decision);
            }
            return;
        }
        int place = plan.appraisal()
                .choose(ape, stalls, bedtime.nights(), now, plan.almanac().settledMs(day), decision);
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
            ape.arrive(place, end);
            use(ape, motive);
            return;
        }
        long now = diary.nowMs();
        recorder.trip(ape, now, place, motive, passages(ape).ways(passage), way);
        ape.setOut(passage, off);
        ape.account().move(way);
        ape.needs().spend(way.milliJ() / 1000.0);
        ape.needs().beActive();
        diary.doing(ape).travel(motive, place, end);
        diary.expect(ape, now + Math.max(1, passages(ape).ms(passage, off)), EventClass.ARRIVAL);
        if (motive != Motive.NIGHT) {
            rouseFollowers(ape);
        }
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
                endStay(ape);
                stalls.leave(ape);
                decide(ape);
            }
        }
    }

    private void use(Ape ape, Motive motive) {
        see(ape);
        long now = diary.nowMs();
        if (plan.keepersHours().isShut(ape.place(), now)) {
            ape.bar(ape.place(), plan.keepersHours().opensAtMs(ape.place(), now));
            decide(ape);
            return;
        }
        if (motive == Motive.COMPANY && !kind(ape.place()).isRestingPlace()) {
            bouts.restHere(ape);
            return;
        }
        if (!stalls.take(ape, ape.place())) {
            refuse(ape, motive);
            return;
        }
        switch (motive) {
            case HUNGER -> {
                if (!bouts.eat(ape)) {
                    // somebody else was faster
                    decide(ape);
                }
            }
            case THIRST -> bouts.drink(ape);
            case FATIGUE, HEAT, COMFORT, COMPANY -> bouts.rest(ape, motive);
            case NIGHT -> bedtime.settle(ape);
        }
    }

    private void refuse(Ape ape, Motive motive) {
        long barredMs = Math.round(plan.settings().intake().barredMin() * 60_000);
        ape.bar(ape.place(), diary.nowMs() + Math.max(1, barredMs));
        diary.doing(ape).travel(motive, ape.place(), ape.start());
        decide(ape);
    }

    private void see(Ape ape) {
        if (kind(ape.place()) == ResourceKind.FOOD) {
            ape.believe(ape.place(), larder.leftJ(ape.place()));
        }
    }

    private ResourceKind kind(int resource) {
        return plan.resources().get(resource).kind();
    }

    private void endStay(Ape ape) {
        long now = diary.nowMs();
        if (diary.doing(ape).endsStay(now)) {
            recorder.add(diary.doing(ape)
                    .record(ape.number(), ape.place(), passages(ape).hold(ape.start()), now));
        }
    }

    /** Sees which doors are open. */
    private void lookRound(Ape ape) {
        ape.expect(plan.outlook(ape.animal().body(), diary.nowMs()));
    }

    private static Passages passages(Ape ape) {
        return ape.outlook().passages();
    }
}
