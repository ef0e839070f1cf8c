package limbway.model.enclosure;

import limbway.model.geometry.Outline;

/**
 * An upright block that nobody passes through, stands on or climbs: a wall, a pane, a moat.
 *
 * @param id name, unique within the enclosure
 * @param kind wall, glass or water
 * @param footprint what it covers, in plan
 * @param baseZM height of its lower end [m]
 * @param topZM height of its top [m], above {@code baseZM}; of water, its surface
 */
public record Barrier(String id, BarrierKind kind, Outline footprint, double baseZM, double topZM) {

    /**
     * Checks the heights.
     *
     * @throws IllegalArgumentException naming the barrier
     */
    public Barrier {
        if (!(topZM > baseZM)) {
            throw new IllegalArgumentException("barrier \"" + id + "\": baseZM = " + baseZM + ", topZM = " + topZM
                    + ", allowed topZM above baseZM");
        }
    }
}
