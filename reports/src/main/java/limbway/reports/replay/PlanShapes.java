package limbway.reports.replay;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import limbway.model.enclosure.Crown;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.HotWire;
import limbway.model.enclosure.Support;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;

/** What stands there as lines and rings, for the flat drawing and for labels. */
final class PlanShapes {

    private static final int CROWN_CORNERS = 16;

    private final Enclosure enclosure;
    private final List<Map<String, Object>> outlines = new ArrayList<>();

    PlanShapes(Enclosure enclosure) {
        this.enclosure = enclosure;
    }

    /** The middle lines of all supports. */
    List<Map<String, Object>> axes() {
        List<Map<String, Object>> axes = new ArrayList<>();
        for (Support support : enclosure.supports()) {
            Map<String, Object> axis = new LinkedHashMap<>();
            axis.put("id", support.id());
            axis.put("kind", support.kind().word());
            axis.put("diameterM", support.diameterM());
            axis.put("line", PlaceGrid.millimetres(support.axis().points()));
            axes.add(axis);
        }
        return axes;
    }

    /** The rings of everything else, the ground first. */
    List<Map<String, Object>> outlines() {
        ring("ground", "ground", "ground", onGround(enclosure.ground().outline()));
        enclosure.ground().obstacles().forEach(o -> ring(o.id(), "obstacle", "obstacles", onGround(o.outline())));
        enclosure
                .bounds()
                .barriers()
                .forEach(b -> ring(b.id(), b.kind().word(), "barriers", level(b.footprint(), b.topZM())));
        enclosure.bounds().hotWires().forEach(this::wire);
        enclosure
                .bounds()
                .doors()
                .forEach(d -> line(
                        d.id(), "door", "doors", List.of(d.sill().a(), d.sill().b())));
        enclosure.platforms().forEach(p -> ring(p.id(), p.kind().word(), "platforms", level(p.outline(), p.zM())));
        enclosure.crowns().forEach(c -> ring(c.id(), "crown", "crowns", round(c)));
        enclosure.panels().forEach(p -> ring(p.id(), p.kind().word(), "panels", p.corners()));
        enclosure
                .shading()
                .covers()
                .forEach(c -> ring(c.id(), c.kind().word(), "covers", c.facet().corners()));
        enclosure
                .shading()
                .buildings()
                .forEach(b -> ring(b.id(), "building", "buildings", level(b.footprint(), b.topZM())));
        enclosure.shading().neighbours().forEach(c -> ring(c.id(), "tree beside", "neighbours", round(c)));
        return outlines;
    }

    private void wire(HotWire wire) {
        if (wire instanceof HotWire.Strand strand) {
            line(strand.id(), "live strand", "wires", strand.line().points());
        } else {
            HotWire.Planting planting = (HotWire.Planting) wire;
            ring(planting.id(), "planting", "wires", level(planting.footprint(), planting.topZM()));
        }
    }

    private void ring(String id, String kind, String group, List<Point> corners) {
        add(id, kind, group, true, corners);
    }

    private void line(String id, String kind, String group, List<Point> points) {
        add(id, kind, group, false, points);
    }

    private void add(String id, String kind, String group, boolean closed, List<Point> points) {
        Map<String, Object> outline = new LinkedHashMap<>();
        outline.put("id", id);
        outline.put("kind", kind);
        outline.put("group", group);
        outline.put("closed", closed);
        outline.put("ring", PlaceGrid.millimetres(points));
        outlines.add(outline);
    }

    private static List<Point> level(Outline outline, double zM) {
        return outline.corners().stream().map(corner -> corner.atHeight(zM)).toList();
    }

    private List<Point> onGround(Outline outline) {
        var terrain = enclosure.ground().terrain();
        return outline.corners().stream()
                .map(c -> c.atHeight(terrain.isLevel() ? 0 : terrain.heightM(c.xM(), c.yM())))
                .toList();
    }

    /** A crown at half its height. */
    private static List<Point> round(Crown crown) {
        List<Point> ring = new ArrayList<>();
        for (int corner = 0; corner < CROWN_CORNERS; corner++) {
            double angle = 2 * Math.PI * corner / CROWN_CORNERS;
            Point out = new Point(StrictMath.cos(angle), StrictMath.sin(angle), 0).times(crown.radiusM());
            ring.add(crown.foot().plus(out).atHeight((crown.baseZM() + crown.topZM()) / 2));
        }
        return ring;
    }
}
