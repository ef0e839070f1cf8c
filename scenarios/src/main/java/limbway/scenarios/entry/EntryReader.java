package limbway.scenarios.entry;

import java.util.Optional;

import limbway.scenarios.format.MappingNode;
import limbway.scenarios.problem.Problems;

/** Reads one entry of any list. */
public final class EntryReader {

    private final SupportReader supports;
    private final ResourceReader resources;
    private final PanelReader panels;
    private final BarrierReader barriers;
    private final HotWireReader hotWires;
    private final DoorReader doors;
    private final CoverReader covers;
    private final NeighbourReader neighbours;

    /**
     * A reader of entries.
     *
     * @param problems where mistakes go
     */
    public EntryReader(Problems problems) {
        this.supports = new SupportReader(problems);
        this.resources = new ResourceReader(problems);
        this.panels = new PanelReader(problems);
        this.barriers = new BarrierReader(problems);
        this.hotWires = new HotWireReader(problems);
        this.doors = new DoorReader(problems);
        this.covers = new CoverReader(problems);
        this.neighbours = new NeighbourReader(problems);
    }

    /**
     * Reads one entry.
     *
     * @param node the entry
     * @param section the list that it stands in
     * @param form what kind it is, one of the list's
     * @return the entry, or empty if a problem was added
     */
    public Optional<? extends Entry> read(MappingNode node, Section section, Form form) {
        return switch (section) {
            case SUPPORTS -> supports.read(node, form);
            case RESOURCES -> resources.read(node, form);
            case PANELS -> panels.read(node, form);
            case BARRIERS -> barriers.read(node, form);
            case HOT_WIRES -> hotWires.read(node, form);
            case DOORS -> doors.read(node);
            case COVERS -> covers.read(node, form);
            case NEIGHBOURS -> neighbours.read(node, form);
        };
    }
}
