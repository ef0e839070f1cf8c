package limbway.model.graph;

import java.util.ArrayList;
import java.util.List;

import limbway.model.body.LocomotorMode;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;

/** Leads over each side of each panel in any direction, and round the edges where nothing adjoins them. */
final class FaceWalks {

    /** With more holds on one side than this, ways lead by way of neighbours instead of straight. */
    private static final int STRAIGHT_HOLDS = 120;

    /** Round an edge nearer to the ground than this there is no room to climb [m]. */
    private static final double ROOM_M = 0.3;

    private final Draft draft;
    private final List<Face> faces;

    FaceWalks(Draft draft, List<Face> faces) {
        this.draft = draft;
        this.faces = faces;
    }

    void add() {
        for (int f = 0; f < faces.size(); f += 2) {
            goRound(faces.get(f), faces.get(f + 1));
        }
        for (Face face : faces) {
            climb(face);
        }
    }

    private void climb(Face face) {
        int[] holds = face.holds().stream().mapToInt(Integer::intValue).toArray();
        List<Point> flat = new ArrayList<>();
        for (int hold : holds) {
            flat.add(face.flat(draft.holds().place(hold)));
        }
        OpenPlan plan = new OpenPlan(face.plane().outline(), List.of());
        if (holds.length <= STRAIGHT_HOLDS) {
            for (int i = 0; i < holds.length; i++) {
                for (int j = i + 1; j < holds.length; j++) {
                    climbBetween(face, plan, flat, holds, i, j);
                }
            }
            return;
        }
        NearbyPlaces nearby = new NearbyPlaces(flat);
        for (int i = 0; i < holds.length; i++) {
            for (int j : nearby.around(i)) {
                climbBetween(face, plan, flat, holds, i, j);
            }
        }
    }

    private void climbBetween(Face face, OpenPlan plan, List<Point> flat, int[] holds, int i, int j) {
        if (!plan.sees(flat.get(i), flat.get(j))) {
            return;
        }
        Point from = draft.holds().place(holds[i]);
        Point to = draft.holds().place(holds[j]);
        double riseM = Math.abs(to.zM() - from.zM());
        boolean steep = riseM > from.planDistanceM(to);
        if (steep) {
            draft.moves().climb(holds[i], holds[j], face.carrier());
        } else {
            draft.moves().along(holds[i], holds[j], LocomotorMode.CLAMBER, false, face.carrier());
            if (draft.brachiates() && face.carrier().slopeDeg() <= Piece.STEEP_DEG) {
                draft.moves().along(holds[i], holds[j], LocomotorMode.BRACHIATE, false, face.carrier());
            }
        }
    }

    private void goRound(Face front, Face back) {
        double spacingM = Faces.ENTRY_SPACINGS * draft.settings().holdSpacingM();
        for (Segment edge : front.panel().facet().edges()) {
            for (double share : Piece.evenShares(edge, spacingM)) {
                Point before = front.nearestTo(edge.at(share));
                Point behind = back.nearestTo(edge.at(share));
                Point beyond = front.beyond(edge, edge.at(share));
                double roomM = beyond.zM() - draft.groundHeights().at(beyond.xM(), beyond.yM());
                boolean overGround =
                        draft.isOverGround(before) && draft.isOverGround(beyond) && draft.isOverGround(behind);
                if (overGround && roomM > ROOM_M && draft.isOpen(before, beyond) && draft.isOpen(beyond, behind)) {
                    draft.moves().over(front.grip(draft, before), back.grip(draft, behind), Obstructions.FREE);
                }
            }
        }
    }
}
