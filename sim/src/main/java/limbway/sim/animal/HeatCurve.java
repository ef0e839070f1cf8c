package limbway.sim.animal;

import limbway.sim.habitat.Warmth;

/**
 * How the trouble with heat, 0 to 1, changes at each place through the days of a run: towards the trouble of the place at
 * a rate of its own, in closed form within every step of the table.
 */
public final class HeatCurve {

    private final Warmth warmth;
    private final double weight;
    private final double responseMs;
    private final double wholeStep;
    private final float[] trouble;

    /**
     * The curve of an animal's heat.
     *
     * @param warmth how hot it is where and when
     * @param settings how heat troubles
     */
    public HeatCurve(Warmth warmth, HeatNeedSettings settings) {
        this.warmth = warmth;
        this.weight = settings.weight();
        this.responseMs = settings.responseMin() * 60_000;
        this.wholeStep = StrictMath.exp(-warmth.stepMs() / responseMs);
        int starts = warmth.starts();
        trouble = new float[starts * warmth.slots()];
        for (int start = 0; start < starts; start++) {
            for (int slot = 0; slot < warmth.slots(); slot++) {
                trouble[start * warmth.slots() + slot] = (float) settings.trouble(warmth.operativeC(start, slot));
            }
        }
    }

    /**
     * Whether heat counts at all.
     *
     * @return false where the weather is unknown or the weight is 0
     */
    boolean counts() {
        return warmth.isKnown() && weight > 0;
    }

    /**
     * The trouble after some time at a place.
     *
     * @param heat trouble at the beginning, 0 to 1
     * @param start place where the animal is
     * @param fromMs beginning
     * @param toMs end, not before the beginning
     * @return 0 to 1
     */
    double after(double heat, int start, long fromMs, long toMs) {
        double now = heat;
        long at = fromMs;
        while (at < toMs) {
            long next = Math.min(toMs, stepEndMs(at));
            now = approach(now, trouble(start, at), next - at);
            at = next;
        }
        return now;
    }

    /**
     * When the trouble at a place first rises to a level.
     *
     * @param heat trouble at the beginning, 0 to 1
     * @param start place where the animal is
     * @param fromMs beginning
     * @param toMs latest time that is looked at
     * @param level trouble waited for, above 0
     * @return the time at which it rises from below the level to it; {@code toMs} if it does not before
     */
    long reachesMs(double heat, int start, long fromMs, long toMs, double level) {
        double now = heat;
        long at = fromMs;
        while (at < toMs) {
            long next = Math.min(toMs, stepEndMs(at));
            double target = trouble(start, at);
            double then = approach(now, target, next - at);
            if (now < level && then >= level) {
                double passedMs = responseMs * StrictMath.log((target - now) / (target - level));
                return Math.min(next, at + (long) Math.ceil(passedMs));
            }
            now = then;
            at = next;
        }
        return toMs;
    }

    /**
     * What a stay at a place is worth for the heat alone: the trouble that it takes away, each bit counted by how great the
     * trouble is at that time; below 0 where it brings trouble.
     *
     * @param heat trouble at the beginning, 0 to 1
     * @param start place of the stay
     * @param fromMs its beginning
     * @param toMs its end
     * @return worth in the unit of the other needs
     */
    double gain(double heat, int start, long fromMs, long toMs) {
        if (!counts()) {
            return 0;
        }
        return Appraisal.gain(weight, heat, heat - after(heat, start, fromMs, toMs));
    }

    private double trouble(int start, long ms) {
        // after the last step nothing is decided any more; a stay may be looked at beyond it
        int slot = (int) Math.min(warmth.slots() - 1L, ms / warmth.stepMs());
        return trouble[start * warmth.slots() + slot];
    }

    private long stepEndMs(long ms) {
        return (ms / warmth.stepMs() + 1) * warmth.stepMs();
    }

    private double approach(double heat, double target, long ms) {
        double left = ms == warmth.stepMs() ? wholeStep : StrictMath.exp(-ms / responseMs);
        return target + (heat - target) * left;
    }
}
