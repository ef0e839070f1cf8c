package limbway.sim.day;

import limbway.model.enclosure.ResourceKind;
import limbway.model.route.Way;
import limbway.sim.animal.Ape;
import limbway.sim.animal.Appraisal;
import limbway.sim.animal.Stalls;
import limbway.sim.habitat.Passages;
import limbway.sim.journal.Motive;
import limbway.sim.journal.Trip;

/**
 * What animals do when an event of theirs comes up: decide, go, eat, drink, rest, wait, sleep.
 *
 * <p>An animal finds out whether a stall is free when it gets there. If none is, it keeps away from that place for a
 * while and decides again; if nothing else is worth going to, it waits where it is.
 */
final class Conduct {

    private final RunPlan plan;
    private final Diary diary;
    private final Larder larder;
    private final Stalls stalls;
    private final Recorder recorder;
    private final Bedtime bedtime;
    private final Bouts bouts;

    Conduct(RunPlan plan, Diary diary, Larder larder, Stalls stalls, Recorder recorder) {
        this.plan = plan;
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
        if (what == EventClass.WAKE) {
            ape.wake(diary.nowMs(), plan.almanac().wakingMs(Almanac.day(diary.nowMs())));
        }
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
            ape.foraging().memory().hear(portion.resource(), portion.joule(), diary.nowMs());
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
            go(ape, place, motive(ape, place), decision);
        }
    }

    private Motive motive(Ape ape, int place) {
        return switch (plan.resources().get(place).kind()) {
            case FOOD -> Motive.HUNGER;
            case WATER -> Motive.THIRST;
            case SHADE, NEST, RETREAT ->
                plan.appraisal().restsForHeat(ape, place, diary.nowMs()) ? Motive.HEAT : Motive.FATIGUE;
        };
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
        recorder.add(new Trip(
                Almanac.day(now),
                ape.number(),
                now,
                ape.place(),
                place,
                motive,
                passages(ape).ways(passage),
                way));
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

    private void use(Ape ape, Motive motive) {
        see(ape);
        if (!stalls.take(ape, ape.place())) {
            refuse(ape, motive);
            return;
        }
        switch (motive) {
            case HUNGER -> {
                if (!bouts.eat(ape)) {
                    // somebody else was faster, or it is not worth eating
                    decide(ape);
                }
            }
            case THIRST -> bouts.drink(ape);
            case FATIGUE, HEAT -> bouts.rest(ape, motive);
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
        if (plan.resources().get(ape.place()).kind() == ResourceKind.FOOD) {
            ape.foraging().memory().see(ape.place(), larder.leftJ(ape.place()), diary.nowMs());
        }
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
