package limbway.reports.scene;

import java.util.List;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.Polygon;

import limbway.model.enclosure.Barrier;
import limbway.model.enclosure.BarrierKind;
import limbway.model.enclosure.Ground;
import limbway.model.geometry.Corner;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.geometry.Triangle;

/** The ground, open where there is water, whose surface would lie hidden below it. */
final class GroundSheet {

    private final MeshBuilder mesh = new MeshBuilder();
    private final Geometry water;

    private GroundSheet(Geometry water) {
        this.water = water;
    }

    static Mesh of(Ground ground, List<Barrier> barriers) {
        Geometry water = new GeometryFactory().createPolygon();
        for (Barrier barrier : barriers) {
            if (barrier.kind() == BarrierKind.WATER) {
                water = water.union(barrier.footprint().toPolygon());
            }
        }
        GroundSheet sheet = new GroundSheet(water);
        if (ground.terrain().isLevel()) {
            Triangle level = new Triangle(new Point(0, 0, 0), new Point(1, 0, 0), new Point(0, 1, 0));
            sheet.add(ground.outline().toPolygon(), level);
        } else {
            for (Triangle triangle : ground.terrain().triangles()) {
                sheet.add(plan(triangle), triangle);
            }
        }
        return sheet.mesh.triangles();
    }

    /** Adds an area of the plan, less the water, in the plane of a triangle. */
    private void add(Polygon area, Triangle plane) {
        Point across = Vectors.cross(plane.b().minus(plane.a()), plane.c().minus(plane.a()));
        Point up = Vectors.unit(across.zM() > 0 ? across : across.times(-1));
        Geometry dry = area.disjoint(water) ? area : area.difference(water);
        for (int i = 0; i < dry.getNumGeometries(); i++) {
            if (dry.getGeometryN(i) instanceof Polygon part) {
                for (Coordinate[] corners : Triangulation.of(part)) {
                    mesh.fan(up, List.of(on(plane, corners[0]), on(plane, corners[1]), on(plane, corners[2])));
                }
            }
        }
    }

    private static Point on(Triangle plane, Coordinate corner) {
        return new Point(corner.x, corner.y, plane.heightM(corner.x, corner.y));
    }

    private static Polygon plan(Triangle triangle) {
        return new Outline(List.of(corner(triangle.a()), corner(triangle.b()), corner(triangle.c()))).toPolygon();
    }

    private static Corner corner(Point point) {
        return new Corner(point.xM(), point.yM());
    }
}
