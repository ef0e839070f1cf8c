package limbway.model.explain.flip;

import java.util.List;

/**
 * What would turn a trip off the ground.
 *
 * @param flips the smallest change of each kind that does
 * @param none kinds of which none does
 * @param turns assumed costs on which the answer hangs, the least change first; no change of the layout
 * @param compiled layouts that were compiled to find out
 */
public record FlipAnswer(List<Flip> flips, List<NoFlip> none, List<PriceTurn> turns, int compiled) {

    /** Keeps copies of the lists. */
    public FlipAnswer {
        flips = List.copyOf(flips);
        none = List.copyOf(none);
        turns = List.copyOf(turns);
    }
}
