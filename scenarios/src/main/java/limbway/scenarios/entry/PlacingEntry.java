package limbway.scenarios.entry;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a scenario says of where places may be put.
 *
 * @param candidates where; empty if candidates are to be made along supports and on platforms
 * @param keeperReachM greatest height that a keeper reaches [m], or empty
 * @param hoist whether places are let down by a hoist, or empty
 * @param apartM least distance between two of them [m], or empty
 * @param loadKg weight of what is put up [kg], or empty
 * @param shaded whether they must lie in shade at the hours of feeding, or empty
 * @param noHotter whether they may be no hotter than the places are now, or empty
 * @param barrierM least distance from barriers [m], or empty
 */
public record PlacingEntry(
        List<Spot> candidates,
        OptionalDouble keeperReachM,
        Optional<Boolean> hoist,
        OptionalDouble apartM,
        OptionalDouble loadKg,
        Optional<Boolean> shaded,
        Optional<Boolean> noHotter,
        OptionalDouble barrierM) {

    /** Keeps a copy of the list. */
    public PlacingEntry {
        candidates = List.copyOf(candidates);
    }

    /**
     * A candidate.
     *
     * @param words where it is, as the scenario says it
     * @param where the same, understood
     */
    public record Spot(String words, PlaceWords where) {}
}
