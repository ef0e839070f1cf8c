package limbway.sim.animal;

import java.util.List;

import limbway.model.enclosure.Resource;
import limbway.model.enclosure.ResourceKind;

/**
 * Who uses what: each place serves only so many animals at once, first come first served.
 *
 * <p>A stall is held while an animal eats, drinks, sleeps, or rests at a resting place, and at no other time. A stall of
 * a nest that belongs to an animal is kept for it by day.
 */
public final class Stalls {

    private final int[] stalls;
    private final boolean[] nest;
    private final int[] taken;
    private final int[] owners;
    private final int[] ownersPresent;

    /**
     * All stalls free, no nest owned.
     *
     * @param resources the resources of the enclosure
     */
    public Stalls(List<Resource> resources) {
        stalls = resources.stream().mapToInt(Resource::stalls).toArray();
        nest = new boolean[stalls.length];
        for (int r = 0; r < stalls.length; r++) {
            nest[r] = resources.get(r).kind() == ResourceKind.NEST;
        }
        taken = new int[stalls.length];
        owners = new int[stalls.length];
        ownersPresent = new int[stalls.length];
    }

    /**
     * How many animals use a place.
     *
     * @param resource number of a resource
     * @return 0 or more, never more than its stalls
     */
    public int taken(int resource) {
        return taken[resource];
    }

    /**
     * Takes a stall if one is free, and keeps one that is held already.
     *
     * @param ape who
     * @param resource where it is
     * @return false if all stalls are taken or kept for their owners
     */
    public boolean take(Ape ape, int resource) {
        if (!isFree(ape, resource)) {
            leave(ape);
            return false;
        }
        if (ape.stall() == resource) {
            return true;
        }
        leave(ape);
        taken[resource]++;
        ape.takeStall(resource);
        if (ape.nest() == resource) {
            ownersPresent[resource]++;
        }
        return true;
    }

    /**
     * Gives up the stall that is held, if any.
     *
     * @param ape who
     */
    public void leave(Ape ape) {
        int held = ape.stall();
        if (held == Ape.NONE) {
            return;
        }
        taken[held]--;
        if (ape.nest() == held) {
            ownersPresent[held]--;
        }
        ape.takeStall(Ape.NONE);
    }

    /**
     * Makes a nest an animal's own, in place of the one it had.
     *
     * @param ape who; it holds no stall
     * @param resource number of a nest with a stall that nobody owns
     */
    public void own(Ape ape, int resource) {
        if (ape.nest() == resource) {
            return;
        }
        if (ape.nest() != Ape.NONE) {
            owners[ape.nest()]--;
        }
        owners[resource]++;
        ape.takeNest(resource);
    }

    /** Whether a nest has a stall that nobody owns. */
    public boolean isUnowned(int resource) {
        return nest[resource] && owners[resource] < stalls[resource];
    }

    /** Whether an animal may use a place at all: a nest only if it owns a stall there or one is nobody's. */
    public boolean isOpenTo(Ape ape, int resource) {
        return !nest[resource] || ape.nest() == resource || owners[resource] < stalls[resource];
    }

    /** Whether an animal that came now would find a stall, or holds one. */
    public boolean isFree(Ape ape, int resource) {
        if (ape.stall() == resource) {
            return true;
        }
        int kept = ape.nest() == resource ? 0 : owners[resource] - ownersPresent[resource];
        return taken[resource] + kept < stalls[resource];
    }
}
