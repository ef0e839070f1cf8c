package limbway.model.volume;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.operation.union.UnaryUnionOp;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Panel;
import limbway.model.enclosure.PanelKind;
import limbway.model.geometry.Facet;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;

/**
 * Panels of mesh that together cover the whole plan: the upper bound of the room. Where two lie one above the other, the
 * upper one counts.
 */
final class Roof {

    static final Roof NONE = new Roof(List.of());

    /** A roof may leave so much of the plan open, at its seams and its rim. */
    private static final double OPEN_SHARE = 0.01;

    /** Steeper panels are walls: the level part of the normal of a slope of 60° (assumption). */
    private static final double LEAST_UP = 0.5;

    /** A panel with the part of the plan over which it is the roof. */
    private record Part(Panel panel, Geometry plan, PlanArea area) {

        double heightM(double xM, double yM) {
            Facet facet = panel.facet();
            Point normal = facet.normal();
            Point corner = facet.corners().get(0);
            return corner.zM() - (normal.xM() * (xM - corner.xM()) + normal.yM() * (yM - corner.yM())) / normal.zM();
        }
    }

    private final List<Part> parts;

    private Roof(List<Part> parts) {
        this.parts = parts;
    }

    static Roof of(Enclosure enclosure) {
        Geometry plan = enclosure.ground().outline().toPolygon();
        List<Panel> candidates = enclosure.panels().stream()
                .filter(panel -> panel.kind() == PanelKind.MESH)
                .filter(panel -> Math.abs(panel.facet().normal().zM()) >= LEAST_UP)
                .sorted(Comparator.comparingDouble(Roof::meanZM).reversed())
                .toList();
        List<Part> parts = new ArrayList<>();
        Geometry open = plan;
        for (Panel panel : candidates) {
            Geometry below = Sheet.planOf(panel.facet());
            Geometry own = below.intersection(open);
            if (own.getArea() > 0) {
                parts.add(new Part(panel, own, new PlanArea(own)));
                open = open.difference(below);
            }
        }
        return open.getArea() <= OPEN_SHARE * plan.getArea() ? new Roof(parts) : NONE;
    }

    private static double meanZM(Panel panel) {
        return panel.corners().stream().mapToDouble(Point::zM).average().orElseThrow();
    }

    boolean isThere() {
        return !parts.isEmpty();
    }

    boolean isPartOf(Panel panel) {
        return parts.stream().anyMatch(part -> part.panel().equals(panel));
    }

    /** Height of the roof at a place; over a seam, of its highest corner [m]. */
    double heightM(double xM, double yM) {
        for (Part part : parts) {
            if (part.area().covers(xM, yM)) {
                return part.heightM(xM, yM);
            }
        }
        return highestM();
    }

    double highestM() {
        return parts.stream()
                .flatMap(part -> part.panel().corners().stream())
                .mapToDouble(Point::zM)
                .max()
                .orElse(Double.POSITIVE_INFINITY);
    }

    /** Room between height 0 and the roof over a plan [m³]; seams count as high as the highest corner. */
    double aboveZeroM3(Outline outline) {
        Geometry seams = outline.toPolygon();
        double sum = 0;
        for (Part part : parts) {
            Coordinate middle = part.plan().getCentroid().getCoordinate();
            sum += part.plan().getArea() * part.heightM(middle.x, middle.y);
        }
        List<Geometry> covered = parts.stream().map(Part::plan).toList();
        return sum + seams.difference(UnaryUnionOp.union(covered)).getArea() * highestM();
    }
}
