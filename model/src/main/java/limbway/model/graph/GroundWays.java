package limbway.model.graph;

import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import limbway.model.enclosure.Crown;
import limbway.model.enclosure.Ground;
import limbway.model.enclosure.Obstacle;
import limbway.model.enclosure.Platform;
import limbway.model.geometry.Corner;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;

/**
 * Joins the ground with everything low enough to be reached from it, and walks exactly round obstacles: straight between
 * all places that see each other, turning only at corners. Where there are very many places, each sees only its nearest
 * neighbours all round; ways are then longer by a few per cent at most.
 */
final class GroundWays {

    static final String NAME = "ground";

    /** With more places on the ground than this, walks lead by way of neighbours instead of straight. */
    private static final int EXACT_PLACES = 1500;

    private final Draft draft;
    private final GroundClosures closures;
    private final OpenPlan plan;
    private final Set<Integer> places = new LinkedHashSet<>();

    GroundWays(Draft draft) {
        this.draft = draft;
        Ground ground = draft.enclosure().ground();
        this.closures = new GroundClosures(draft.enclosure());
        this.plan = new OpenPlan(
                ground.outline(),
                ground.obstacles().stream().map(Obstacle::outline).toList(),
                closures.holes());
        for (Corner turn : plan.turns()) {
            places.add(draft.holds().at(turn.atHeight(0), NAME));
        }
    }

    void connect(Decks decks, Canopy canopy) {
        for (int i = 0; i < draft.pieces().size(); i++) {
            Piece piece = draft.pieces().get(i);
            for (double share : draft.ownShares(i)) {
                Point place = piece.line().at(share);
                if (!piece.isSteep() || place.equals(piece.lowerEnd())) {
                    connectBelow(draft.grip(i, share));
                }
            }
            if (!piece.isSteep()) {
                connectAtReachLimits(i, piece);
            }
        }
        for (int p = 0; p < draft.enclosure().platforms().size(); p++) {
            connectPlatform(decks, p);
        }
        for (int c = 0; c < draft.enclosure().crowns().size(); c++) {
            Crown crown = draft.enclosure().crowns().get(c);
            if (crown.baseZM() <= draft.widestGapM()) {
                Point low = crown.foot().atHeight(crown.baseZM());
                connectBelow(draft.branch(canopy.holdIn(c, low)));
            }
        }
    }

    boolean covers(Point p) {
        return plan.covers(p.xM(), p.yM());
    }

    /** Height of a place above the ground [m]. */
    double heightM(Point p) {
        return p.zM() - draft.enclosure().ground().terrain().heightM(p.xM(), p.yM());
    }

    int holdAt(Point p) {
        int hold = draft.holds().at(p.atHeight(0), NAME);
        places.add(hold);
        return hold;
    }

    /** Adds the walks between the places of the ground; call after every hold is known. */
    void addWalks() {
        int[] holds = places.stream().mapToInt(Integer::intValue).toArray();
        List<Point> points = Arrays.stream(holds).mapToObj(draft.holds()::place).toList();
        if (holds.length <= EXACT_PLACES) {
            for (int i = 0; i < holds.length; i++) {
                for (int j = i + 1; j < holds.length; j++) {
                    walkIfSeen(holds, points, i, j);
                }
            }
        } else {
            NearbyPlaces nearby = new NearbyPlaces(points);
            for (int i = 0; i < holds.length; i++) {
                for (int j : nearby.around(i)) {
                    walkIfSeen(holds, points, i, j);
                }
            }
        }
    }

    private void walkIfSeen(int[] holds, List<Point> points, int i, int j) {
        if (plan.sees(points.get(i), points.get(j))) {
            int door = closures.doorOf(points.get(i), points.get(j));
            if (door != Obstructions.BLOCKED) {
                draft.moves().walk(holds[i], holds[j], door);
            }
        }
    }

    private void connectAtReachLimits(int i, Piece piece) {
        double lowestShare = piece.lowerEnd().equals(piece.line().a()) ? 0 : 1;
        for (double reachM : draft.reachesM()) {
            for (double share :
                    ReachLimit.shares(s -> piece.line().at(s).zM(), lowestShare, reachM + piece.radiusM())) {
                connectBelow(draft.grip(i, share));
            }
        }
    }

    void connectBelow(Grip above) {
        Point place = draft.holds().place(above.hold());
        if (!covers(place) || place.zM() - above.radiusM() > draft.widestGapM()) {
            return;
        }
        if (draft.holds().onGround(above.hold())) {
            places.add(above.hold());
        } else {
            draft.moves().over(Grip.rigid(holdAt(place), Carrier.SURFACE), above);
        }
    }

    private void connectPlatform(Decks decks, int p) {
        Platform platform = draft.enclosure().platforms().get(p);
        if (platform.zM() > draft.widestGapM()) {
            return;
        }
        for (Segment edge : platform.edges()) {
            int steps = (int) Math.ceil(edge.lengthM() / draft.settings().holdSpacingM());
            for (int k = 0; k < steps; k++) {
                Point place = edge.at((double) k / steps);
                connectBelow(decks.grip(p, place));
            }
        }
    }
}
