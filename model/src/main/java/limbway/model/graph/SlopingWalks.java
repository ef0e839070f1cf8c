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
    private static final double STEP_SHARE = 1.0 / 16;

    private static final double SHORTEST_STEP_M = 0.05;
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

    /**
     * A face, or a part of one that hangs together by a corner only.
     *
     * @param plan what of it is open
     * @param seamsOfHold the holds on it, each with the seams along which it stands
     * @param ownPlaces those of the holds that were there before the seams were divided
     */
    private record FacePlaces(OpenPlan plan, Map<Integer, List<Integer>> seamsOfHold, List<Point> ownPlaces) {}

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
                parts.add(addFace((Polygon) outlines.get(f).getGeometryN(i)));
            }
            partsOfFace.add(parts);
        }
        for (int hold : holds) {
            addPlace(hold);
        }
        int seamNumber = 0;
        for (TerrainFaces.Seam seam : terrain.seams()) {
            List<FacePlaces> beside = new ArrayList<>();
            seam.faces().forEach(face -> beside.addAll(partsOfFace.get(face)));
            Geometry parts = open.partsOf(inPlan(seam.line()));
            for (int i = 0; i < parts.getNumGeometries(); i++) {
                if (parts.getGeometryN(i) instanceof LineString part && part.getLength() > Pieces.SAME_PLACE_M) {
                    addSeam(part, stepM(seam), seamNumber++, beside);
                }
            }
        }
        faces.forEach(this::walkWithin);
    }

    private static double stepM(TerrainFaces.Seam seam) {
        return Math.max(SHORTEST_STEP_M, Math.min(LONGEST_STEP_M, seam.narrowestM() * STEP_SHARE));
    }

    private LineString inPlan(Segment line) {
        return factory.createLineString(new Coordinate[] {
            new Coordinate(line.a().xM(), line.a().yM()),
            new Coordinate(line.b().xM(), line.b().yM())
        });
    }

    private FacePlaces addFace(Polygon outline) {
        FacePlaces part = new FacePlaces(open.within(outline), new LinkedHashMap<>(), new ArrayList<>());
        Envelope box = new Envelope(outline.getEnvelopeInternal());
        box.expandBy(Pieces.SAME_PLACE_M);
        facesByPlace.insert(box, faces.size());
        faces.add(part);
        return part;
    }

    private void addSeam(LineString part, double stepM, int number, List<FacePlaces> beside) {
        Coordinate a = part.getCoordinateN(0);
        Coordinate b = part.getCoordinateN(part.getNumPoints() - 1);
        SeamSteps steps = new SeamSteps(new Point(a.x, a.y, 0), new Point(b.x, b.y, 0), stepM);
        for (FacePlaces face : beside) {
            face.ownPlaces().forEach(steps::refineNear);
        }
        int last = -1;
        for (Point place : steps.places()) {
            int hold = draft.holds().at(draft.groundHeights().onGround(place), GroundWays.NAME);
            for (FacePlaces face : beside) {
                if (face.plan().covers(place.xM(), place.yM())) {
                    face.seamsOfHold()
                            .computeIfAbsent(hold, h -> new ArrayList<>(2))
                            .add(number);
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
                face.seamsOfHold().put(hold, new ArrayList<>(2));
                face.ownPlaces().add(place);
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
