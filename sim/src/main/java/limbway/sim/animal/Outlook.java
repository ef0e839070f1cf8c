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
    private static final double WARY_PER_M = 10;

    private final Passages passages;
    private final SunlitWays sun;
    private final double tollPerJ;
    private final boolean[] open;
    private final double[] nearness;
    private final double[] toll;
    private final int[] offGroundEnd;
    private final int[] overGroundEnd;
    private final int[] likelyEnd;
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
     * @param day how places are weighed
     */
    public Outlook(Passages passages, SunlitWays sun, int resources, Physiology body, DaySettings day) {
        this.passages = passages;
        this.sun = sun;
        ChoiceSettings settings = day.choice();
        tollPerJ = settings.effortWeight() / body.hungriestJ();
        int count = passages.startCount() * resources;
        open = new boolean[count];
        nearness = new double[count];
        toll = new double[count];
        offGroundEnd = new int[count];
        overGroundEnd = new int[count];
        likelyEnd = new int[count];
        offGroundMs = new long[count];
        overGroundMs = new long[count];
        long longest = 0;
        for (int p = 0; p < count; p++) {
            likelyEnd[p] = NEVER;
            if (passages.isOpen(p)) {
                open[p] = true;
                nearness[p] = StrictMath.exp(-passages.meanMs(p) / (settings.patienceMin() * 60_000));
                toll[p] = settings.effortWeight() * passages.meanJ(p) / body.hungriestJ()
                        + day.worth().groundWariness() * passages.meanGroundM(p) / WARY_PER_M;
                offGroundEnd[p] = passages.mayGo(p, true) ? passages.end(p, true) : NEVER;
                overGroundEnd[p] = passages.mayGo(p, false) ? passages.end(p, false) : NEVER;
                offGroundMs[p] = passages.mayGo(p, true) ? passages.ms(p, true) : 0;
                overGroundMs[p] = passages.mayGo(p, false) ? passages.ms(p, false) : 0;
                likelyEnd[p] = end(p, passages.ways(p).offGroundShare() >= 0.5);
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
     * What the energy, the sun, the ground and the strangeness of the way cost in the unit of the needs.
     *
     * @param passage number of an open passage
     * @param nowMs time of setting out
     * @param strangeness by how much a way over nothing but added supports seems dearer, 0 or more
     * @return 0 or more
     */
    double toll(int passage, long nowMs, double strangeness) {
        if (!sun.areMinded() && strangeness == 0) {
            return toll[passage];
        }
        double share = offGroundShare(passage, nowMs, strangeness);
        double extraJ = (share > 0 ? share * extraJ(passage, true, nowMs, strangeness) : 0)
                + (share < 1 ? (1 - share) * extraJ(passage, false, nowMs, strangeness) : 0);
        return toll[passage] + tollPerJ * extraJ;
    }

    /**
     * How often it takes the way off the ground.
     *
     * @param passage number of an open passage
     * @param nowMs time of setting out
     * @param strangeness by how much a way over nothing but added supports seems dearer, 0 or more
     * @return share, 0 to 1
     */
    double offGroundShare(int passage, long nowMs, double strangeness) {
        if (!sun.areMinded() && strangeness == 0) {
            return passages.ways(passage).offGroundShare();
        }
        return passages.offGroundShare(
                passage, extraJ(passage, true, nowMs, strangeness), extraJ(passage, false, nowMs, strangeness));
    }

    private double extraJ(int passage, boolean off, long nowMs, double strangeness) {
        double discomfortJ = sun.discomfortJ(passages, passage, off, nowMs);
        if (strangeness == 0 || !passages.hasWay(passage, off)) {
            return discomfortJ;
        }
        return discomfortJ
                + strangeness
                        * passages.addedShare(passage, off)
                        * (passages.way(passage, off).milliJ() / 1000.0);
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
        return likelyEnd[passage];
    }

    /** How long a trip may take [ms], 0 if that way is never taken. */
    long ms(int passage, boolean off) {
        return off ? offGroundMs[passage] : overGroundMs[passage];
    }

    /** The longest that a trip may take [ms]. */
    long slowestMs(int passage) {
        return Math.max(offGroundMs[passage], overGroundMs[passage]);
    }

    /**
     * The longest that any trip may take.
     *
     * @return time [ms]
     */
    public long longestMs() {
        return longestMs;
    }
}
