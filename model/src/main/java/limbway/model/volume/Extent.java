package limbway.model.volume;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Geometry;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Ground;
import limbway.model.geometry.Facet;
import limbway.model.geometry.Terrain;
import limbway.model.geometry.Triangle;

/** The room that is counted at all: over the plan, above the ground, and below the roof or, without one, the top. */
final class Extent {

    /** Triangles are looked up in cells of about this size [m]. */
    private static final double CELL_M = 1;

    private final Ground ground;
    private final PlanArea plan;
    private final double topM;
    private final Roof roof;
    private final ShapeGrid triangles;

    private Extent(Ground ground, double topM, Roof roof) {
        this.ground = ground;
        this.plan = PlanArea.of(ground.outline());
        this.topM = Math.min(topM, roof.highestM());
        this.roof = roof;
        List<Shape> sheets = new ArrayList<>();
        for (Triangle triangle : ground.terrain().triangles()) {
            sheets.add(new Sheet(facet(triangle), Sheet.Side.BOTH));
        }
        this.triangles = new ShapeGrid(plan.box(), sheets, CELL_M);
    }

    static Extent of(Enclosure enclosure, double topM, Roof roof) {
        return new Extent(enclosure.ground(), topM, roof);
    }

    static Extent level(Ground ground, double topM) {
        return new Extent(ground, topM, Roof.NONE);
    }

    static Facet facet(Triangle triangle) {
        return new Facet(List.of(triangle.a(), triangle.b(), triangle.c()));
    }

    PlanArea plan() {
        return plan;
    }

    /** Height up to which room is counted, of a sloping roof its highest corner [m]. */
    double topM() {
        return topM;
    }

    double ceilingM(double xM, double yM) {
        return roof.isThere() ? Math.min(topM, roof.heightM(xM, yM)) : topM;
    }

    double floorM(double xM, double yM) {
        Terrain terrain = ground.terrain();
        if (terrain.isLevel()) {
            return 0;
        }
        for (int t : triangles.near(xM, yM)) {
            if (terrain.triangles().get(t).covers(xM, yM)) {
                return terrain.triangles().get(t).heightM(xM, yM);
            }
        }
        return terrain.heightM(xM, yM);
    }

    /** All room, whether within reach or not [m³]. */
    double grossM3() {
        double above = roof.isThere() ? roof.aboveZeroM3(ground.outline()) : plan.areaM2() * topM;
        return above - hillsM3();
    }

    /** What the ground fills above height 0; exact, since a plane is as high on the mean as at its centroid. */
    private double hillsM3() {
        Geometry open = ground.outline().toPolygon();
        double sum = 0;
        for (Triangle triangle : ground.terrain().triangles()) {
            for (Sheet part : Sheet.over(facet(triangle), open)) {
                sum += part.planM2() * part.middle().zM();
            }
        }
        return sum;
    }
}
