package limbway.model.volume;

import java.util.ArrayList;
import java.util.List;

import limbway.model.enclosure.Barrier;
import limbway.model.enclosure.BarrierKind;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.HotWire;
import limbway.model.enclosure.Panel;
import limbway.model.geometry.Segment;

/**
 * What keeps a hand away.
 *
 * @param taken room that counts for nobody: the inside of walls, what lies under water, and what live wire keeps free
 * @param screens panels, walls and panes, through which no hand reaches
 */
record Stops(List<Shape> taken, List<Screen> screens) {

    static final Stops NONE = new Stops(List.of(), List.of());

    /**
     * Collects what stops a body.
     *
     * @param enclosure what stands there
     * @param used which sides of the panels the body uses
     * @param roof panels that bound the room anyway and hide nothing within it
     */
    static Stops of(Enclosure enclosure, UsedSides used, Roof roof) {
        List<Shape> taken = new ArrayList<>();
        List<Screen> screens = new ArrayList<>();
        for (Panel panel : enclosure.panels()) {
            if (!roof.isPartOf(panel)) {
                boolean front = used.front().contains(panel.id());
                boolean back = used.back().contains(panel.id());
                screens.add(new MeshScreen(new Sheet(panel.facet(), Sheet.Side.BOTH), front, back));
            }
        }
        for (Barrier barrier : enclosure.bounds().barriers()) {
            taken.add(new Block(PlanArea.of(barrier.footprint()), barrier.baseZM(), barrier.topZM(), 0));
            if (barrier.kind() != BarrierKind.WATER) {
                screens.add(new WallScreen(barrier));
            }
        }
        for (HotWire wire : enclosure.bounds().hotWires()) {
            if (wire instanceof HotWire.Planting planting) {
                taken.add(new Block(
                        PlanArea.of(planting.footprint()), planting.baseZM(), planting.topZM(), planting.clearanceM()));
            } else if (wire instanceof HotWire.Strand strand) {
                for (Segment piece : strand.line().pieces()) {
                    taken.add(new Bar(piece, strand.clearanceM()));
                }
            }
        }
        return new Stops(taken, screens);
    }
}
