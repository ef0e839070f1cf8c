package limbway.sim.habitat;

/**
 * What the sun adds to the cost of each way in the eyes of an animal, by the time of day. Nothing of it is spent: it bears
 * on the choice alone.
 */
public final class SunlitWays {

    /** Sun on the way is not minded. */
    public static final SunlitWays NOT_MINDED = new SunlitWays(1, 1, 1, new float[0]);

    private final long stepMs;
    private final int slots;
    private final int daysPerSample;
    private final float[] discomfortJ;

    /**
     * A table. One day is looked at for several, because the sun moves little in that time.
     *
     * @param stepMs length of a step [ms], 1 or more
     * @param slots steps of a day, 1 or more
     * @param daysPerSample days for which one day stands, 1 or more
     * @param discomfortJ discomfort [J] by passage, then way (over the ground, off it), then sampled day, then step; empty
     *     where the sun is not minded
     */
    SunlitWays(long stepMs, int slots, int daysPerSample, float[] discomfortJ) {
        this.stepMs = stepMs;
        this.slots = slots;
        this.daysPerSample = daysPerSample;
        this.discomfortJ = discomfortJ;
    }

    /**
     * Whether the sun on the way is minded.
     *
     * @return false if every discomfort is 0
     */
    public boolean areMinded() {
        return discomfortJ.length > 0;
    }

    /**
     * The discomfort of a way.
     *
     * @param passages the passages of the table
     * @param passage passage
     * @param off true for the way off the ground
     * @param ms time of the run
     * @return energy at which the animal values the sun on its back [J], 0 or more
     */
    public double discomfortJ(Passages passages, int passage, boolean off, long ms) {
        if (!areMinded()) {
            return 0;
        }
        int samples = discomfortJ.length / (passages.count() * 2 * slots);
        long step = ms / stepMs;
        int sample = (int) Math.min(samples - 1L, step / slots / daysPerSample);
        int way = passage * 2 + (off ? 1 : 0);
        return discomfortJ[(way * samples + sample) * slots + (int) (step % slots)];
    }
}
