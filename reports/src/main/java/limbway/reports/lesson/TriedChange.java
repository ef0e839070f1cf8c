package limbway.reports.lesson;

import java.util.List;
import java.util.Optional;

import limbway.model.enclosure.Enclosure;
import limbway.model.energy.EnergyByPart;
import limbway.model.geometry.Segment;
import limbway.model.route.Search;
import limbway.model.route.Way;

/**
 * A change of the layout that was made, and what the trip finds then in the layout compiled anew.
 *
 * @param words what is changed, a clause in the imperative
 * @param line the change as a line of a scenario; empty where it is another layout of the scenario
 * @param enclosure what stands there then
 * @param then both ways then, or that there is none
 * @param over the way over the ground then, move by move; none where there is no such way
 * @param off the way off the ground then, move by move; none where there is no such way
 */
public record TriedChange(
        String words, String line, Enclosure enclosure, Search then, List<Segment> over, List<Segment> off) {

    /** Keeps copies of the lists. */
    public TriedChange {
        over = List.copyOf(over);
        off = List.copyOf(off);
    }

    /**
     * What both ways cost then.
     *
     * @return their energies
     */
    public Costs costs() {
        return Costs.of(then);
    }

    /** Whether it is another layout, which may differ in several things. */
    boolean isLayout() {
        return line.isEmpty();
    }

    /** The energy of the way over the ground then. */
    Optional<EnergyByPart> overEnergy() {
        return then instanceof Search.Reached ways ? ways.overGround().map(Way::energy) : Optional.empty();
    }

    /** The energy of the way off the ground then. */
    Optional<EnergyByPart> offEnergy() {
        return then instanceof Search.Reached ways ? ways.offGround().map(Way::energy) : Optional.empty();
    }
}
