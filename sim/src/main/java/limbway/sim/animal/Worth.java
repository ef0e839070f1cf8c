package limbway.sim.animal;

import limbway.sim.habitat.KeepersHours;
import limbway.sim.habitat.PlaceCharacter;

/**
 * What places are worth beyond the needs that they still, the sum of terms that can each be set to zero.
 *
 * <p>Comfort counts for an animal that rests or sleeps there; company and what is not yet familiar count for any use.
 */
public final class Worth {

    private static final double HOUR_MS = 3_600_000;

    private final PlaceCharacter character;
    private final KeepersHours hours;
    private final WorthSettings worth;
    private final WorthScales scales;
    private final boolean counts;
    private final boolean growsFamiliar;
    private final boolean[] added;
    private final double[] fixed;
    private final int starts;
    private final double[] inView;
    private final double[] withStaff;

    /**
     * The worth of places to bodies of one reach.
     *
     * @param character what the places are like
     * @param hours what keepers and visitors do
     * @param settings how much each term counts
     * @param starts number of starts
     * @param reachM how far the body reaches [m]
     * @param added for each resource whether it was not there, or not so, in the base layout
     */
    public Worth(
            PlaceCharacter character,
            KeepersHours hours,
            DaySettings settings,
            int starts,
            double reachM,
            boolean[] added) {
        this.character = character;
        this.hours = hours;
        this.worth = settings.worth();
        this.scales = settings.scales();
        this.added = added.clone();
        counts = !worth.equals(WorthSettings.none());
        growsFamiliar = worth.familiarity() != 0 && (scales.familiarAtStart() < 1 || scales.newAtStart() < 1);
        fixed = new double[starts];
        for (int start = 0; counts && start < starts; start++) {
            double beyondReachM = Math.max(0, character.edgeM(start) - reachM);
            fixed[start] = worth.cover() * character.cover(start)
                    + worth.height() * Math.min(1, character.heightM(start) / scales.fullHeightM())
                    + worth.perimeter() * StrictMath.exp(-beyondReachM / scales.edgeM())
                    + worth.lookOut() * character.lookOut(start);
        }
        this.starts = starts;
        inView = new double[hours.stretches() * starts];
        withStaff = new double[hours.stretches() * starts];
        for (int at = 0; counts && at < inView.length; at++) {
            long clockMs = hours.startMs(at / starts);
            inView[at] = -worth.seclusion() * character.seenShare(at % starts, clockMs);
            double staffM = character.staffM(at % starts, clockMs);
            withStaff[at] = Double.isInfinite(staffM) ? 0 : worth.staff() * StrictMath.exp(-staffM / scales.staffM());
        }
    }

    /** Whether anything counts but needs and energy. */
    boolean counts() {
        return counts;
    }

    /**
     * What a place is worth to an animal that would rest there.
     *
     * @param resource number of the resource, for its bedding
     * @param start where it would be
     * @param nowMs time of the decision
     * @return worth of comfort, 0 if nothing counts
     */
    double comfort(int resource, int start, long nowMs) {
        if (!counts) {
            return 0;
        }
        int at = hours.stretch(nowMs) * starts + start;
        return fixed[start] + worth.bedding() * hours.bedding(resource, nowMs) + inView[at] + withStaff[at];
    }

    /**
     * What company and familiarity make of a place, whatever it is used for.
     *
     * @param ape who weighs it
     * @param resource number of the resource
     * @param start where it would be
     * @param nowMs time of the decision
     * @return worth, often below 0; 0 if nothing counts
     */
    double setting(Ape ape, int resource, int start, long nowMs) {
        if (!counts) {
            return 0;
        }
        double sum = ape.company().worth(ape.number(), start, character, worth, scales);
        if (growsFamiliar) {
            sum -= worth.familiarity()
                    * (1
                            - familiar(
                                    added[resource],
                                    ape.hoursAt(resource),
                                    ape.acquaintance().livedMs(nowMs)));
        }
        return sum;
    }

    /** Whether the animal that this one follows is at a place or on the way there. */
    boolean isWithLeader(Ape ape, int start) {
        return worth.following() > 0 && ape.company().isLeaderNear(ape.number(), start, character, scales.companyM());
    }

    /**
     * Who is close enough to an animal that it notices when this one goes.
     *
     * @param ape the one that goes
     * @param follower number of one that follows it
     * @return true if the two are together and following counts for something
     */
    public boolean notices(Ape ape, int follower) {
        return worth.following() > 0 && ape.company().areTogether(ape.number(), follower, scales.companyM(), character);
    }

    /**
     * What a place is worth for a night.
     *
     * @param ape the animal
     * @param resource number of the resource
     * @param start where it would be
     * @param nowMs time of the decision
     * @return comfort less what is not familiar
     */
    double sleep(Ape ape, int resource, int start, long nowMs) {
        return comfort(resource, start, nowMs)
                - (growsFamiliar
                        ? worth.familiarity()
                                * (1
                                        - familiar(
                                                added[resource],
                                                ape.hoursAt(resource),
                                                ape.acquaintance().livedMs(nowMs)))
                        : 0);
    }

    /**
     * What a change of place is worth.
     *
     * @param ape the animal
     * @param nowMs time of the decision
     * @return 0 or more, more the longer it has been where it is
     */
    double change(Ape ape, long nowMs) {
        if (worth.restlessness() == 0) {
            return 0;
        }
        double restless = 1 - StrictMath.exp(-(nowMs - ape.arrivedMs()) / (scales.restlessMin() * 60_000));
        return worth.restlessness() * restless * restless / 2;
    }

    /** How long after it came an animal looks round for another place; never, if a change is worth nothing. */
    long restlessAfterMs() {
        return worth.restlessness() == 0 ? Long.MAX_VALUE : Math.round(scales.restlessMin() * 60_000);
    }

    /**
     * By how much a way over nothing but added supports seems dearer.
     *
     * @param ape the animal
     * @param nowMs time of the decision
     * @return share of its cost, 0 or more
     */
    double strangeness(Ape ape, long nowMs) {
        return worth.strangeness() == 0 || scales.newAtStart() >= 1
                ? 0
                : worth.strangeness()
                        * (1
                                - familiar(
                                        true,
                                        ape.acquaintance().hoursOnAddedWays(),
                                        ape.acquaintance().livedMs(nowMs)));
    }

    private double familiar(boolean isAdded, double hoursThere, long livedMs) {
        double strange = 1 - (isAdded ? scales.newAtStart() : scales.familiarAtStart());
        return strange == 0
                ? 1
                : 1
                        - strange
                                * StrictMath.exp(-hoursThere / scales.familiarH()
                                        - livedMs / (24 * HOUR_MS * scales.familiarDays()));
    }
}
