package limbway.sim.animal;

/** What an animal holds or waits for: a nest of its own, a stall, a place in a queue. */
public final class Holdings {

    static final long UNCOUNTED = Long.MIN_VALUE;

    private int nest = Ape.NONE;
    private int stall = Ape.NONE;
    private long stallSinceMs;
    private int queue = Ape.NONE;
    private long queueSinceMs;
    private double readiness = 1;

    Holdings() {}

    /**
     * Its own nest, kept from night to night.
     *
     * @return number of a resource, or {@link Ape#NONE}
     */
    public int nest() {
        return nest;
    }

    /**
     * The resource of which it holds a stall.
     *
     * @return number of a resource, or {@link Ape#NONE}
     */
    public int stall() {
        return stall;
    }

    /**
     * The resource for a stall of which it waits.
     *
     * @return number of a resource, or {@link Ape#NONE}
     */
    public int queue() {
        return queue;
    }

    /**
     * When it began to wait there.
     *
     * @return time [ms]
     */
    public long queueSinceMs() {
        return queueSinceMs;
    }

    /**
     * Expects to wait on where it waits.
     *
     * @param waitMs expected time [ms]
     * @param patienceMs time that lowers the worth of a place by 63 % [ms]
     */
    public void expectWait(double waitMs, double patienceMs) {
        readiness = StrictMath.exp(-waitMs / patienceMs);
    }

    /** Factor on the worth of a place for the time until a stall is had there; 1 where the animal does not wait. */
    double readiness(int resource) {
        return resource == queue ? readiness : 1;
    }

    /** Sleeps on the stall that it holds, if any: how long it holds it tells nothing of uses by day. */
    public void sleepOnStall() {
        stallSinceMs = UNCOUNTED;
    }

    long stallSinceMs() {
        return stallSinceMs;
    }

    void takeNest(int resource) {
        nest = resource;
    }

    void takeStall(int resource, long nowMs) {
        stall = resource;
        stallSinceMs = nowMs;
    }

    void takeQueue(int resource, long nowMs) {
        queue = resource;
        queueSinceMs = nowMs;
    }
}
