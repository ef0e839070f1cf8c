package limbway.sim.animal;

/**
 * What one animal is short of, known in closed form between two events.
 *
 * <p>Missing energy and water grow evenly, energy faster while the animal is awake. Fatigue goes to 1 while the animal is active and to 0 while it rests, both
 * exponentially. Urgencies are shares of the amount at which a need is greatest, 0 to 1.
 */
public final class Needs {

    private final Physiology body;
    private final double tiringMs;
    private final double recoveryMs;
    private long atMs;
    private double missingJ;
    private double missingMl;
    private double fatigue;
    private double recovery;
    private double awakeJPerMs;

    /**
     * Needs at the first midnight of an animal that ate and drank its fill some time before, and has slept since.
     *
     * @param body what it burns
     * @param settings how needs grow
     * @param sinceFullMs time since it was full [ms]
     */
    public Needs(Physiology body, NeedSettings settings, long sinceFullMs) {
        this.body = body;
        this.tiringMs = settings.tiringMin() * 60_000;
        this.recoveryMs = settings.recoveryMin() * 60_000;
        this.missingJ = body.restingJPerMs() * sinceFullMs;
        this.missingMl = body.waterMlPerMs() * sinceFullMs;
        this.recovery = 1;
    }

    /**
     * Lets time pass.
     *
     * @param nowMs the new time, not before the last one [ms]
     */
    public void advance(long nowMs) {
        double passedMs = nowMs - atMs;
        if (passedMs == 0) {
            return;
        }
        missingJ += spendingJPerMs() * passedMs;
        missingMl += body.waterMlPerMs() * passedMs;
        fatigue = recovery > 0
                ? fatigue * StrictMath.exp(-passedMs * recovery / recoveryMs)
                : 1 - (1 - fatigue) * StrictMath.exp(-passedMs / tiringMs);
        atMs = nowMs;
    }

    /**
     * From now on the animal spends so much besides what it spends at rest and on moves.
     *
     * @param perMs power [J/ms], 0 while asleep
     */
    void spendEvenly(double perMs) {
        awakeJPerMs = perMs;
    }

    /**
     * What it spends now besides moves.
     *
     * @return power at rest, and while awake on all that is not moving about [J/ms]
     */
    public double spendingJPerMs() {
        return body.restingJPerMs() + awakeJPerMs;
    }

    /** From now on the animal is active. */
    public void beActive() {
        recovery = 0;
    }

    /**
     * From now on the animal rests.
     *
     * @param speed speed of recovery over that at a resting place, above 0, at most 1
     */
    public void rest(double speed) {
        recovery = speed;
    }

    /**
     * Takes energy in.
     *
     * @param joule energy [J]
     */
    public void eat(double joule) {
        missingJ -= joule;
    }

    /**
     * Takes back what was booked as taken in and was not.
     *
     * @param joule energy [J]
     * @param ml water [ml]
     */
    public void putBack(double joule, double ml) {
        missingJ += joule;
        missingMl += ml;
    }

    /**
     * Spends energy on moves.
     *
     * @param joule energy [J]
     */
    public void spend(double joule) {
        missingJ += joule;
    }

    /**
     * Takes water in.
     *
     * @param ml water [ml]
     */
    public void drink(double ml) {
        missingMl -= ml;
    }

    /**
     * When these needs were last brought up to date.
     *
     * @return time [ms]
     */
    public long atMs() {
        return atMs;
    }

    /**
     * Energy missing from being full.
     *
     * @return energy [J]
     */
    public double missingJ() {
        return missingJ;
    }

    /**
     * Water missing from being full.
     *
     * @return water [ml]
     */
    public double missingMl() {
        return missingMl;
    }

    /**
     * Fatigue.
     *
     * @return 0 fresh to 1 exhausted
     */
    public double fatigue() {
        return fatigue;
    }

    /**
     * Hunger.
     *
     * @return 0 full to 1 greatest
     */
    public double hunger() {
        return share(missingJ, body.hungriestJ());
    }

    /**
     * Thirst.
     *
     * @return 0 quenched to 1 greatest
     */
    public double thirst() {
        return share(missingMl, body.thirstiestMl());
    }

    private static double share(double missing, double greatest) {
        return Math.min(1, Math.max(0, missing / greatest));
    }
}
