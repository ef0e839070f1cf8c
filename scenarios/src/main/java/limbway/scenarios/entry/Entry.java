package limbway.scenarios.entry;

import limbway.scenarios.problem.Place;

/** Something with a name that stands in a layout, as declared; names of other entries are not yet looked up. */
public sealed interface Entry
        permits SupportEntry,
                ResourceEntry,
                PanelEntry,
                BarrierEntry,
                HotWireEntry,
                DoorEntry,
                CoverEntry,
                NeighbourEntry {

    /**
     * Its name.
     *
     * @return unique within the enclosure once that was checked
     */
    String id();

    /**
     * What it is called in messages.
     *
     * @return for example {@code pole "mast-1"}
     */
    String what();

    /**
     * Where the entry stands.
     *
     * @return place of its first key
     */
    Place place();
}
