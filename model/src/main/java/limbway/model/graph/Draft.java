package limbway.model.graph;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;

import limbway.model.body.Body;
import limbway.model.body.LocomotorMode;
import limbway.model.enclosure.Enclosure;
import limbway.model.geometry.Point;
import limbway.model.strength.BearingLoad;

/** A graph while it is being compiled: pieces of support, the holds on each, and the moves found so far. */
final class Draft {

    /** Rounding allowed where a gap is exactly what a body reaches; gaps are kept in single precision. */
    static final double REACH_SLACK_M = 1e-6;

    private final Enclosure enclosure;
    private final GraphSettings settings;
    private final List<Double> reachesM;
    private final double widestGapM;
    private final GroundHeights groundHeights;
    private final HoldTable holds;
    private final Obstructions obstructions;
    private final MoveList moves;
    private final List<Piece> pieces;
    private final List<Carrier> carriers = new ArrayList<>();
    private final List<double[]> ownShares = new ArrayList<>();
    private final Stiffness stiffness;
    private final Carrier branches;
    private final List<LineHolds> holdsOnPiece = new ArrayList<>();

    Draft(Enclosure enclosure, GraphSettings settings) {
        this(enclosure, enclosure, settings);
    }

    /** A draft of a part of an enclosure: what bars a move is looked for in the whole. */
    Draft(Enclosure enclosure, Enclosure whole, GraphSettings settings) {
        this.enclosure = enclosure;
        this.settings = settings;
        this.groundHeights = new GroundHeights(enclosure.ground().terrain());
        this.holds = new HoldTable(groundHeights);
        this.reachesM = settings.reachesM();
        this.widestGapM = settings.widestGapM();
        this.stiffness = new Stiffness(settings.elasticities());
        this.branches = Carrier.branches(settings.branchesNPerM());
        this.obstructions = Obstructions.of(whole);
        this.moves = new MoveList(holds, obstructions);
        this.pieces = Pieces.of(enclosure.supports());
        BearingLoad loads = new BearingLoad(settings.strengths(), settings.elasticities());
        for (int i = 0; i < pieces.size(); i++) {
            carriers.add(Carrier.of(pieces.get(i), loads));
            ownShares.add(ownShares(pieces.get(i)));
            holdsOnPiece.add(new LineHolds());
            for (double share : ownShares.get(i)) {
                holdOn(i, share);
            }
        }
    }

    /** An even division, and the places of what hangs on the piece. */
    private double[] ownShares(Piece piece) {
        DoubleStream fixed = enclosure.resources().stream()
                .filter(resource -> piece.carries(resource.on(), resource.at()))
                .mapToDouble(resource -> piece.line().nearestShare(resource.at()));
        return DoubleStream.concat(Arrays.stream(piece.evenShares(settings.holdSpacingM())), fixed)
                .sorted()
                .distinct()
                .toArray();
    }

    Enclosure enclosure() {
        return enclosure;
    }

    GraphSettings settings() {
        return settings;
    }

    /** How far the bodies reach, ascending. */
    List<Double> reachesM() {
        return reachesM;
    }

    /** Whether any body swings hand over hand. */
    boolean brachiates() {
        return settings.bodies().stream().anyMatch(Body::brachiates);
    }

    /** The longest reach across a gap. */
    double widestReachAcrossM() {
        return settings.bodies().stream().mapToDouble(Body::gapReachM).max().orElse(0);
    }

    /** The longest reach. */
    double widestGapM() {
        return widestGapM;
    }

    GroundHeights groundHeights() {
        return groundHeights;
    }

    HoldTable holds() {
        return holds;
    }

    MoveList moves() {
        return moves;
    }

    List<Piece> pieces() {
        return pieces;
    }

    /** Shares of the holds that a piece has whatever stands near it. */
    double[] ownShares(int piece) {
        return ownShares.get(piece);
    }

    Carrier carrier(int piece) {
        return carriers.get(piece);
    }

    int holdOn(int piece, double share) {
        Piece line = pieces.get(piece);
        int hold = holds.at(line.line().at(share), line.nameAt(share));
        holdsOnPiece.get(piece).add(share, hold);
        return hold;
    }

    /** What the crowns are held by. */
    Carrier branches() {
        return branches;
    }

    /** A hold on a piece as one end of a move; makes the hold if need be. */
    Grip grip(int piece, double share) {
        Piece line = pieces.get(piece);
        return new Grip(holdOn(piece, share), carrier(piece), line.radiusM(), stiffness.at(line, share));
    }

    /** A hold among the branches as one end of a move. */
    Grip branch(int hold) {
        return new Grip(hold, branches, 0, settings.branchesNPerM());
    }

    /** Joins a place on a piece with a place on another carrier. */
    void join(int piece, double share, Grip other) {
        moves.over(grip(piece, share), other);
    }

    /** Adds the moves from each hold of a piece to the next along it. */
    void chainHoldsAlongPieces() {
        HandRails rails = new HandRails(this);
        boolean brachiates = brachiates();
        for (int i = 0; i < pieces.size(); i++) {
            boolean steep = pieces.get(i).isSteep();
            boolean walked = pieces.get(i).slopeDeg() <= Carrier.WALKWAY_SLOPE_DEG;
            Carrier carrier = carrier(i);
            int last = -1;
            for (int hold : holdsOnPiece.get(i).inOrder()) {
                if (last >= 0 && last != hold) {
                    if (steep) {
                        moves.climb(last, hold, carrier);
                    } else {
                        moves.along(last, hold, LocomotorMode.CLAMBER, false, carrier);
                    }
                    if (brachiates && !steep) {
                        moves.along(last, hold, LocomotorMode.BRACHIATE, false, carrier);
                    }
                    if (walked) {
                        rails.walk(i, last, hold);
                    }
                    if (carrier.isWalkway()) {
                        moves.along(last, hold, LocomotorMode.QUADRUPEDAL_WALK, false, carrier);
                    }
                }
                last = hold;
            }
        }
    }

    /** Whether a place lies over the ground of the enclosure, its edge included. */
    boolean isOverGround(Point place) {
        return enclosure.ground().outline().covers(place.xM(), place.yM());
    }

    /** Whether nothing stands in a straight way, not even a door. */
    boolean isOpen(Point a, Point b) {
        return obstructions.passage(a, b) == Obstructions.FREE;
    }

    /** Whether a gap between two places can be crossed by the longest reach, given the radii of what is held. */
    boolean within(Point a, Point b, double radiiM) {
        return a.distanceM(b) - radiiM <= widestGapM + REACH_SLACK_M;
    }
}
