package limbway.sim.animal;

import limbway.sim.habitat.Passages;
import limbway.sim.habitat.SunlitWays;

/**
 * What a body expects of every passage, reckoned once so that a decision only reads it.
 *
 * <p>Which of the two ways will be taken is not yet decided when a place is weighed. Cost and time are therefore their
 * means over that choice.
 */
public final class Outlook {

    private static final int NEVER = -1;

    private final Passages passages;
    private final SunlitWays sun;
    private final double tollPerJ;
    private final boolean[] open;
    private final double[] nearness;
    private final double[] toll;
    private final int[] offGroundEnd;
    private final int[] overGroundEnd;
    private final long[] offGroundMs;
    private final long[] overGroundMs;
    private final long longestMs;

    /**
     * Reckons all passages of one body.
     *
     * @param passages its passages
     * @param sun what the sun adds to its ways
     * @param resources number of resources
     * @param body what it burns
     * @param settings how places are weighed
     */
    public Outlook(Passages passages, SunlitWays sun, int resources, Physiology body, ChoiceSettings settings) {
        this.passages = passages;
        this.sun = sun;
        tollPerJ = settings.effortWeight() / body.hungriestJ();
        int count = passages.startCount() * resources;
        open = new boolean[count];
        nearness = new double[count];
        toll = new double[count];
        offGroundEnd = new int[count];
        overGroundEnd = new int[count];
        offGroundMs = new long[count];
        overGroundMs = new long[count];
        long longest = 0;
        for (int p = 0; p < count; p++) {
            if (passages.isOpen(p)) {
                open[p] = true;
                nearness[p] = StrictMath.exp(-passages.meanMs(p) / (settings.patienceMin() * 60_000));
                toll[p] = settings.effortWeight() * passages.meanJ(p) / body.hungriestJ();
                offGroundEnd[p] = passages.mayGo(p, true) ? passages.end(p, true) : NEVER;
                overGroundEnd[p] = passages.mayGo(p, false) ? passages.end(p, false) : NEVER;
                offGroundMs[p] = passages.mayGo(p, true) ? passages.ms(p, true) : 0;
                overGroundMs[p] = passages.mayGo(p, false) ? passages.ms(p, false) : 0;
                longest = Math.max(longest, slowestMs(p));
            }
        }
        longestMs = longest;
    }

    /**
     * The passages.
     *
     * @return the ways behind these expectations
     */
    public Passages passages() {
        return passages;
    }

    boolean isOpen(int passage) {
        return open[passage];
    }

    /** Factor on the worth of what lies at the end, for the time until it is reached. */
    double nearness(int passage) {
        return nearness[passage];
    }

    /**
     * What the energy and the sun of the way cost in the unit of the needs.
     *
     * @param passage number of an open passage
     * @param nowMs time of setting out
     * @return 0 or more
     */
    double toll(int passage, long nowMs) {
        if (!sun.areMinded()) {
            return toll[passage];
        }
        double share = offGroundShare(passage, nowMs);
        double discomfortJ = (share > 0 ? share * discomfortJ(passage, true, nowMs) : 0)
                + (share < 1 ? (1 - share) * discomfortJ(passage, false, nowMs) : 0);
        return toll[passage] + tollPerJ * discomfortJ;
    }

    /**
     * How often it takes the way off the ground.
     *
     * @param passage number of an open passage
     * @param nowMs time of setting out
     * @return share, 0 to 1
     */
    double offGroundShare(int passage, long nowMs) {
        return passages.offGroundShare(passage, discomfortJ(passage, true, nowMs), discomfortJ(passage, false, nowMs));
    }

    private double discomfortJ(int passage, boolean off, long nowMs) {
        return sun.discomfortJ(passages, passage, off, nowMs);
    }

    /** Where a trip may end, or a negative number if that way is never taken. */
    int end(int passage, boolean off) {
        return off ? offGroundEnd[passage] : overGroundEnd[passage];
    }

    /**
     * Where a passage most likely ends.
     *
     * @param passage passage
     * @return place of a start; below 0 where there is no way
     */
    int likelyEnd(int passage) {
        return open[passage] ? end(passage, passages.ways(passage).offGroundShare() >= 0.5) : NEVER;
    }

    /** How long a trip may take [ms], 0 if that way is never taken. */
    long ms(int passage, boolean off) {
        return off ? offGroundMs[passage] : overGroundMs[passage];
    }

    /** The longest that a trip may take [ms]. */
    long slowestMs(int passage) {
        return Math.max(offGroundMs[passage], overGroundMs[passage]);
    }

    /** The longest that any trip may take [ms]. */
    long longestMs() {
        return longestMs;
    }
}
