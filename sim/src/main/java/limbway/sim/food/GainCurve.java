package limbway.sim.food;

import limbway.model.study.FeedingMethod;

/**
 * How fast food can be eaten as it grows less, in closed form.
 *
 * <p>Each curve is a speed that depends on the share that is left of what lay there when food was put out last: full speed
 * v times that share to the power 0, 1 or 2. With G put out and g eaten, that is g = v t, g = G (1 - exp(-v t / G)) and
 * g = G t / (t + G / v). All times solve these exactly. Energies in joule, times in milliseconds.
 *
 * @source exponential and hyperbolic gain within a patch: Charnov 1976, doi 10.1016/0040-5809(76)90040-X, from memory;
 *     which of them fits which way of feeding apes is an assumption
 */
public enum GainCurve {
    /** Full speed until nothing is left. */
    STEADY {
        @Override
        public double speedJPerMs(double putOutJ, double fullJPerMs, double leftJ) {
            return leftJ > 0 ? fullJPerMs : 0;
        }

        @Override
        public double timeMs(double putOutJ, double fullJPerMs, double fromJ, double toJ) {
            return (fromJ - toJ) / fullJPerMs;
        }

        @Override
        public double leftAfterJ(double putOutJ, double fullJPerMs, double fromJ, double ms) {
            return Math.max(0, fromJ - fullJPerMs * ms);
        }

        @Override
        public double leaveAtJ(double putOutJ, double fullJPerMs, double leastJPerMs) {
            return 0;
        }
    },

    /** The speed falls with the share that is left: what is left must be searched for. */
    EXPONENTIAL {
        @Override
        public double speedJPerMs(double putOutJ, double fullJPerMs, double leftJ) {
            return fullJPerMs * leftJ / putOutJ;
        }

        @Override
        public double timeMs(double putOutJ, double fullJPerMs, double fromJ, double toJ) {
            return putOutJ / fullJPerMs * StrictMath.log(fromJ / toJ);
        }

        @Override
        public double leftAfterJ(double putOutJ, double fullJPerMs, double fromJ, double ms) {
            return fromJ * StrictMath.exp(-fullJPerMs * ms / putOutJ);
        }

        @Override
        public double leaveAtJ(double putOutJ, double fullJPerMs, double leastJPerMs) {
            return putOutJ * leastJPerMs / fullJPerMs;
        }
    },

    /** The speed falls with the square of the share that is left: the best is taken first. */
    HYPERBOLIC {
        @Override
        public double speedJPerMs(double putOutJ, double fullJPerMs, double leftJ) {
            double share = leftJ / putOutJ;
            return fullJPerMs * share * share;
        }

        @Override
        public double timeMs(double putOutJ, double fullJPerMs, double fromJ, double toJ) {
            return putOutJ / fullJPerMs * (putOutJ / toJ - putOutJ / fromJ);
        }

        @Override
        public double leftAfterJ(double putOutJ, double fullJPerMs, double fromJ, double ms) {
            return putOutJ / (putOutJ / fromJ + fullJPerMs * ms / putOutJ);
        }

        @Override
        public double leaveAtJ(double putOutJ, double fullJPerMs, double leastJPerMs) {
            return putOutJ * Math.sqrt(leastJPerMs / fullJPerMs);
        }
    };

    /**
     * The curve of a way of feeding.
     *
     * @param method how food is put out
     * @return its curve; a puzzle is steady, because its handling is reckoned apart
     */
    public static GainCurve of(FeedingMethod method) {
        return switch (method) {
            case HEAP, PUZZLE -> STEADY;
            case SCATTERED -> EXPONENTIAL;
            case BROWSE -> HYPERBOLIC;
        };
    }

    /**
     * Speed of eating.
     *
     * @param putOutJ what lay there when food was put out last [J], above 0
     * @param fullJPerMs full speed of the animal [J/ms], above 0
     * @param leftJ what is left [J], 0 to putOutJ
     * @return speed [J/ms], 0 to full speed
     */
    public abstract double speedJPerMs(double putOutJ, double fullJPerMs, double leftJ);

    /**
     * Time in which so much is eaten.
     *
     * @param putOutJ what lay there when food was put out last [J], above 0
     * @param fullJPerMs full speed of the animal [J/ms], above 0
     * @param fromJ what is left at first [J], above 0
     * @param toJ what is left then [J], at most fromJ; above 0 unless the curve is steady
     * @return time [ms], 0 or more
     */
    public abstract double timeMs(double putOutJ, double fullJPerMs, double fromJ, double toJ);

    /**
     * What is left after a time.
     *
     * @param putOutJ what lay there when food was put out last [J], above 0
     * @param fullJPerMs full speed of the animal [J/ms], above 0
     * @param fromJ what is left at first [J], above 0
     * @param ms time of eating [ms], 0 or more
     * @return what is left then [J], 0 to fromJ
     */
    public abstract double leftAfterJ(double putOutJ, double fullJPerMs, double fromJ, double ms);

    /**
     * What is left when eating has become as slow as an animal puts up with.
     *
     * @param putOutJ what lay there when food was put out last [J], above 0
     * @param fullJPerMs full speed of the animal [J/ms], above 0
     * @param leastJPerMs least speed that it puts up with [J/ms], 0 or more
     * @return the stock at which it leaves [J]; more than lies there if it leaves at once, 0 for a steady curve, because
     *     nothing can be had faster than at full speed
     */
    public abstract double leaveAtJ(double putOutJ, double fullJPerMs, double leastJPerMs);
}
