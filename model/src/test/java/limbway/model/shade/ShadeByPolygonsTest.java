package limbway.model.shade;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.operation.union.UnaryUnionOp;

import limbway.model.enclosure.Cover;
import limbway.model.enclosure.CoverKind;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.Shading;
import limbway.model.geometry.Facet;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.scene.Scene;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** The shaded share of a platform by cutting shadows out of it as polygons, with JTS. */
class ShadeByPolygonsTest {

    private static final int PER_SIDE = 60;
    private static final double SIDE_M = 3;

    private final GeometryFactory factory = new GeometryFactory();

    /**
     * Opaque sheets, level and tilted, all above the platform, so that each casts one polygon. A cell of the grid can be
     * judged wrongly only where the rim of the shade crosses it. A line of length P crosses at most 2 P / c + 2 cells of side c for
     * each straight piece, and a crossed cell is wrong by less than the whole of it.
     */
    @Test
    @Tag("derived")
    void twoHundredLayoutsHaveTheShadeThatPolygonsSay() {
        SplittableRandom chance = new SplittableRandom(7);
        int partly = 0;
        double sumOfErrors = 0;
        for (int layout = 0; layout < 200; layout++) {
            List<Cover> covers = covers(chance);
            double z = chance.nextDouble(0.5, 3);
            Point sun = Shadows.sun(chance.nextDouble(8, 88), chance.nextDouble(360));
            Platform platform = new Platform("rest", Outline.rectangle(10, 10, 10 + SIDE_M, 10 + SIDE_M), z);
            ShadeScene scene = ShadeScene.of(
                    Scene.yard(24, 24).build().withShading(new Shading(covers, List.of(), List.of())),
                    ShadeSettings.standard());
            SampleGrid grid = new SampleGrid(platform, PER_SIDE);
            int dark = 0;
            for (int i = 0; i < grid.size(); i++) {
                dark += scene.beam(grid.x(i), grid.y(i), grid.z(), sun, 0) == 0 ? 1 : 0;
            }
            Geometry shade =
                    shade(covers, grid.z(), sun).intersection(platform.outline().toPolygon());
            double share = shade.getArea() / (SIDE_M * SIDE_M);
            double cellM = SIDE_M / PER_SIDE;
            double crossed = 2 * shade.getLength() / cellM + 2 * shade.getNumPoints();
            double error = Math.abs(share - (double) dark / grid.size());
            int number = layout;
            assertTrue(error <= crossed / grid.size(), () -> "layout " + number + ": wrong by " + error);
            sumOfErrors += error;
            partly += share > 0.02 && share < 0.98 ? 1 : 0;
        }
        assertTrue(partly > 60, "partly shaded layouts: " + partly);
        // far below the hard bound, as errors of crossed cells cancel: about 0.5 √(60 · 2) / 3600 = 0.0015 on the mean
        assertEquals(0, sumOfErrors / 200, 0.002);
    }

    private static List<Cover> covers(SplittableRandom chance) {
        List<Cover> covers = new ArrayList<>();
        int count = chance.nextInt(2, 7);
        for (int i = 0; i < count; i++) {
            Point at = new Point(chance.nextDouble(6, 16), chance.nextDouble(6, 16), chance.nextDouble(5, 8));
            boolean isLevel = chance.nextBoolean();
            Point u = new Point(chance.nextDouble(1, 4), chance.nextDouble(-1, 1), isLevel ? 0 : chance.nextDouble());
            Point v = new Point(chance.nextDouble(-1, 1), chance.nextDouble(1, 4), isLevel ? 0 : chance.nextDouble());
            List<Point> edge = chance.nextBoolean()
                    ? List.of(at, at.plus(u), at.plus(v))
                    : List.of(at, at.plus(u), at.plus(u).plus(v), at.plus(v));
            covers.add(new Cover("roof-" + i, CoverKind.ROOF, new Facet(edge), 0));
        }
        return covers;
    }

    private Geometry shade(List<Cover> covers, double z, Point sun) {
        List<Geometry> shadows = new ArrayList<>();
        for (Cover cover : covers) {
            List<Coordinate> ring = new ArrayList<>();
            for (Point p : cover.facet().corners()) {
                Point fallen = p.minus(sun.times((p.zM() - z) / sun.zM()));
                ring.add(new Coordinate(fallen.xM(), fallen.yM()));
            }
            ring.add(ring.get(0).copy());
            shadows.add(factory.createPolygon(ring.toArray(Coordinate[]::new)).buffer(0));
        }
        return UnaryUnionOp.union(shadows);
    }
}
