package limbway.model.graph;

import java.util.ArrayList;
import java.util.List;

import limbway.model.enclosure.Crown;
import limbway.model.enclosure.Panel;
import limbway.model.enclosure.Platform;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;

/**
 * Joins both sides of each panel with supports, decks, crowns, the ground and the sides of other panels that are in front
 * of them. {@link FaceWalks} then leads over each side and round free edges.
 */
final class Faces {

    /** Panels are entered at places so many hold spacings apart: their edges are long and costs change slowly along. */
    static final double ENTRY_SPACINGS = 2;

    private final Draft draft;
    private final List<Face> faces = new ArrayList<>();

    Faces(Draft draft) {
        this.draft = draft;
        for (Panel panel : draft.enclosure().panels()) {
            PanelPlane plane = new PanelPlane(panel.facet());
            Carrier carrier = Carrier.of(panel, draft.settings().fingerShare());
            faces.add(new Face(panel, plane, true, carrier));
            faces.add(new Face(panel, plane, false, carrier));
        }
    }

    List<Face> faces() {
        return faces;
    }

    void connect(Decks decks, Canopy canopy, GroundWays ground) {
        for (int f = 0; f < faces.size(); f++) {
            for (int i = 0; i < draft.pieces().size(); i++) {
                joinPiece(faces.get(f), i);
            }
            for (int p = 0; p < decks.platforms().size(); p++) {
                joinDeck(faces.get(f), decks, p);
            }
            for (int c = 0; c < draft.enclosure().crowns().size(); c++) {
                joinCrown(faces.get(f), canopy, c);
            }
            joinGround(faces.get(f), ground);
            for (int g = 0; g < faces.size(); g++) {
                if (f / 2 != g / 2) {
                    joinFace(faces.get(f), faces.get(g));
                }
            }
        }
    }

    void addClimbs() {
        new FaceWalks(draft, faces).add();
    }

    private void joinPiece(Face face, int i) {
        Piece piece = draft.pieces().get(i);
        Segment line = piece.line();
        double limitM = draft.widestGapM() + piece.radiusM();
        double nearest = line.leastShare(face::distanceM);
        if (face.distanceM(line.at(nearest)) > limitM) {
            return;
        }
        enter(face, i, nearest);
        for (double share : draft.ownShares(i)) {
            enter(face, i, share);
        }
        for (double reachM : draft.reachesM()) {
            for (double share : ReachLimit.shares(s -> face.distanceM(line.at(s)), nearest, reachM + piece.radiusM())) {
                enter(face, i, share);
            }
        }
    }

    private void enter(Face face, int i, double share) {
        Segment line = draft.pieces().get(i).line();
        Point place = line.at(share);
        // an end that lies in the panel is on the side from which its piece comes
        Point seenFrom = face.isInPlane(place) ? line.at(share < 0.5 ? 1 : 0) : place;
        Point onFace = face.nearestTo(place);
        if (face.isBefore(seenFrom)
                && draft.isOverGround(onFace)
                && draft.within(place, onFace, draft.pieces().get(i).radiusM())) {
            draft.join(i, share, face.grip(draft, onFace));
        }
    }

    private void joinDeck(Face face, Decks decks, int p) {
        Platform deck = decks.platforms().get(p);
        for (Segment edge : deck.edges()) {
            double nearest = edge.leastShare(face::distanceM);
            enterFromDeck(face, decks, p, edge.at(nearest));
            for (double share : Piece.evenShares(edge, draft.settings().holdSpacingM())) {
                enterFromDeck(face, decks, p, edge.at(share));
            }
            for (double reachM : draft.reachesM()) {
                for (double share : ReachLimit.shares(s -> face.distanceM(edge.at(s)), nearest, reachM)) {
                    enterFromDeck(face, decks, p, edge.at(share));
                }
            }
        }
    }

    private void enterFromDeck(Face face, Decks decks, int p, Point place) {
        Point onFace = face.nearestTo(place);
        Point middle = decks.platforms().get(p).centre();
        if (face.isBefore(face.isInPlane(place) ? middle : place)
                && draft.isOverGround(onFace)
                && draft.within(place, onFace, 0)) {
            draft.moves().over(decks.grip(p, place), face.grip(draft, onFace));
        }
    }

    private void joinCrown(Face face, Canopy canopy, int c) {
        Crown crown = draft.enclosure().crowns().get(c);
        Segment axis = crown.space().axis();
        for (double share :
                Piece.evenShares(axis, ENTRY_SPACINGS * draft.settings().holdSpacingM())) {
            Point among = crown.space().nearestTo(face.nearestTo(axis.at(share)));
            Point onFace = face.nearestTo(among);
            if (face.isBefore(among)
                    && !face.isInPlane(among)
                    && draft.isOverGround(onFace)
                    && draft.within(among, onFace, 0)) {
                draft.moves().over(draft.branch(canopy.holdIn(c, among)), face.grip(draft, onFace));
            }
        }
    }

    /** From the ground below the edges, and below everywhere where the panel lies low and flat. */
    private void joinGround(Face face, GroundWays ground) {
        for (Point place : entries(face.panel())) {
            Point onFace = face.nearestTo(place);
            if (ground.heightM(onFace) <= draft.widestGapM()) {
                ground.connectBelow(face.grip(draft, onFace));
            }
        }
    }

    private List<Point> entries(Panel panel) {
        double spacingM = ENTRY_SPACINGS * draft.settings().holdSpacingM();
        List<Point> places = new ArrayList<>();
        List<Segment> edges = panel.facet().edges();
        for (Segment edge : edges) {
            for (double share : Piece.evenShares(edge, spacingM)) {
                places.add(edge.at(share));
            }
        }
        if (Math.abs(panel.facet().normal().zM()) > StrictMath.cos(StrictMath.toRadians(Piece.STEEP_DEG))) {
            places.addAll(Lattice.within(new PanelPlane(panel.facet()), spacingM));
        }
        return places;
    }

    private void joinFace(Face face, Face other) {
        double spacingM = ENTRY_SPACINGS * draft.settings().holdSpacingM();
        for (Segment edge : face.panel().facet().edges()) {
            double nearest = edge.leastShare(other::distanceM);
            if (other.distanceM(edge.at(nearest)) > draft.widestGapM() + Face.OFF_M) {
                continue;
            }
            joinFaces(face, edge.at(nearest), other);
            for (double share : Piece.evenShares(edge, spacingM)) {
                joinFaces(face, edge.at(share), other);
            }
            for (double reachM : draft.reachesM()) {
                for (double share : ReachLimit.shares(s -> other.distanceM(edge.at(s)), nearest, reachM)) {
                    joinFaces(face, edge.at(share), other);
                }
            }
        }
    }

    private void joinFaces(Face face, Point place, Face other) {
        Point from = face.nearestTo(place);
        Point to = other.nearestTo(from);
        boolean overGround = draft.isOverGround(from) && draft.isOverGround(to);
        if (overGround && other.isBefore(from) && face.isBefore(to) && draft.within(from, to, 0)) {
            draft.moves().over(face.grip(draft, from), other.grip(draft, to));
        }
    }
}
