package limbway.sim.animal;

import java.util.Arrays;

/** How well one animal knows each place, and the supports that were added, by the time that it has spent there. */
final class Acquaintance {

    private static final double HOUR_MS = 3_600_000;

    private final double[] hoursAt;
    private double hoursOnAddedWays;
    private long arrivedMs;
    private long countsFromMs;

    Acquaintance(int resources) {
        hoursAt = new double[resources];
    }

    /** Comes to another place. */
    void arrive(long nowMs) {
        arrivedMs = nowMs;
    }

    /** Leaves a place for a way that takes so long, of which a share leads over added supports. */
    void leave(int resource, long nowMs, long wayMs, double addedShare) {
        hoursAt[resource] += hoursHere(nowMs);
        arrivedMs = nowMs;
        hoursOnAddedWays += wayMs * addedShare / HOUR_MS;
    }

    /** The days begin that count. */
    void restart(long nowMs) {
        Arrays.fill(hoursAt, 0);
        hoursOnAddedWays = 0;
        countsFromMs = nowMs;
    }

    /** When it came to the place where it is, or left the one where it was last [ms]. */
    long arrivedMs() {
        return arrivedMs;
    }

    /** How long it has been at a place before it came to where it is, since the days count, all visits together [h]. */
    double hoursAt(int resource) {
        return hoursAt[resource];
    }

    /** How long it has been where it is, since the days count [h]. */
    double hoursHere(long nowMs) {
        return (nowMs - Math.max(arrivedMs, countsFromMs)) / HOUR_MS;
    }

    /** How long it has moved over added supports since the days count [h]. */
    double hoursOnAddedWays() {
        return hoursOnAddedWays;
    }

    /** How long it has lived beside places since the days count [ms]. */
    long livedMs(long nowMs) {
        return Math.max(0, nowMs - countsFromMs);
    }
}
