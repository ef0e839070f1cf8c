package limbway.model.enclosure;

import java.util.List;

/**
 * What stops an animal.
 *
 * @param barriers walls, glass, water
 * @param hotWires live strands and planting behind them
 * @param doors openings in panels and barriers
 */
public record Bounds(List<Barrier> barriers, List<HotWire> hotWires, List<Door> doors) {

    /** Nothing but the edge of the ground. */
    public static final Bounds NONE = new Bounds(List.of(), List.of(), List.of());

    /** Keeps copies of the lists. */
    public Bounds {
        barriers = List.copyOf(barriers);
        hotWires = List.copyOf(hotWires);
        doors = List.copyOf(doors);
    }
}
