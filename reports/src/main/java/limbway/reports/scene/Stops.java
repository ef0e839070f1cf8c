package limbway.reports.scene;

import java.util.List;
import java.util.Optional;

import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.Polygon;

import limbway.model.enclosure.Barrier;
import limbway.model.enclosure.BarrierKind;
import limbway.model.enclosure.Bounds;
import limbway.model.enclosure.Door;
import limbway.model.enclosure.HotWire;

/** What stops animals, as nodes. */
final class Stops {

    private static final int WIRE_SIDES = 16;

    private Stops() {}

    static List<SceneNode> groups(Bounds bounds) {
        return List.of(
                SceneNode.group(
                        "barriers",
                        bounds.barriers().stream().map(Stops::barrier).toList()),
                SceneNode.group(
                        "hot wire",
                        bounds.hotWires().stream().map(Stops::hotWire).toList()),
                SceneNode.group(
                        "doors",
                        bounds.doors().stream().map(door -> door(door, bounds)).toList()));
    }

    /** Of water the surface is drawn, which can be seen, and not the block under it. */
    private static SceneNode barrier(Barrier barrier) {
        Polygon footprint = barrier.footprint().toPolygon();
        Mesh mesh = barrier.kind() == BarrierKind.WATER
                ? Prism.sheet(footprint, barrier.topZM())
                : Prism.of(footprint, barrier.baseZM(), barrier.topZM());
        return SceneNode.thing(barrier.kind().word(), barrier.id(), new Part(mesh, Finish.of(barrier.kind())))
                .telling("base_z_m", barrier.baseZM())
                .telling("top_z_m", barrier.topZM());
    }

    private static SceneNode hotWire(HotWire wire) {
        SceneNode node;
        if (wire instanceof HotWire.Strand strand) {
            node = SceneNode.thing(
                    "live strand",
                    strand.id(),
                    new Part(Tube.around(strand.line(), WIRE_SIDES, strand.clearanceM()), Finish.KEPT_FREE),
                    new Part(Lines.of(strand.line().pieces()), Finish.WIRE));
        } else {
            node = planting((HotWire.Planting) wire);
        }
        return node.telling("clearance_m", wire.clearanceM());
    }

    /** The upright edges of the volume kept free are round, its upper and lower edges are drawn square. */
    private static SceneNode planting(HotWire.Planting planting) {
        Polygon footprint = planting.footprint().toPolygon();
        double clearanceM = planting.clearanceM();
        Geometry wider = footprint.buffer(clearanceM);
        return SceneNode.thing(
                "planting",
                planting.id(),
                new Part(Prism.of(footprint, planting.baseZM(), planting.topZM()), Finish.PLANTING),
                new Part(
                        Prism.of((Polygon) wider, planting.baseZM() - clearanceM, planting.topZM() + clearanceM),
                        Finish.KEPT_FREE));
    }

    private static SceneNode door(Door door, Bounds bounds) {
        Optional<Barrier> in = bounds.barriers().stream()
                .filter(barrier -> barrier.id().equals(door.in()))
                .findFirst();
        double sillZM = door.sill().a().zM();
        Polygon leaf = DoorLeaf.footprint(door.sill(), in);
        return SceneNode.thing(
                        "door", door.id(), new Part(Prism.of(leaf, sillZM, sillZM + door.heightM()), Finish.DOOR))
                .telling("in", door.in())
                .telling(
                        "open",
                        door.open().stream()
                                .map(hours -> hours.from() + "-" + hours.to())
                                .toList());
    }
}
