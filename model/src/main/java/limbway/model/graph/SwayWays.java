package limbway.model.graph;

import java.util.ArrayList;
import java.util.List;

import limbway.model.body.Body;
import limbway.model.body.LocomotorMode;
import limbway.model.energy.Elasticity;
import limbway.model.energy.FlexiblePole;
import limbway.model.energy.SwayCost;
import limbway.model.geometry.ClosestApproach;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;

/** From each hold of a pole that sways, the ways to what comes within reach when it is swung. */
final class SwayWays {

    /** Lower down, a pole is not swung. */
    private static final double LOWEST_M = 1;

    private final Draft draft;
    private final List<Landing> landings;
    private final SwayCost sway;
    private final double heaviestKg;
    private final double shortestReachM;

    SwayWays(Draft draft, List<Landing> landings) {
        this.draft = draft;
        this.landings = landings;
        this.sway = new SwayCost(draft.settings().energy().sway());
        List<Body> bodies = draft.settings().bodies();
        this.heaviestKg = bodies.stream().mapToDouble(Body::massKg).max().orElse(0);
        this.shortestReachM = bodies.stream().mapToDouble(Body::gapReachM).min().orElse(0);
    }

    void connect() {
        for (int i = 0; i < draft.pieces().size(); i++) {
            Piece piece = draft.pieces().get(i);
            if (piece.stock().bearing().sways() && isFixedAtFoot(piece)) {
                List<Landing> near = near(piece);
                for (double share : draft.ownShares(i)) {
                    swayFrom(i, piece, share, near);
                }
            }
        }
    }

    private static boolean isFixedAtFoot(Piece piece) {
        return switch (piece.stock().kind()) {
            case POLE, TRUNK, BRANCH -> true;
            case BEAM, ROPE, LADDER -> false;
        };
    }

    private void swayFrom(int i, Piece piece, double share, List<Landing> near) {
        double lengthM = piece.course().atM(share);
        Grip held = draft.grip(i, share);
        if (lengthM < LOWEST_M || Double.isInfinite(held.stiffnessNPerM())) {
            return;
        }
        double widestM = draft.widestReachAcrossM() + sway.widestSwingM(heaviestKg, held.stiffnessNPerM(), lengthM);
        double poleKg = draft.settings()
                .elasticities()
                .of(piece.stock().material())
                .map(stuff -> poleKg(piece, lengthM, stuff))
                .orElse(0.0);
        Grip swung =
                new Grip(held.hold(), held.carrier().swung(lengthM, poleKg), held.radiusM(), held.stiffnessNPerM());
        Point place = piece.line().at(share);
        for (Landing landing : near) {
            swayTo(swung, place, landing, widestM);
        }
    }

    /** What the piece may come near to wherever it is held: pieces within its widest swing, and every deck and panel. */
    private List<Landing> near(Piece piece) {
        double swingM = draft.settings().energy().sway().farthestShare()
                * piece.course().memberM();
        double limitM = draft.widestReachAcrossM() + swingM + piece.radiusM();
        List<Landing> near = new ArrayList<>();
        for (Landing landing : landings) {
            if (!(landing instanceof Landing.OnPiece other)) {
                near.add(landing);
            } else if (!isSameSupport(piece, other)) {
                Piece far = draft.pieces().get(other.piece());
                double apartM = ClosestApproach.of(piece.line(), far.line()).distanceM();
                if (apartM <= limitM + far.radiusM()) {
                    near.add(landing);
                }
            }
        }
        return near;
    }

    private boolean isSameSupport(Piece piece, Landing.OnPiece other) {
        return draft.pieces().get(other.piece()).names().stream().anyMatch(piece.names()::contains);
    }

    private static double poleKg(Piece piece, double lengthM, Elasticity stuff) {
        FlexiblePole pole = Stiffness.pole(piece, lengthM, stuff);
        return pole.massKg();
    }

    private void swayTo(Grip swung, Point place, Landing landing, double widestM) {
        Point nearest = landing.nearestTo(place);
        swayBetween(swung, place, nearest, landing, widestM);
        if (landing instanceof Landing.OnPiece piece) {
            Segment line = draft.pieces().get(piece.piece()).line();
            double level =
                    (place.zM() - line.a().zM()) / (line.b().zM() - line.a().zM());
            if (level > 0 && level < 1) {
                swayBetween(swung, place, line.at(level), landing, widestM);
            }
        }
    }

    /** The swing is level; what lies steeply above or below is not brought nearer by it. */
    private void swayBetween(Grip swung, Point place, Point far, Landing landing, double widestM) {
        double awayM = place.distanceM(far);
        boolean sideways = Math.abs(far.zM() - place.zM()) <= place.planDistanceM(far);
        if (sideways && awayM > shortestReachM && awayM <= widestM + 1) {
            Grip reached = landing.grip(far);
            double gapM = awayM - swung.radiusM() - reached.radiusM();
            if (gapM > shortestReachM && gapM <= widestM) {
                draft.moves().across(swung, reached, LocomotorMode.SWAY);
            }
        }
    }
}
