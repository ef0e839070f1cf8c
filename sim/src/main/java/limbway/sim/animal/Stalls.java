package limbway.sim.animal;

import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

import limbway.model.enclosure.Resource;
import limbway.model.enclosure.ResourceKind;

/**
 * Who uses what and who waits for what: each place serves only so many animals at once.
 *
 * <p>A stall is held while an animal eats, drinks, sleeps, or rests at a resting place, and at no other time. A stall of
 * a nest that belongs to an animal is kept for it by day. Where animals wait, a stall that is given up goes to the one
 * that has waited longest; only who drives another away comes before it.
 */
public final class Stalls {

    private final int[] stalls;
    private final boolean[] nest;
    private final List<List<Ape>> holders;
    private final Queues queues;
    private final BitSet vacated = new BitSet();
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
        holders = resources.stream().map(r -> (List<Ape>) new ArrayList<Ape>()).toList();
        queues = new Queues(stalls.length);
        owners = new int[stalls.length];
        ownersPresent = new int[stalls.length];
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
        if (ape.holdings().stall() == resource) {
            return true;
        }
        leave(ape);
        queues.quit(ape);
        hold(ape, resource);
        return true;
    }

    private void hold(Ape ape, int resource) {
        holders.get(resource).add(ape);
        ape.holdings().takeStall(resource, ape.needs().atMs());
        if (ape.holdings().nest() == resource) {
            ownersPresent[resource]++;
        }
    }

    /**
     * Gives up the stall that is held, if any.
     *
     * @param ape who
     */
    public void leave(Ape ape) {
        int held = ape.holdings().stall();
        if (held == Ape.NONE) {
            return;
        }
        holders.get(held).remove(ape);
        if (ape.holdings().nest() == held) {
            ownersPresent[held]--;
        }
        if (ape.holdings().stallSinceMs() != Holdings.UNCOUNTED) {
            queues.note(held, ape.needs().atMs() - ape.holdings().stallSinceMs());
        }
        ape.holdings().takeStall(Ape.NONE, ape.needs().atMs());
        vacated.set(held);
    }

    /**
     * Waits for a stall, behind all who wait there already; does nothing if the animal waits there.
     *
     * @param ape who; it holds no stall there
     * @param resource where it is
     */
    public void queue(Ape ape, int resource) {
        queues.join(ape, resource);
    }

    /**
     * Waits no longer.
     *
     * @param ape who
     */
    public void quit(Ape ape) {
        queues.quit(ape);
    }

    /**
     * How long an animal that waits must expect to wait on: the uses that must end before its own, by the number of stalls
     * at which they end and the mean length of a use so far, which all animals know.
     *
     * @param ape who; it waits
     * @param firstGuessMs length of a use where none has ended yet [ms]
     * @return time [ms]
     * @source mean time to the n-th of independent exponential service ends at m servers, n / (m mu); from memory
     */
    public double expectedWaitMs(Ape ape, double firstGuessMs) {
        int resource = ape.holdings().queue();
        int usable = stalls[resource] - keptFor(resource);
        int free = usable - holders.get(resource).size();
        int ends = Math.max(0, queues.ahead(ape) + 1 - free);
        return ends * queues.meanUseMs(resource, firstGuessMs) / Math.max(1, usable);
    }

    /**
     * The next animal that is called because a stall was given up since the last call; it has not taken it yet.
     *
     * @return who waits at the head of a queue and would find a stall, or nothing
     */
    public Optional<Ape> called() {
        for (int r = vacated.nextSetBit(0); r >= 0; r = vacated.nextSetBit(r + 1)) {
            Ape first = queues.first(r);
            if (first != null && isFree(first, r)) {
                return Optional.of(first);
            }
            vacated.clear(r);
        }
        return Optional.empty();
    }

    /**
     * Hands a stall from one animal to another, past all who wait.
     *
     * @param loser who holds a stall
     * @param winner who takes it
     */
    public void displace(Ape loser, Ape winner) {
        int resource = loser.holdings().stall();
        leave(loser);
        leave(winner);
        queues.quit(winner);
        hold(winner, resource);
    }

    /**
     * Makes a nest an animal's own, in place of the one it had.
     *
     * @param ape who; it holds no stall
     * @param resource number of a nest with a stall that nobody owns
     */
    public void own(Ape ape, int resource) {
        if (ape.holdings().nest() == resource) {
            return;
        }
        if (ape.holdings().nest() != Ape.NONE) {
            owners[ape.holdings().nest()]--;
            vacated.set(ape.holdings().nest());
        }
        owners[resource]++;
        ape.holdings().takeNest(resource);
    }

    /** Whether a nest has a stall that nobody owns. */
    public boolean isUnowned(int resource) {
        return nest[resource] && owners[resource] < stalls[resource];
    }

    /** Whether an animal may use a place at all: a nest only if it owns a stall there or one is nobody's. */
    public boolean isOpenTo(Ape ape, int resource) {
        return !nest[resource] || ape.holdings().nest() == resource || owners[resource] < stalls[resource];
    }

    /** Whether an animal that came now would find a stall that nobody waits for, or holds one. */
    public boolean isFree(Ape ape, int resource) {
        if (ape.holdings().stall() == resource) {
            return true;
        }
        if (ape.holdings().nest() == resource) {
            return holders.get(resource).size() < stalls[resource];
        }
        Ape first = queues.first(resource);
        return (first == null || first == ape) && holders.get(resource).size() + keptFor(resource) < stalls[resource];
    }

    private int keptFor(int resource) {
        return owners[resource] - ownersPresent[resource];
    }

    boolean isOwned(int resource) {
        return owners[resource] > 0;
    }

    List<Ape> holders(int resource) {
        return holders.get(resource);
    }
}
