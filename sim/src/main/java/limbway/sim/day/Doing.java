package limbway.sim.day;

import limbway.sim.journal.Motive;
import limbway.sim.journal.Stay;

/** What one animal is doing now, and when it will have done it. */
final class Doing {

    private static final long NEVER = Long.MAX_VALUE;

    private boolean staying;
    private Motive motive = Motive.NIGHT;
    private boolean waiting;
    private long sinceMs;
    private double eatenJ;
    private double drunkMl;
    private int target;
    private int targetStart;
    private long dueMs = NEVER;
    private EventClass due = EventClass.WAKE;

    void stay(Motive newMotive, long nowMs) {
        staying = true;
        motive = newMotive;
        waiting = false;
        sinceMs = nowMs;
        eatenJ = 0;
        drunkMl = 0;
    }

    /** Stays for what it came for, without getting it. */
    void waitForStall(Motive newMotive, long nowMs) {
        stay(newMotive, nowMs);
        waiting = true;
    }

    void eat(double joule) {
        eatenJ += joule;
    }

    void drink(double ml) {
        drunkMl += ml;
    }

    /** What was taken in hand at the start of the stay and is not yet eaten [J]. */
    double uneatenJ(long nowMs) {
        return eatenJ * shareLeft(nowMs);
    }

    /** What was to be drunk and is not yet [ml]. */
    double undrunkMl(long nowMs) {
        return drunkMl * shareLeft(nowMs);
    }

    private double shareLeft(long nowMs) {
        return staying && dueMs != NEVER ? (double) (dueMs - nowMs) / (dueMs - sinceMs) : 0;
    }

    /** Stops eating and drinking; what is left in hand is not part of the stay. */
    void stopShort(long nowMs) {
        double joule = uneatenJ(nowMs);
        drunkMl -= undrunkMl(nowMs);
        eatenJ -= joule;
    }

    void travel(Motive newMotive, int resource, int start) {
        staying = false;
        motive = newMotive;
        target = resource;
        targetStart = start;
    }

    /** Ends the stay, if the animal stays and time has passed since. */
    boolean endsStay(long nowMs) {
        boolean ended = staying && nowMs > sinceMs;
        staying = false;
        return ended;
    }

    Stay record(int animal, int place, int hold, long nowMs) {
        return new Stay(Almanac.day(sinceMs), animal, sinceMs, nowMs, place, hold, motive, waiting, eatenJ, drunkMl);
    }

    /** Whether news would make the animal think again: it rests by day, or waits. */
    boolean canBeRoused() {
        return staying
                && switch (motive) {
                    case FATIGUE, HEAT, COMFORT, COMPANY -> true;
                    case HUNGER, THIRST, NIGHT -> waiting;
                };
    }

    /** Whether it is at a place and not on its way. */
    boolean isStaying() {
        return staying;
    }

    Motive motive() {
        return motive;
    }

    int target() {
        return target;
    }

    int targetStart() {
        return targetStart;
    }

    void expect(long ms, EventClass what) {
        dueMs = ms;
        due = what;
    }

    void expectNothing() {
        dueMs = NEVER;
    }

    /** Whether an event is the one now expected; events of plans that were given up are not. */
    boolean isDue(long ms, EventClass what) {
        return dueMs == ms && due == what;
    }
}
