package limbway.model.graph;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.DoubleStream;

import limbway.model.body.LocomotorMode;
import limbway.model.enclosure.Enclosure;
import limbway.model.geometry.Point;

/** A graph while it is being compiled: pieces of support, the holds on each, and the moves found so far. */
final class Draft {

    /** Rounding allowed where a gap is exactly what a body reaches; gaps are kept in single precision. */
    static final double REACH_SLACK_M = 1e-6;

    private final Enclosure enclosure;
    private final GraphSettings settings;
    private final List<Double> reachesM;
    private final double widestGapM;
    private final HoldTable holds = new HoldTable();
    private final MoveList moves;
    private final List<Piece> pieces;
    private final List<Carrier> carriers = new ArrayList<>();
    private final List<double[]> ownShares = new ArrayList<>();
    private final List<LineHolds> holdsOnPiece = new ArrayList<>();

    Draft(Enclosure enclosure, GraphSettings settings) {
        this.enclosure = enclosure;
        this.settings = settings;
        this.reachesM = settings.reachesM();
        this.widestGapM = settings.widestGapM();
        this.moves = new MoveList(holds, enclosure.platforms());
        this.pieces = Pieces.of(enclosure.supports());
        for (int i = 0; i < pieces.size(); i++) {
            carriers.add(Carrier.of(pieces.get(i)));
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

    /** The longest reach. */
    double widestGapM() {
        return widestGapM;
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

    /** Joins a place on a piece with a place on another carrier, and returns the hold on the piece. */
    int join(int piece, double share, int otherHold, Carrier other, double otherRadiusM) {
        int hold = holdOn(piece, share);
        moves.over(hold, carrier(piece), otherHold, other, pieces.get(piece).radiusM() + otherRadiusM);
        return hold;
    }

    /** Adds the moves from each hold of a piece to the next along it. */
    void chainHoldsAlongPieces() {
        for (int i = 0; i < pieces.size(); i++) {
            boolean steep = pieces.get(i).isSteep();
            Carrier carrier = carrier(i);
            int last = -1;
            for (int hold : holdsOnPiece.get(i).inOrder()) {
                if (last >= 0 && last != hold) {
                    if (steep) {
                        moves.climb(last, hold, carrier);
                    } else {
                        moves.along(last, hold, LocomotorMode.CLAMBER, false, carrier);
                    }
                    if (carrier.isWalkway()) {
                        moves.along(last, hold, LocomotorMode.QUADRUPEDAL_WALK, false, carrier);
                    }
                }
                last = hold;
            }
        }
    }

    /** Whether a gap between two places can be crossed by the longest reach, given the radii of what is held. */
    boolean within(Point a, Point b, double radiiM) {
        return a.distanceM(b) - radiiM <= widestGapM + REACH_SLACK_M;
    }
}
