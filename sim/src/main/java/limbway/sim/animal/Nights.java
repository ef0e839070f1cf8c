package limbway.sim.animal;

import java.util.List;
import java.util.function.IntPredicate;

import limbway.model.enclosure.Resource;
import limbway.model.enclosure.ResourceKind;
import limbway.sim.habitat.KeepersHours;

/**
 * Where an animal sleeps.
 *
 * <p>Each animal has a nest of its own, given out by rank before the first night and kept. If it cannot reach it, it
 * takes the cheapest nest with a stall that nobody owns, else the cheapest resting place with a free stall, else it
 * sleeps where it is.
 *
 * <p>Where places are worth something beyond needs, an animal chooses each night among its own nest and those that nobody
 * owns: by comfort, familiarity and the way there, with one draw a night for each nest.
 */
public final class Nights {

    private static final long DAY_MS = 86_400_000;

    private final boolean[] restingPlace;
    private final boolean[] nest;
    private final Sites sites;
    private final Stalls stalls;
    private final KeepersHours hours;
    private final ChoiceSettings choice;

    /**
     * Nights in one group.
     *
     * @param resources the resources of the enclosure
     * @param stalls who uses what
     * @param hours when places are shut
     * @param choice how places are weighed against each other
     */
    public Nights(List<Resource> resources, Stalls stalls, KeepersHours hours, ChoiceSettings choice) {
        this.stalls = stalls;
        this.hours = hours;
        this.choice = choice;
        sites = new Sites(resources);
        nest = new boolean[resources.size()];
        restingPlace = new boolean[resources.size()];
        for (int r = 0; r < restingPlace.length; r++) {
            restingPlace[r] = resources.get(r).kind().isRestingPlace();
            nest[r] = resources.get(r).kind() == ResourceKind.NEST;
        }
    }

    /**
     * Where the animal would sleep if it went to bed from a start.
     *
     * @param ape who
     * @param start number of a start
     * @param nowMs time of the decision; places it keeps away from are left out [ms]
     * @return number of a resource, or {@link Ape#NONE} for where it is
     */
    public int bed(Ape ape, int start, long nowMs) {
        if (ape.worth().counts()) {
            int liked = liked(ape, start, nowMs);
            if (liked != Ape.NONE) {
                return liked;
            }
        }
        int own = ape.holdings().nest();
        if (own != Ape.NONE && isOpen(ape, start, own, nowMs)) {
            return own;
        }
        int nest = cheapest(ape, start, nowMs, stalls::isUnowned);
        if (nest != Ape.NONE) {
            return nest;
        }
        return cheapest(ape, start, nowMs, r -> restingPlace[r] && stalls.isOpenTo(ape, r) && stalls.isFree(ape, r));
    }

    /**
     * How long the way to bed may take.
     *
     * @param ape who
     * @param start number of a start
     * @param nowMs time of the decision [ms]
     * @return the longest time that the trip may take [ms], 0 if it would sleep where it is
     */
    public long travelMs(Ape ape, int start, long nowMs) {
        int bed = bed(ape, start, nowMs);
        return bed == Ape.NONE ? 0 : ape.outlook().slowestMs(passage(ape, start, bed));
    }

    private int liked(Ape ape, int start, long nowMs) {
        int best = Ape.NONE;
        double bestWorth = Double.NEGATIVE_INFINITY;
        double strangeness = ape.worth().strangeness(ape, nowMs);
        int day = (int) (nowMs / DAY_MS);
        for (int r = 0; r < nest.length; r++) {
            if (nest[r] && stalls.isOpenTo(ape, r) && isOpen(ape, start, r, nowMs)) {
                int end = ape.outlook().likelyEnd(passage(ape, start, r));
                double worth = ape.worth().sleep(ape, r, end, nowMs)
                        - ape.outlook().toll(passage(ape, start, r), nowMs, strangeness)
                        + (ape.holdings().nest() == r ? choice.persistence() : 0)
                        + choice.noise() * ape.draws().forNight(day, r, sites);
                if (worth > bestWorth) {
                    bestWorth = worth;
                    best = r;
                }
            }
        }
        return best;
    }

    private int cheapest(Ape ape, int start, long nowMs, IntPredicate suits) {
        int best = Ape.NONE;
        double leastToll = Double.POSITIVE_INFINITY;
        for (int r = 0; r < restingPlace.length; r++) {
            if (suits.test(r) && isOpen(ape, start, r, nowMs)) {
                double toll = ape.outlook()
                        .toll(passage(ape, start, r), nowMs, ape.worth().strangeness(ape, nowMs));
                if (toll < leastToll) {
                    leastToll = toll;
                    best = r;
                }
            }
        }
        return best;
    }

    private boolean isOpen(Ape ape, int start, int resource, long nowMs) {
        return !hours.isShut(resource, nowMs)
                && ape.barredUntilMs(resource) <= nowMs
                && ape.outlook().isOpen(passage(ape, start, resource));
    }

    private static int passage(Ape ape, int start, int resource) {
        return ape.outlook().passages().passage(start, resource);
    }
}
