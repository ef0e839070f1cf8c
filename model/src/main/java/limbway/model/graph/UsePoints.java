package limbway.model.graph;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import limbway.model.enclosure.Platform;
import limbway.model.enclosure.Resource;
import limbway.model.geometry.Point;

/**
 * Finds the holds from which each resource is used: on what carries it, or, where only coordinates are given, on
 * everything within arm's length; in a crown, from its branches.
 */
final class UsePoints {

    private final Draft draft;
    private final Decks decks;
    private final Canopy canopy;
    private final Faces faces;
    private final GroundWays ground;

    UsePoints(Draft draft, Decks decks, Canopy canopy, Faces faces, GroundWays ground) {
        this.draft = draft;
        this.decks = decks;
        this.canopy = canopy;
        this.faces = faces;
        this.ground = ground;
    }

    /** Holds of each resource, in the order of the enclosure; an empty list where nothing is within reach. */
    List<List<Integer>> find() {
        List<List<Integer>> all = new ArrayList<>();
        for (Resource resource : draft.enclosure().resources()) {
            Set<Integer> holds = new LinkedHashSet<>();
            usePieces(resource, holds);
            usePlatforms(resource, holds);
            usePanels(resource, holds);
            for (int crown : canopy.around(resource.at())) {
                holds.add(canopy.holdIn(crown, resource.at()));
            }
            boolean low = ground.heightM(resource.at()) <= draft.settings().useReachM();
            if (resource.on().isEmpty() && low && ground.covers(resource.at())) {
                holds.add(ground.holdAt(resource.at()));
            }
            all.add(List.copyOf(holds));
        }
        return all;
    }

    private void usePieces(Resource resource, Set<Integer> holds) {
        for (int i = 0; i < draft.pieces().size(); i++) {
            Piece piece = draft.pieces().get(i);
            double share = piece.line().nearestShare(resource.at());
            double awayM = piece.line().at(share).distanceM(resource.at());
            boolean carries = piece.carries(resource.on(), resource.at());
            boolean near = resource.on().isEmpty()
                    && awayM - piece.radiusM() <= draft.settings().useReachM();
            if (carries || near) {
                holds.add(draft.holdOn(i, share));
            }
        }
    }

    /** Hands go through a mesh to what hangs before or behind it. */
    private void usePanels(Resource resource, Set<Integer> holds) {
        for (Face face : faces.faces()) {
            boolean carries = face.panel().id().equals(resource.on());
            boolean near = resource.on().isEmpty()
                    && face.distanceM(resource.at()) <= draft.settings().useReachM();
            Point onFace = face.nearestTo(resource.at());
            if ((carries || near) && draft.isOverGround(onFace)) {
                holds.add(face.grip(draft, onFace).hold());
            }
        }
    }

    private void usePlatforms(Resource resource, Set<Integer> holds) {
        for (int p = 0; p < draft.enclosure().platforms().size(); p++) {
            Platform platform = draft.enclosure().platforms().get(p);
            boolean carries = platform.id().equals(resource.on());
            Point place = carries ? platform.nearestTo(resource.at()) : platform.grasped(resource.at());
            boolean near = resource.on().isEmpty()
                    && place.distanceM(resource.at()) <= draft.settings().useReachM();
            if (carries || near) {
                holds.add(decks.holdAt(p, place));
            }
        }
    }
}
