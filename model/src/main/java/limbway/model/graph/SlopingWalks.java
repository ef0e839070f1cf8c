package limbway.model.graph;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import org.locationtech.jts.geom.Coordinate;
import org.locationtech.jts.geom.Envelope;
import org.locationtech.jts.geom.Geometry;
import org.locationtech.jts.geom.GeometryFactory;
import org.locationtech.jts.geom.LineString;
import org.locationtech.jts.geom.Polygon;
import org.locationtech.jts.index.strtree.STRtree;

import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;

/**
 * Walks over ground that is not level: straight within a plane face, from face to face by places along the seams where
 * they meet.
 *
 * <p>Each walk lies in one plane, so that its ends tell its slope. Within a face ways are exact; from one to the next they
 * pass the nearest of the places that stand along the seam.
 */
final class SlopingWalks {

    /** A seam is divided into steps of this share of the way across the narrower triangle beside it. */
    private static final double STEP_SHARE = 1.0 / 8;

    private static final double SHORTEST_STEP_M = 0.1;
    private static final double LONGEST_STEP_M = 0.5;

    private final Draft draft;
    private final OpenPlan open;
    private final GeometryFactory factory = new GeometryFactory();
    private final List<FacePlaces> faces = new ArrayList<>();
    private final STRtree facesByPlace = new STRtree();
    private final WalkMaker maker;

    /** Makes a walk between two holds that see each other, if nothing else is in the way. */
    @FunctionalInterface
    interface WalkMaker {
        void walk(int from, int to);
    }

    /** A part of a face without holes, what of it is open, and the holds on it, each with the seams on which it stands. */
    private record FacePlaces(int face, OpenPlan plan, Map<Integer, List<Integer>> seamsOfHold) {}

    SlopingWalks(Draft draft, OpenPlan open, WalkMaker maker) {
        this.draft = draft;
        this.open = open;
        this.maker = maker;
    }

    /** Adds all walks between given holds on the ground. */
    void add(Iterable<Integer> holds) {
        TerrainFaces terrain = new TerrainFaces(draft.enclosure().ground().terrain());
        List<List<FacePlaces>> partsOfFace = new ArrayList<>();
        List<Geometry> outlines = terrain.outlines();
        for (int f = 0; f < outlines.size(); f++) {
            List<FacePlaces> parts = new ArrayList<>();
            for (int i = 0; i < outlines.get(f).getNumGeometries(); i++) {
                addFace(f, (Polygon) outlines.get(f).getGeometryN(i), parts);
            }
            partsOfFace.add(parts);
        }
        int seamNumber = 0;
        for (TerrainFaces.Seam seam : terrain.seams()) {
            Geometry parts = open.partsOf(inPlan(seam.line()));
            for (int i = 0; i < parts.getNumGeometries(); i++) {
                if (parts.getGeometryN(i) instanceof LineString part && part.getLength() > Pieces.SAME_PLACE_M) {
                    addSeam(seam, part, seamNumber++, partsOfFace);
                }
            }
        }
        for (int hold : holds) {
            addPlace(hold);
        }
        faces.forEach(this::walkWithin);
    }

    private LineString inPlan(Segment line) {
        return factory.createLineString(new Coordinate[] {
            new Coordinate(line.a().xM(), line.a().yM()),
            new Coordinate(line.b().xM(), line.b().yM())
        });
    }

    private void addFace(int face, Polygon outline, List<FacePlaces> parts) {
        FacePlaces part = new FacePlaces(face, open.within(outline), new LinkedHashMap<>());
        Envelope box = new Envelope(outline.getEnvelopeInternal());
        box.expandBy(Pieces.SAME_PLACE_M);
        facesByPlace.insert(box, faces.size());
        faces.add(part);
        parts.add(part);
    }

    private void addSeam(TerrainFaces.Seam seam, LineString part, int number, List<List<FacePlaces>> partsOfFace) {
        Coordinate a = part.getCoordinateN(0);
        Coordinate b = part.getCoordinateN(part.getNumPoints() - 1);
        double stepM = Math.max(SHORTEST_STEP_M, Math.min(LONGEST_STEP_M, seam.narrowestM() * STEP_SHARE));
        int steps = (int) Math.ceil(part.getLength() / stepM - 1e-9);
        int last = -1;
        for (int i = 0; i <= steps; i++) {
            double share = (double) i / steps;
            Point place =
                    draft.groundHeights().onGround(new Point(a.x + share * (b.x - a.x), a.y + share * (b.y - a.y), 0));
            int hold = draft.holds().at(place, GroundWays.NAME);
            for (int face : seam.faces()) {
                for (FacePlaces beside : partsOfFace.get(face)) {
                    if (beside.plan().covers(place.xM(), place.yM())) {
                        beside.seamsOfHold()
                                .computeIfAbsent(hold, h -> new ArrayList<>(2))
                                .add(number);
                    }
                }
            }
            if (last >= 0 && last != hold) {
                maker.walk(last, hold);
            }
            last = hold;
        }
    }

    private void addPlace(int hold) {
        Point place = draft.holds().place(hold);
        List<?> found = facesByPlace.query(new Envelope(new Coordinate(place.xM(), place.yM())));
        for (Object number : found) {
            FacePlaces face = faces.get((Integer) number);
            if (face.plan().covers(place.xM(), place.yM())) {
                face.seamsOfHold().putIfAbsent(hold, List.of());
            }
        }
    }

    private void walkWithin(FacePlaces face) {
        int[] holds =
                face.seamsOfHold().keySet().stream().mapToInt(Integer::intValue).toArray();
        List<List<Integer>> seams = List.copyOf(face.seamsOfHold().values());
        List<Point> points = new ArrayList<>();
        for (int hold : holds) {
            points.add(draft.holds().place(hold));
        }
        NearbyPlaces.forEachPair(points, (i, j) -> {
            if (Collections.disjoint(seams.get(i), seams.get(j)) && face.plan().sees(points.get(i), points.get(j))) {
                maker.walk(holds[i], holds[j]);
            }
        });
    }
}
