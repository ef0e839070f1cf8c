package limbway.sim.day;

import java.util.List;

import limbway.model.enclosure.ResourceKind;
import limbway.model.route.Way;
import limbway.sim.animal.Ape;
import limbway.sim.animal.Appraisal;
import limbway.sim.animal.Nights;
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
    private final Nights nights;
    private final Recorder recorder;
    private final Doing[] doings;

    Conduct(RunPlan plan, Diary diary, Larder larder, Stalls stalls, Recorder recorder, List<Ape> group) {
        this.plan = plan;
        this.diary = diary;
        this.larder = larder;
        this.stalls = stalls;
        this.nights = new Nights(plan.resources(), stalls);
        this.recorder = recorder;
        this.doings = group.stream().map(ape -> new Doing()).toArray(Doing[]::new);
    }

    Doing doing(Ape ape) {
        return doings[ape.number()];
    }

    /** Wakes, arrives, or has done what it was doing. */
    void happen(Ape ape, EventClass what) {
        ape.needs().advance(diary.nowMs());
        Doing doing = doing(ape);
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
        boolean reached = false;
        for (Delivery.Portion portion : delivery.portions()) {
            ape.believe(portion.resource(), portion.joule());
            reached |= passages(ape).isOpen(passages(ape).passage(ape.start(), portion.resource()));
        }
        if (reached && doing(ape).canBeRoused()) {
            ape.needs().advance(diary.nowMs());
            if (ape.needs().hunger() >= plan.settings().choice().leastRelief()) {
                endStay(ape);
                decide(ape);
            }
        }
    }

    /** Ends what the animal is doing because the run ends. */
    void close(Ape ape) {
        ape.needs().advance(diary.nowMs());
        endStay(ape);
    }

    /** Sleeps where it is until the next morning. */
    void sleep(Ape ape) {
        ape.needs().rest(1);
        doing(ape).stay(Motive.NIGHT, diary.nowMs());
        diary.expect(ape, plan.almanac().nextWakeMs(diary.nowMs()), EventClass.WAKE);
    }

    private void decide(Ape ape) {
        long now = diary.nowMs();
        int day = Almanac.day(now);
        long decision = ape.nextDecision(day);
        see(ape);
        if (now < plan.almanac().wakeMs(day) || now >= bedtimeMs(ape)) {
            int bed = nights.bed(ape, ape.start(), now);
            if (bed == Ape.NONE) {
                stalls.leave(ape);
                sleep(ape);
            } else {
                go(ape, bed, Motive.NIGHT, decision);
            }
            return;
        }
        int place =
                plan.appraisal().choose(ape, stalls, nights, now, plan.almanac().settledMs(day), decision);
        if (place == Appraisal.HERE) {
            stalls.leave(ape);
            restHere(ape);
        } else {
            go(ape, place, motive(plan.resources().get(place).kind()), decision);
        }
    }

    private static Motive motive(ResourceKind kind) {
        return switch (kind) {
            case FOOD -> Motive.HUNGER;
            case WATER -> Motive.THIRST;
            case SHADE, NEST, RETREAT -> Motive.FATIGUE;
        };
    }

    private void go(Ape ape, int place, Motive motive, long decision) {
        if (place != ape.place()) {
            stalls.leave(ape);
        }
        int passage = passages(ape).passage(ape.start(), place);
        boolean off = ape.goesOffGround(passage, decision);
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
        doing(ape).travel(motive, place, end);
        diary.expect(ape, now + Math.max(1, passages(ape).ms(passage, off)), EventClass.ARRIVAL);
    }

    private void use(Ape ape, Motive motive) {
        see(ape);
        int place = ape.place();
        if (!stalls.take(ape, place)) {
            long barredMs = Math.round(plan.settings().intake().barredMin() * 60_000);
            ape.bar(place, diary.nowMs() + Math.max(1, barredMs));
            doing(ape).travel(motive, place, ape.start());
            decide(ape);
            return;
        }
        switch (motive) {
            case HUNGER -> eat(ape);
            case THIRST -> drink(ape);
            case FATIGUE -> {
                doing(ape).stay(Motive.FATIGUE, diary.nowMs());
                rest(ape, 1);
            }
            case NIGHT -> {
                bed(ape);
                sleep(ape);
            }
        }
    }

    private void eat(Ape ape) {
        double portionJ = plan.settings().intake().portionKj() * 1000;
        double edibleJ = Math.min(portionJ, timeLeftMs(ape) * ape.body().eatingJPerMs());
        double joule = larder.take(ape.place(), Math.min(edibleJ, ape.needs().missingJ()));
        if (joule <= 0) {
            // somebody else was faster
            decide(ape);
            return;
        }
        ape.account().eat(joule);
        ape.needs().eat(joule);
        ape.needs().beActive();
        doing(ape).stay(Motive.HUNGER, diary.nowMs());
        doing(ape).eat(joule);
        doUntil(ape, diary.nowMs() + Math.round(joule / ape.body().eatingJPerMs()));
    }

    private void drink(Ape ape) {
        double ml =
                Math.min(ape.needs().missingMl(), timeLeftMs(ape) * ape.body().drinkingMlPerMs());
        ape.needs().drink(ml);
        ape.needs().beActive();
        doing(ape).stay(Motive.THIRST, diary.nowMs());
        doing(ape).drink(ml);
        doUntil(ape, diary.nowMs() + Math.round(ml / ape.body().drinkingMlPerMs()));
    }

    private void restHere(Ape ape) {
        long now = diary.nowMs();
        long barredUntilMs = ape.barredUntilMs(ape.place());
        double speed = plan.settings().rest().reliefElsewhere();
        if (barredUntilMs > now) {
            doing(ape).waitForStall(doing(ape).motive(), now);
            ape.needs().rest(speed);
            doUntil(ape, barredUntilMs);
        } else {
            doing(ape).stay(Motive.FATIGUE, now);
            rest(ape, speed);
        }
    }

    private void rest(Ape ape, double speed) {
        ape.needs().rest(speed);
        doUntil(ape, diary.nowMs() + plan.resting().lengthMs(ape, speed));
    }

    private void doUntil(Ape ape, long ms) {
        long latest = diary.nowMs() + timeLeftMs(ape);
        if (ms < latest) {
            diary.expect(ape, Math.max(diary.nowMs() + 1, ms), EventClass.BOUT_END);
        } else {
            diary.expect(ape, latest, EventClass.NEST_DEADLINE);
        }
    }

    private long timeLeftMs(Ape ape) {
        return Math.max(1, bedtimeMs(ape) - diary.nowMs());
    }

    private long bedtimeMs(Ape ape) {
        long now = diary.nowMs();
        return plan.almanac().settledMs(Almanac.day(now)) - nights.travelMs(ape, ape.start(), now);
    }

    private void bed(Ape ape) {
        if (stalls.isUnowned(ape.place())) {
            stalls.leave(ape);
            stalls.own(ape, ape.place());
            stalls.take(ape, ape.place());
        }
    }

    private void see(Ape ape) {
        if (plan.resources().get(ape.place()).kind() == ResourceKind.FOOD) {
            ape.believe(ape.place(), larder.leftJ(ape.place()));
        }
    }

    private void endStay(Ape ape) {
        long now = diary.nowMs();
        Doing doing = doing(ape);
        if (doing.endsStay(now)) {
            recorder.add(doing.record(ape.number(), ape.place(), passages(ape).hold(ape.start()), now));
        }
    }

    private static Passages passages(Ape ape) {
        return ape.outlook().passages();
    }
}
