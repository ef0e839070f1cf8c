package limbway.reports.scene;

import java.util.List;

import org.locationtech.jts.algorithm.Orientation;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.LinearRing;
import org.locationtech.jts.geom.Polygon;

import limbway.model.geometry.Point;

/** An upright block over an area of the plan. */
final class Prism {

    private Prism() {}

    /**
     * A closed block.
     *
     * @param footprint what it covers; may have holes
     * @param baseZM its lower end [m]
     * @param topZM its top [m], above {@code baseZM}
     */
    static Mesh of(Polygon footprint, double baseZM, double topZM) {
        MeshBuilder mesh = new MeshBuilder();
        for (Coordinate[] corners : Triangulation.of(footprint)) {
            mesh.fan(Vectors.UP, List.of(at(corners[0], topZM), at(corners[1], topZM), at(corners[2], topZM)));
            mesh.fan(Vectors.DOWN, List.of(at(corners[0], baseZM), at(corners[2], baseZM), at(corners[1], baseZM)));
        }
        walls(mesh, footprint.getExteriorRing(), true, baseZM, topZM);
        for (int hole = 0; hole < footprint.getNumInteriorRing(); hole++) {
            walls(mesh, footprint.getInteriorRingN(hole), false, baseZM, topZM);
        }
        return mesh.triangles();
    }

    /** A level sheet that looks up. */
    static Mesh sheet(Polygon area, double zM) {
        MeshBuilder mesh = new MeshBuilder();
        for (Coordinate[] corners : Triangulation.of(area)) {
            mesh.fan(Vectors.UP, List.of(at(corners[0], zM), at(corners[1], zM), at(corners[2], zM)));
        }
        return mesh.triangles();
    }

    private static void walls(MeshBuilder mesh, LinearRing ring, boolean outer, double baseZM, double topZM) {
        Coordinate[] corners = ring.getCoordinates();
        boolean onward = Orientation.isCCW(corners) == outer;
        for (int i = 0; i + 1 < corners.length; i++) {
            Coordinate from = corners[onward ? i : i + 1];
            Coordinate to = corners[onward ? i + 1 : i];
            if (from.distance(to) > 0) {
                Point out = Vectors.unit(new Point(to.y - from.y, from.x - to.x, 0));
                mesh.fan(out, List.of(at(from, baseZM), at(to, baseZM), at(to, topZM), at(from, topZM)));
            }
        }
    }

    private static Point at(Coordinate corner, double zM) {
        return new Point(corner.x, corner.y, zM);
    }
}
