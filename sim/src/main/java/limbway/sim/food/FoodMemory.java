package limbway.sim.food;

/**
 * How much food an animal believes to lie where. It knows all places, and is sure of the stock only where it is.
 *
 * <p>What it saw or heard fades, exponentially in time, towards what is there at an ordinary moment; the fading is reckoned
 * when it is asked for. A visit counts once, by what is seen last: the belief moves by a share of the difference. An empty
 * place is remembered as empty. A place that was left because it yielded too little is worth nothing for a while, or until
 * food is put out there.
 */
public final class FoodMemory {

    /** Food that cannot be told from nothing [J]. */
    public static final double CRUMB_J = 1;

    private static final int NOWHERE = -1;
    private static final long UNTIL_NEWS = Long.MAX_VALUE;

    private final double[] ordinaryJ;
    private final double learning;
    private final double forgettingMs;
    private final double[] believedJ;
    private final long[] sinceMs;
    private final long[] poorUntilMs;
    private final boolean[] foundPoor;
    private int at = NOWHERE;
    private double beforeVisitJ;
    private double seenJ;

    /**
     * Believes at time 0 that nothing lies anywhere.
     *
     * @param ordinaryJ for each place what lies there at an ordinary moment [J]
     * @param learning share of the difference to what it sees that it learns in one visit, 0 to 1
     * @param forgettingMs time in which what it saw fades by 63 % [ms], above 0
     */
    public FoodMemory(double[] ordinaryJ, double learning, double forgettingMs) {
        this.ordinaryJ = ordinaryJ.clone();
        this.learning = learning;
        this.forgettingMs = forgettingMs;
        believedJ = new double[ordinaryJ.length];
        sinceMs = new long[ordinaryJ.length];
        poorUntilMs = new long[ordinaryJ.length];
        foundPoor = new boolean[ordinaryJ.length];
    }

    /**
     * What it believes can be had at a place.
     *
     * @param place number of a place
     * @param nowMs time, not before the last news [ms]
     * @return energy [J], 0 or more
     */
    public double expectedJ(int place, long nowMs) {
        if (nowMs < poorUntilMs[place]) {
            return 0;
        }
        return place == at ? seenJ : fadedJ(place, nowMs);
    }

    /**
     * Hears that food was put out.
     *
     * @param place where
     * @param joule how much [J]
     * @param nowMs when [ms]
     */
    public void hear(int place, double joule, long nowMs) {
        believedJ[place] = joule;
        sinceMs[place] = nowMs;
        poorUntilMs[place] = 0;
        foundPoor[place] = false;
        if (place == at) {
            beforeVisitJ = joule;
            seenJ += joule;
        }
    }

    /**
     * Sees what lies at the place where it is.
     *
     * @param place where
     * @param joule how much [J]
     * @param nowMs when [ms]
     */
    public void see(int place, double joule, long nowMs) {
        if (place != at) {
            beforeVisitJ = fadedJ(place, nowMs);
            at = place;
        }
        seenJ = joule;
        believedJ[place] = joule < CRUMB_J ? 0 : beforeVisitJ + learning * (joule - beforeVisitJ);
        sinceMs[place] = nowMs;
    }

    /** Is at none of these places any more. */
    public void leave() {
        at = NOWHERE;
    }

    /**
     * Takes a place for not worth going to for a while.
     *
     * @param place where
     * @param untilMs until when, unless food is put out there [ms]
     */
    public void avoid(int place, long untilMs) {
        poorUntilMs[place] = untilMs;
    }

    /**
     * Leaves a place because it yields too little: for a while at first, and until food is put out there if it was
     * found so before.
     *
     * @param place where
     * @param untilMs when it would come back the first time [ms]
     */
    public void findPoor(int place, long untilMs) {
        avoid(place, foundPoor[place] ? UNTIL_NEWS : untilMs);
        foundPoor[place] = true;
    }

    /**
     * Whether it left a place because it yielded too little, since food was put out there last.
     *
     * @param place where
     * @return true if it comes back for want of anything better
     */
    public boolean wasFoundPoor(int place) {
        return foundPoor[place];
    }

    private double fadedJ(int place, long nowMs) {
        double ordinary = ordinaryJ[place];
        double kept = StrictMath.exp(-(nowMs - sinceMs[place]) / forgettingMs);
        return ordinary + (believedJ[place] - ordinary) * kept;
    }
}
