package limbway.model.graph;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Turns an enclosure into holds and moves: first what meets what, then the ways between, then the whole in order. */
final class Compilation {

    private Compilation() {}

    static RouteGraph of(Draft draft, Optional<RouteGraph> before, boolean meetsGround) {
        Decks decks = new Decks(draft);
        Canopy canopy = new Canopy(draft);
        GroundWays ground = new GroundWays(draft);
        Contacts.connect(draft);
        decks.connect();
        canopy.connect();
        new CrownEntries(draft, decks, canopy).connect();
        if (meetsGround) {
            ground.connect(decks, canopy);
        }
        Faces faces = new Faces(draft);
        faces.connect(decks, canopy, ground);
        List<Landing> landings = landings(draft, decks, faces);
        new SwayWays(draft, landings).connect();
        new LeapWays(draft, decks).connect();
        new DropWays(draft, decks, ground).connect();
        List<List<Integer>> useHolds = new UsePoints(draft, decks, canopy, faces, ground).find();
        KnownHolds known = before.map(graph -> KnownHolds.of(graph, draft, decks, canopy, ground))
                .orElse(KnownHolds.NONE);
        decks.addWalks(known);
        faces.addClimbs();
        canopy.addClambers(known);
        if (meetsGround) {
            ground.addWalks(known);
        }
        draft.chainHoldsAlongPieces();
        return Assembly.of(draft, useHolds);
    }

    private static List<Landing> landings(Draft draft, Decks decks, Faces faces) {
        List<Landing> landings = new ArrayList<>();
        for (int i = 0; i < draft.pieces().size(); i++) {
            landings.add(new Landing.OnPiece(draft, i));
        }
        for (int p = 0; p < decks.platforms().size(); p++) {
            landings.add(new Landing.OnDeck(decks, p));
        }
        faces.faces().forEach(face -> landings.add(new Landing.OnFace(draft, face)));
        return landings;
    }
}
