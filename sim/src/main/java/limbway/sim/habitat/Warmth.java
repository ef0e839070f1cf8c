package limbway.sim.habitat;

/**
 * How hot it is at each place where an animal may stop, through the days of a run, looked up in a table of equal steps.
 */
public final class Warmth {

    /** Nobody gets hot: the scenario says nothing about the weather. */
    public static final Warmth UNKNOWN = new Warmth(0, 1, new float[0]);

    private final int starts;
    private final int slots;
    private final long stepMs;
    private final float[] operativeC;

    /**
     * A table.
     *
     * @param starts places where an animal may stop, in the order of {@link Passages}; 0 where the weather is unknown
     * @param stepMs length of a step [ms], 1 or more
     * @param operativeC operative temperature in the middle of each step [°C], all steps of the first place, then of the
     *     next
     */
    public Warmth(int starts, long stepMs, float[] operativeC) {
        if (operativeC.length != 0 && (starts < 1 || operativeC.length % starts != 0)) {
            throw new IllegalArgumentException(
                    "warmth: " + operativeC.length + " values, allowed a multiple of " + starts + " places");
        }
        this.starts = starts;
        this.slots = starts == 0 ? 0 : operativeC.length / starts;
        this.stepMs = stepMs;
        this.operativeC = operativeC.clone();
    }

    /**
     * Whether the weather is known.
     *
     * @return false where nobody gets hot
     */
    public boolean isKnown() {
        return slots > 0;
    }

    /**
     * Places where an animal may stop.
     *
     * @return 0 where the weather is unknown
     */
    public int starts() {
        return starts;
    }

    /**
     * Steps of the run.
     *
     * @return 0 where the weather is unknown
     */
    public int slots() {
        return slots;
    }

    /**
     * Length of a step.
     *
     * @return milliseconds, 1 or more
     */
    public long stepMs() {
        return stepMs;
    }

    /**
     * Operative temperature at a place.
     *
     * @param start place where an animal may stop
     * @param slot step of the run
     * @return degrees Celsius
     */
    public double operativeC(int start, int slot) {
        return operativeC[start * slots + slot];
    }
}
