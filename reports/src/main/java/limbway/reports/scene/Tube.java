package limbway.reports.scene;

import java.util.ArrayList;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

import limbway.model.geometry.Point;
import limbway.model.geometry.Polyline;
import limbway.model.geometry.Segment;

/** A round rod along a line, its pieces mitred where the line turns. */
final class Tube {

    /** Where a line turns more sharply than this, its pieces end square: a mitre would be a spike. */
    private static final double SHARPEST_MITRE = 0.5;

    private final MeshBuilder mesh = new MeshBuilder();
    private final int sides;
    private final List<Segment> pieces;

    private Tube(Polyline line, int sides) {
        this.sides = sides;
        this.pieces =
                line.pieces().stream().filter(piece -> piece.lengthM() > 0).toList();
    }

    /**
     * A tube with flat ends.
     *
     * @param line its middle; has a length
     * @param sides number of flat sides that stand for the round, 3 or more
     * @param radiusAtM radius [m] by distance along the line [m]
     */
    static Mesh of(Polyline line, int sides, DoubleUnaryOperator radiusAtM) {
        Tube tube = new Tube(line, sides);
        double endM = tube.wall(radiusAtM);
        Segment first = tube.pieces.get(0);
        Segment last = tube.pieces.get(tube.pieces.size() - 1);
        tube.lid(first.a(), direction(first).times(-1), radiusAtM.applyAsDouble(0));
        tube.lid(last.b(), direction(last), radiusAtM.applyAsDouble(endM));
        return tube.mesh.triangles();
    }

    /** All that lies within a distance of a line, but for the outer side of its turns: a tube with round ends. */
    static Mesh around(Polyline line, int sides, double radiusM) {
        Tube tube = new Tube(line, sides);
        tube.wall(alongM -> radiusM);
        Segment first = tube.pieces.get(0);
        Segment last = tube.pieces.get(tube.pieces.size() - 1);
        tube.dome(first.a(), direction(first).times(-1), radiusM);
        tube.dome(last.b(), direction(last), radiusM);
        return tube.mesh.triangles();
    }

    private double wall(DoubleUnaryOperator radiusAtM) {
        double alongM = 0;
        for (int i = 0; i < pieces.size(); i++) {
            Segment piece = pieces.get(i);
            Point axis = direction(piece);
            double startM = radiusAtM.applyAsDouble(alongM);
            double endM = radiusAtM.applyAsDouble(alongM + piece.lengthM());
            Point before = i == 0 ? axis : mitre(pieces.get(i - 1), piece);
            Point after = i + 1 == pieces.size() ? axis : mitre(piece, pieces.get(i + 1));
            // a rod that tapers looks a little towards its thin end
            Point lean = axis.times((startM - endM) / piece.lengthM());
            int first = -1;
            for (int s = 0; s <= sides; s++) {
                Point out = outward(axis, s);
                Point normal = Vectors.unit(out.plus(lean));
                int low = mesh.vertex(piece.a().plus(cut(out.times(startM), axis, before)), normal);
                mesh.vertex(piece.b().plus(cut(out.times(endM), axis, after)), normal);
                first = first < 0 ? low : first;
            }
            for (int s = 0; s < sides; s++) {
                int low = first + 2 * s;
                mesh.triangle(low, low + 2, low + 1);
                mesh.triangle(low + 1, low + 2, low + 3);
            }
            alongM += piece.lengthM();
        }
        return alongM;
    }

    private void lid(Point middle, Point looking, double radiusM) {
        List<Point> rim = new ArrayList<>();
        for (int s = 0; s < sides; s++) {
            rim.add(middle.plus(outward(looking, s).times(radiusM)));
        }
        mesh.fan(looking, rim);
    }

    private void dome(Point middle, Point looking, double radiusM) {
        int rings = sides / 4;
        int first = -1;
        for (int ring = 0; ring <= rings; ring++) {
            double tilt = Math.PI / 2 * ring / rings;
            for (int s = 0; s <= sides; s++) {
                Point normal =
                        outward(looking, s).times(StrictMath.cos(tilt)).plus(looking.times(StrictMath.sin(tilt)));
                int at = mesh.vertex(middle.plus(normal.times(radiusM)), normal);
                first = first < 0 ? at : first;
            }
        }
        for (int ring = 0; ring < rings; ring++) {
            for (int s = 0; s < sides; s++) {
                int low = first + ring * (sides + 1) + s;
                int high = low + sides + 1;
                mesh.triangle(low, low + 1, high);
                if (ring + 1 < rings) {
                    mesh.triangle(high, low + 1, high + 1);
                }
            }
        }
    }

    /** Side {@code s} of the round, anticlockwise about the axis. */
    private Point outward(Point axis, int s) {
        double angle = 2 * Math.PI * (s % sides) / sides;
        Point u = Vectors.across(axis);
        Point w = Vectors.cross(axis, u);
        return u.times(StrictMath.cos(angle)).plus(w.times(StrictMath.sin(angle)));
    }

    /** Slides a point of the rim along the axis until it lies in the plane of the cut. */
    private static Point cut(Point rim, Point axis, Point plane) {
        return rim.minus(axis.times(rim.dot(plane) / axis.dot(plane)));
    }

    private static Point mitre(Segment before, Segment after) {
        Point a = direction(before);
        Point b = direction(after);
        return a.dot(b) < -SHARPEST_MITRE ? a : Vectors.unit(a.plus(b));
    }

    private static Point direction(Segment piece) {
        return Vectors.unit(piece.b().minus(piece.a()));
    }
}
