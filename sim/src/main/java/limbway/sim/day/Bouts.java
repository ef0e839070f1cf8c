package limbway.sim.day;

import limbway.sim.animal.Ape;
import limbway.sim.food.FoodMemory;
import limbway.sim.food.GainCurve;
import limbway.sim.journal.Motive;

/**
 * What animals do at a place by day, bout by bout: eat, drink, rest, wait.
 *
 * <p>Food and water are booked when they are taken in hand, at the start of the bout; the bout lasts as long as eating or
 * drinking them takes. Others who come meanwhile find only what is left; who is driven away puts the rest back. Every bout
 * ends at the latest when the animal must set out for its nest.
 */
final class Bouts {

    private static final double AT_RESTING_PLACE = 1;

    /* How slowly the hungriest eat, over what they spend meanwhile: assumption. */
    private static final double STARVING_SHARE = 0.1;

    private final RunPlan plan;
    private final Diary diary;
    private final Larder larder;
    private final Bedtime bedtime;
    private final Recorder recorder;
    private final double portionJ;

    Bouts(RunPlan plan, Diary diary, Larder larder, Bedtime bedtime, Recorder recorder) {
        this.recorder = recorder;
        this.plan = plan;
        this.diary = diary;
        this.larder = larder;
        this.bedtime = bedtime;
        this.portionJ = plan.settings().intake().portionKj() * 1000;
    }

    /** Eating more slowly than it spends is not worth it to a full animal; the hungrier, the less it minds. */
    private static double slowestJPerMs(Ape ape) {
        return ape.needs().spendingJPerMs()
                * Math.max(STARVING_SHARE, 1 - ape.needs().hunger());
    }

    /**
     * Takes a portion in hand and eats it: no more than is there, than is worth its while, than is missing from being full,
     * and than can be eaten before bedtime. If there is no such thing, it keeps away from the place for a while.
     *
     * @return false if it eats nothing
     */
    boolean eat(Ape ape) {
        int place = ape.place();
        double leftJ = larder.leftJ(place);
        double tasteJ = Math.min(leftJ, portionJ);
        if (tasteJ < FoodMemory.CRUMB_J) {
            return false;
        }
        long handlingMs = larder.handlingMs(place);
        double putOutJ = larder.putOutJ(place);
        double fullJPerMs = ape.body().eatingJPerMs();
        double leastJPerMs = ape.foraging().leastJPerMs(place, slowestJPerMs(ape));
        GainCurve curve = larder.curve(place);
        double leaveAtJ = curve.leaveAtJ(putOutJ, fullJPerMs, leastJPerMs);
        boolean tooMuchHandling = handlingMs > 0 && tasteJ <= leastJPerMs * (handlingMs + tasteJ / fullJPerMs);
        if (tooMuchHandling || leftJ - leaveAtJ < FoodMemory.CRUMB_J) {
            ape.foraging().memory().findPoor(place, comeBackMs());
            return false;
        }
        double untilJ =
                Math.max(Math.max(leaveAtJ, leftJ - tasteJ), leftJ - ape.needs().missingJ());
        double surelyMs = Math.max(0, bedtime.timeLeftAtLeastMs(ape) - handlingMs);
        if (curve.leftAfterJ(putOutJ, fullJPerMs, leftJ, surelyMs) > untilJ) {
            double eatingMs = Math.max(0, bedtime.timeLeftMs(ape) - handlingMs);
            untilJ = Math.max(untilJ, curve.leftAfterJ(putOutJ, fullJPerMs, leftJ, eatingMs));
        }
        if (leftJ - untilJ < FoodMemory.CRUMB_J) {
            ape.foraging().memory().avoid(place, comeBackMs());
            return false;
        }
        double joule = larder.take(place, leftJ - untilJ);
        double lengthMs = handlingMs + curve.timeMs(putOutJ, fullJPerMs, leftJ, untilJ);
        ape.account().eat(joule);
        ape.needs().eat(joule);
        ape.needs().beActive();
        ape.foraging().rate().pass(joule, lengthMs);
        diary.doing(ape).stay(Motive.HUNGER, diary.nowMs());
        diary.doing(ape).eat(joule);
        last(ape, Math.round(lengthMs));
        return true;
    }

    private long comeBackMs() {
        return diary.nowMs() + Math.max(1, Math.round(plan.settings().intake().barredMin() * 60_000));
    }

    /** Drinks what is missing, or what can be drunk before bedtime. */
    void drink(Ape ape) {
        double ml = ape.needs().missingMl();
        if (bedtime.timeLeftAtLeastMs(ape) * ape.body().drinkingMlPerMs() < ml) {
            ml = Math.min(ml, bedtime.timeLeftMs(ape) * ape.body().drinkingMlPerMs());
        }
        ape.needs().drink(ml);
        ape.needs().beActive();
        diary.doing(ape).stay(Motive.THIRST, diary.nowMs());
        diary.doing(ape).drink(ml);
        last(ape, Math.round(ml / ape.body().drinkingMlPerMs()));
    }

    /** Rests at a resting place. */
    void rest(Ape ape, Motive motive) {
        rest(ape, AT_RESTING_PLACE, motive);
    }

    /** Rests where it is. */
    void restHere(Ape ape) {
        rest(ape, plan.settings().rest().reliefElsewhere(), Motive.FATIGUE);
    }

    /** Waits in a queue until it is called, or has waited as long as it has patience for. */
    void waitForStall(Ape ape, Motive motive) {
        ape.needs().rest(plan.settings().rest().reliefElsewhere());
        diary.doing(ape).waitForStall(motive, diary.nowMs());
        last(ape, ape.holdings().queueSinceMs() + plan.settings().intake().barredMs() - diary.nowMs());
    }

    /** Stops before it is done: what it has not eaten yet lies at the place again. */
    void breakOff(Ape ape) {
        double joule = diary.doing(ape).uneatenJ(diary.nowMs());
        larder.putBack(ape.place(), joule);
        ape.account().putBack(joule);
        ape.foraging().rate().takeBack(joule);
        ape.needs().putBack(joule, diary.doing(ape).undrunkMl(diary.nowMs()));
        diary.doing(ape).stopShort(diary.nowMs());
        endStay(ape);
    }

    /** Takes down the stay that ends now, if the animal stayed. */
    void endStay(Ape ape) {
        long now = diary.nowMs();
        if (diary.doing(ape).endsStay(now)) {
            int hold = ape.outlook().passages().hold(ape.start());
            recorder.add(diary.doing(ape).record(ape.number(), ape.place(), hold, now));
        }
    }

    private void rest(Ape ape, double speed, Motive motive) {
        ape.needs().rest(speed);
        diary.doing(ape).stay(motive, diary.nowMs());
        last(ape, plan.resting().lengthMs(ape, speed));
    }

    private void last(Ape ape, long lengthMs) {
        long surelyMs = bedtime.timeLeftAtLeastMs(ape);
        long leftMs = lengthMs < surelyMs ? surelyMs : bedtime.timeLeftMs(ape);
        if (lengthMs < leftMs) {
            diary.expect(ape, diary.nowMs() + Math.max(1, lengthMs), EventClass.BOUT_END);
        } else {
            diary.expect(ape, diary.nowMs() + leftMs, EventClass.NEST_DEADLINE);
        }
    }
}
