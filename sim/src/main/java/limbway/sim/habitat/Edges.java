package limbway.sim.habitat;

import java.util.ArrayList;
import java.util.List;

import limbway.model.enclosure.Barrier;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Panel;
import limbway.model.enclosure.PanelKind;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;

/**
 * The edge of an enclosure in plan: where its ground ends, its barriers, and its walls of mesh. Mesh that lies flatter than
 * 45 degrees is a roof, and a net of rope is something to climb on: neither is an edge.
 */
final class Edges {

    /** Component of the normal at 45 degrees. */
    private static final double FLATTER = Math.sqrt(0.5);

    private final List<Segment> level = new ArrayList<>();

    Edges(Enclosure enclosure) {
        add(enclosure.ground().outline());
        enclosure.bounds().barriers().stream().map(Barrier::footprint).forEach(this::add);
        for (Panel panel : enclosure.panels()) {
            if (panel.kind() == PanelKind.MESH
                    && Math.abs(panel.facet().normal().zM()) < FLATTER) {
                for (Segment edge : panel.facet().edges()) {
                    level.add(new Segment(edge.a().atHeight(0), edge.b().atHeight(0)));
                }
            }
        }
    }

    private void add(Outline outline) {
        for (int i = 0; i < outline.corners().size(); i++) {
            level.add(new Segment(
                    outline.corners().get(i).atHeight(0),
                    outline.corners().get((i + 1) % outline.corners().size()).atHeight(0)));
        }
    }

    /** Level distance from a place to the nearest edge, inside and outside alike. */
    double distanceM(Point place) {
        Point foot = place.atHeight(0);
        double nearest = Double.POSITIVE_INFINITY;
        for (Segment edge : level) {
            nearest = Math.min(nearest, edge.distanceM(foot));
        }
        return nearest;
    }
}
