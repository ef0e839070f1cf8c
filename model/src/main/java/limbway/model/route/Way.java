package limbway.model.route;

import java.util.List;

import limbway.model.energy.EnergyByPart;

/**
 * One way through a graph for one body.
 *
 * @param holds numbers of the holds passed, start and end included; one hold where no move is needed
 * @param moves numbers of the moves made, one fewer
 * @param energy what it costs, by locomotor mode
 * @param offGroundMilliJ part of the energy spent on moves off the ground [mJ]
 * @param lengthM length of path [m]
 * @param offGroundM part of the length off the ground [m]
 * @param seconds time it takes [s]
 * @param offGroundSeconds part of the time off the ground [s]
 */
public record Way(
        List<Integer> holds,
        List<Integer> moves,
        EnergyByPart energy,
        long offGroundMilliJ,
        double lengthM,
        double offGroundM,
        double seconds,
        double offGroundSeconds) {

    /** Keeps copies of the lists. */
    public Way {
        holds = List.copyOf(holds);
        moves = List.copyOf(moves);
    }

    /**
     * Energy of the whole way.
     *
     * @return energy [mJ]
     */
    public long milliJ() {
        return energy.totalMilliJ();
    }

    /**
     * Whether the way makes a move on the ground.
     *
     * @return true if at least one move is on the ground
     */
    public boolean usesGround() {
        return offGroundMilliJ < milliJ();
    }

    /**
     * Whether the way comes back to a hold it has passed.
     *
     * @return true if a hold is met twice
     */
    public boolean hasLoop() {
        return holds.stream().distinct().count() < holds.size();
    }
}
