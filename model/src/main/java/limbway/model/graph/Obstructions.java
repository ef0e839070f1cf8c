package limbway.model.graph;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Geometry;

import limbway.model.enclosure.Barrier;
import limbway.model.enclosure.Door;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.HotWire;
import limbway.model.enclosure.Panel;
import limbway.model.enclosure.Platform;
import limbway.model.geometry.ClosestApproach;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;

/** What stands in the way of a straight move: decks, panels, barriers and live wire; doors let it through at their hours. */
final class Obstructions {

    /** The move cannot be made. */
    static final int BLOCKED = -1;

    /** The move passes no door. */
    static final int FREE = 0;

    private final List<Platform> decks;
    private final List<PanelPlane> panels = new ArrayList<>();
    private final List<List<Doorway>> doorsInPanel = new ArrayList<>();
    private final List<Prism> barriers = new ArrayList<>();
    private final List<List<Doorway>> doorsInBarrier = new ArrayList<>();
    private final List<Prism> plantings = new ArrayList<>();
    private final List<HotWire.Strand> strands = new ArrayList<>();

    private Obstructions(Enclosure enclosure) {
        decks = enclosure.platforms();
        List<Doorway> doors = doorways(enclosure.bounds().doors());
        for (Panel panel : enclosure.panels()) {
            panels.add(new PanelPlane(panel.facet()));
            doorsInPanel.add(in(doors, panel.id()));
        }
        for (Barrier barrier : enclosure.bounds().barriers()) {
            barriers.add(Prism.of(barrier.footprint(), barrier.baseZM(), barrier.topZM()));
            doorsInBarrier.add(in(doors, barrier.id()));
        }
        for (HotWire wire : enclosure.bounds().hotWires()) {
            if (wire instanceof HotWire.Strand strand) {
                strands.add(strand);
            } else if (wire instanceof HotWire.Planting planting) {
                plantings.add(
                        Prism.around(planting.footprint(), planting.baseZM(), planting.topZM(), planting.clearanceM()));
            }
        }
    }

    static Obstructions of(Enclosure enclosure) {
        return new Obstructions(enclosure);
    }

    static List<Doorway> doorways(List<Door> doors) {
        List<Doorway> doorways = new ArrayList<>();
        for (Door door : doors) {
            doorways.add(new Doorway(door, doorways.size() + 1));
        }
        return doorways;
    }

    private static List<Doorway> in(List<Doorway> doors, String id) {
        return doors.stream().filter(door -> door.in().equals(id)).toList();
    }

    /** Whether a move through the air is {@link #FREE}, {@link #BLOCKED}, or passes the door of that number. */
    int passage(Point a, Point b) {
        for (Platform deck : decks) {
            if (deck.blocks(a, b)) {
                return BLOCKED;
            }
        }
        return alongSupport(a, b);
    }

    /** The same for a move along one thing, which leads through decks. */
    int alongSupport(Point a, Point b) {
        int passed = FREE;
        for (int i = 0; i < panels.size(); i++) {
            Point through = panels.get(i).crossing(a, b);
            if (through != null) {
                passed = andThen(passed, doorAt(doorsInPanel.get(i), through));
            }
        }
        for (int i = 0; i < barriers.size() && passed != BLOCKED; i++) {
            if (barriers.get(i).meets(a, b)) {
                passed = andThen(passed, doorOf(i, a, b));
            }
        }
        return passed != BLOCKED && isLive(a, b) ? BLOCKED : passed;
    }

    /** Two doors one after the other are more than one move can pass. */
    private static int andThen(int passed, int next) {
        return passed == FREE || passed == next ? next : BLOCKED;
    }

    private static int doorAt(List<Doorway> doors, Point through) {
        for (Doorway door : doors) {
            if (door.covers(through)) {
                return door.number();
            }
        }
        return BLOCKED;
    }

    private int doorOf(int barrier, Point a, Point b) {
        if (doorsInBarrier.get(barrier).isEmpty()) {
            return BLOCKED;
        }
        Segment part = barriers.get(barrier).partAtItsHeight(a, b);
        Geometry inside = barriers.get(barrier).inside(part);
        double lowM = Math.min(part.a().zM(), part.b().zM());
        double highM = Math.max(part.a().zM(), part.b().zM());
        for (Doorway door : doorsInBarrier.get(barrier)) {
            if (door.covers(inside, lowM, highM)) {
                return door.number();
            }
        }
        return BLOCKED;
    }

    private boolean isLive(Point a, Point b) {
        for (Prism planting : plantings) {
            if (planting.meets(a, b)) {
                return true;
            }
        }
        if (strands.isEmpty()) {
            return false;
        }
        Segment way = new Segment(a, b);
        for (HotWire.Strand strand : strands) {
            for (Segment wire : strand.line().pieces()) {
                if (ClosestApproach.of(way, wire).distanceM() < strand.clearanceM()) {
                    return true;
                }
            }
        }
        return false;
    }
}
