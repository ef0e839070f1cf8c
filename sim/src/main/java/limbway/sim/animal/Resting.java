package limbway.sim.animal;

/** How long a rest lasts: until the animal is rested, or something calls it, but neither too short nor too long. */
public final class Resting {

    private final DaySettings settings;

    /**
     * Rests under given settings.
     *
     * @param settings when a rest ends
     */
    public Resting(DaySettings settings) {
        this.settings = settings;
    }

    /**
     * Solves for the moment at which a rest ends.
     *
     * @param ape who; its needs are up to date
     * @param speed speed of recovery over that at a resting place
     * @return how long the rest lasts [ms]
     */
    public long lengthMs(Ape ape, double speed) {
        RestSettings rest = settings.rest();
        Needs needs = ape.needs();
        double endMs = rest.longestMin() * 60_000;
        if (needs.fatigue() > rest.restedFatigue()) {
            double recoveryMs = settings.needs().recoveryMin() * 60_000 / speed;
            endMs = Math.min(endMs, recoveryMs * StrictMath.log(needs.fatigue() / rest.restedFatigue()));
        } else {
            endMs = Math.min(endMs, untilRestlessMs(ape));
        }
        Physiology body = ape.body();
        endMs = Math.min(endMs, untilMs(needs.missingJ(), body.hungriestJ(), needs.spendingJPerMs()));
        endMs = Math.min(endMs, untilMs(needs.missingMl(), body.thirstiestMl(), body.waterMlPerMs()));
        endMs = Math.min(endMs, untilHotMs(ape, endMs));
        return Math.max(1, (long) Math.ceil(Math.max(endMs, rest.shortestMin() * 60_000)));
    }

    /** Time until a rested animal looks round for another place; the whole time again, if it has found none so far. */
    private static double untilRestlessMs(Ape ape) {
        long afterMs = ape.worth().restlessAfterMs();
        long leftMs = ape.arrivedMs() + afterMs - ape.needs().atMs();
        return afterMs == Long.MAX_VALUE ? Double.POSITIVE_INFINITY : (double) (leftMs > 0 ? leftMs : afterMs);
    }

    /** Time until the heat of the place calls; the longest time, if it calls already or never does. */
    private double untilHotMs(Ape ape, double longestMs) {
        HeatCurve curve = ape.heatCurve();
        if (!curve.counts()) {
            return longestMs;
        }
        long now = ape.needs().atMs();
        long until = now + (long) Math.ceil(longestMs);
        return curve.reachesMs(
                        ape.heat(), ape.start(), now, until, settings.rest().callingUrgency())
                - now;
    }

    /** Time until a need calls; never, if it calls already and the animal rests all the same. */
    private double untilMs(double missing, double greatest, double perMs) {
        double left = settings.rest().callingUrgency() * greatest - missing;
        return left > 0 ? left / perMs : Double.POSITIVE_INFINITY;
    }
}
