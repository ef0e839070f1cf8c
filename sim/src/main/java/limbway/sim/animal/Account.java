package limbway.sim.animal;

import limbway.model.route.Way;

/** What one animal has taken in and spent on moves, kept apart from its needs so that the two can be compared. */
public final class Account {

    private double startJ;
    private long startMs;
    private double eatenJ;
    private long movedMilliJ;
    private double otherJ;
    private double otherJPerMs;
    private long otherSinceMs;

    Account(double startJ) {
        this.startJ = startJ;
    }

    /**
     * Counts from now on.
     *
     * @param reserveJ reserve now, relative to being full [J]
     * @param nowMs time [ms]
     */
    public void restart(double reserveJ, long nowMs) {
        startJ = reserveJ;
        startMs = nowMs;
        eatenJ = 0;
        movedMilliJ = 0;
        otherJ = 0;
        otherSinceMs = nowMs;
    }

    /**
     * Since when it counts.
     *
     * @return time [ms]
     */
    public long startMs() {
        return startMs;
    }

    /**
     * Books food when it is taken in hand.
     *
     * @param joule energy [J]
     */
    public void eat(double joule) {
        eatenJ += joule;
    }

    /**
     * Takes back what was booked and not eaten.
     *
     * @param joule energy [J]
     */
    public void putBack(double joule) {
        eatenJ -= joule;
    }

    /**
     * Books a whole way when it is set out on.
     *
     * @param way the way
     */
    public void move(Way way) {
        movedMilliJ += way.milliJ();
    }

    /**
     * Spends evenly on all that is not moving about, from now on.
     *
     * @param nowMs time [ms]
     * @param perMs power [J/ms]; 0 while asleep
     */
    void spendEvenly(long nowMs, double perMs) {
        otherJ = otherJ(nowMs);
        otherSinceMs = nowMs;
        otherJPerMs = perMs;
    }

    /**
     * Reserve at the start.
     *
     * @return energy relative to being full [J], 0 or less
     */
    public double startJ() {
        return startJ;
    }

    /**
     * Energy eaten.
     *
     * @return energy [J]
     */
    public double eatenJ() {
        return eatenJ;
    }

    /**
     * Energy spent on moves.
     *
     * @return energy [J]
     */
    public double movedJ() {
        return movedMilliJ / 1000.0;
    }

    /**
     * Energy spent while awake on all that is not moving about.
     *
     * @param nowMs time [ms]
     * @return energy [J]
     */
    public double otherJ(long nowMs) {
        return otherJ + otherJPerMs * (nowMs - otherSinceMs);
    }
}
