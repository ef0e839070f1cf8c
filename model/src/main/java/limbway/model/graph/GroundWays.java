package limbway.model.graph;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;

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

    private final Draft draft;
    private final GroundHeights heights;
    private final GroundClosures closures;
    private final OpenPlan plan;
    private final Set<Integer> places = new LinkedHashSet<>();

    GroundWays(Draft draft) {
        this.draft = draft;
        this.heights = draft.groundHeights();
        Ground ground = draft.enclosure().ground();
        this.closures = new GroundClosures(draft.enclosure());
        this.plan = new OpenPlan(
                ground.outline(),
                ground.obstacles().stream().map(Obstacle::outline).toList(),
                closures.holes());
        for (Corner turn : plan.turns()) {
            if (heights.covers(turn.xM(), turn.yM())) {
                holdAt(turn.atHeight(0));
            }
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
            if (!heights.isLevel()) {
                for (double share : sharesAtHeight(piece, draft.ownShares(i), 0)) {
                    connectBelow(draft.grip(i, share));
                }
            }
        }
        for (int p = 0; p < draft.enclosure().platforms().size(); p++) {
            connectPlatform(decks, p);
        }
        for (int c = 0; c < draft.enclosure().crowns().size(); c++) {
            Crown crown = draft.enclosure().crowns().get(c);
            Point low = crown.foot().atHeight(crown.baseZM());
            if (heightM(low) <= draft.widestGapM()) {
                connectBelow(draft.branch(canopy.holdIn(c, low)));
            }
        }
    }

    boolean covers(Point p) {
        return plan.covers(p.xM(), p.yM()) && heights.covers(p.xM(), p.yM());
    }

    /** Height of a place above the ground [m]. */
    double heightM(Point p) {
        return draft.holds().heightM(p);
    }

    int holdAt(Point p) {
        int hold = draft.holds().at(heights.onGround(p), NAME);
        places.add(hold);
        return hold;
    }

    /** Adds the walks between the places of the ground but those that are there already; call after every hold is known. */
    void addWalks(KnownHolds known) {
        if (!heights.isLevel()) {
            new SlopingWalks(draft, plan, this::walk).add(places);
            return;
        }
        int[] holds = places.stream().mapToInt(Integer::intValue).toArray();
        List<Point> points = Arrays.stream(holds).mapToObj(draft.holds()::place).toList();
        NearbyPlaces.forEachPair(points, (i, j) -> {
            if (!known.bothOnGround(holds[i], holds[j]) && plan.sees(points.get(i), points.get(j))) {
                walk(holds[i], holds[j]);
            }
        });
    }

    private void walk(int from, int to) {
        int door = closures.doorOf(draft.holds().place(from), draft.holds().place(to));
        if (door != Obstructions.BLOCKED) {
            draft.moves().walk(from, to, door);
        }
    }

    private void connectAtReachLimits(int i, Piece piece) {
        for (double reachM : draft.reachesM()) {
            for (double share : sharesAtHeight(piece, draft.ownShares(i), reachM + piece.radiusM())) {
                connectBelow(draft.grip(i, share));
            }
        }
    }

    /** Where a piece passes a height above the ground; over sloping ground looked for between neighbouring shares. */
    private List<Double> sharesAtHeight(Piece piece, double[] shares, double limitM) {
        Segment line = piece.line();
        double[] ends = {0, 1};
        double[] between = heights.isLevel() ? ends : shares;
        List<Double> found = new ArrayList<>();
        for (int k = 0; k + 1 < between.length; k++) {
            double from = between[k];
            double span = between[k + 1] - from;
            DoubleUnaryOperator heightM = s -> heightM(line.at(from + s * span));
            double lowest = heightM.applyAsDouble(0) <= heightM.applyAsDouble(1) ? 0 : 1;
            for (double share : ReachLimit.shares(heightM, lowest, limitM)) {
                found.add(from + share * span);
            }
        }
        return found;
    }

    void connectBelow(Grip above) {
        Point place = draft.holds().place(above.hold());
        double heightM = draft.holds().heightM(above.hold());
        if (!covers(place) || heightM - above.radiusM() > draft.widestGapM() || isBuried(heightM)) {
            return;
        }
        if (draft.holds().onGround(above.hold())) {
            places.add(above.hold());
        } else {
            draft.moves().over(Grip.rigid(holdAt(place), Carrier.SURFACE), above);
        }
    }

    /** What lies in a hill is not walked up to; level ground takes what lies below it for standing on it. */
    private boolean isBuried(double heightM) {
        return !heights.isLevel() && heightM < -HoldTable.GROUND_LEVEL_M;
    }

    private void connectPlatform(Decks decks, int p) {
        Platform platform = draft.enclosure().platforms().get(p);
        if (heights.isLevel() && platform.zM() > draft.widestGapM()) {
            return;
        }
        for (Segment edge : platform.edges()) {
            int steps = (int) Math.ceil(edge.lengthM() / draft.settings().holdSpacingM());
            for (int k = 0; k < steps; k++) {
                Point place = edge.at((double) k / steps);
                if (heightM(place) <= draft.widestGapM()) {
                    connectBelow(decks.grip(p, place));
                }
            }
        }
    }
}
