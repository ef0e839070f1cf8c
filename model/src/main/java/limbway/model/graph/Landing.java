package limbway.model.graph;

import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;

/** Where a body that sways, leaps or drops arrives: a piece of support, a deck or one side of a panel. */
sealed interface Landing {

    /** The place of it that is nearest to a place. */
    Point nearestTo(Point place);

    /** A place of it as one end of a move; makes the hold if need be. */
    Grip grip(Point at);

    /**
     * A straight piece of support.
     *
     * @param draft where its holds are
     * @param piece its number
     */
    record OnPiece(Draft draft, int piece) implements Landing {

        @Override
        public Point nearestTo(Point place) {
            Segment line = draft.pieces().get(piece).line();
            return line.at(line.nearestShare(place));
        }

        @Override
        public Grip grip(Point at) {
            return draft.grip(piece, draft.pieces().get(piece).line().nearestShare(at));
        }
    }

    /**
     * A deck, reached over its edge or from above.
     *
     * @param decks where its holds are
     * @param deck its number
     */
    record OnDeck(Decks decks, int deck) implements Landing {

        @Override
        public Point nearestTo(Point place) {
            return decks.platforms().get(deck).grasped(place);
        }

        @Override
        public Grip grip(Point at) {
            return decks.grip(deck, at);
        }
    }

    /**
     * One side of a panel.
     *
     * @param draft where its holds are
     * @param face the side
     */
    record OnFace(Draft draft, Face face) implements Landing {

        @Override
        public Point nearestTo(Point place) {
            return face.nearestTo(place);
        }

        @Override
        public Grip grip(Point at) {
            return face.grip(draft, at);
        }
    }
}
