package limbway.scenarios;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import limbway.scenarios.entry.PlacingEntry;
import limbway.scenarios.layout.CandidateSpot;

/**
 * What a scenario says of where places may be put.
 *
 * @param entry what it says for all layouts
 * @param candidates the candidates that are there in each layout, by its name; none if none are given
 */
public record PlacingGiven(PlacingEntry entry, Map<String, List<CandidateSpot>> candidates) {

    /** Keeps a copy of the map. */
    public PlacingGiven {
        candidates = Collections.unmodifiableMap(new LinkedHashMap<>(candidates));
    }
}
