package limbway.model.explain;

import java.util.List;

import limbway.model.enclosure.Support;

/**
 * What keeps a body from going from one place to another off the ground, along the way on which least is missing.
 *
 * @param gaps gaps wider than the body reaches, in order along the way
 * @param tooThick supports on the way that the body can neither hold nor walk on, in order
 */
public record Chain(List<Gap> gaps, List<Support> tooThick) {

    /** Keeps copies of the lists. */
    public Chain {
        gaps = List.copyOf(gaps);
        tooThick = List.copyOf(tooThick);
    }

    /**
     * The widest of the gaps.
     *
     * @return metres, 0 where only supports are too thick
     */
    public double widestM() {
        return gaps.stream().mapToDouble(Gap::clearM).max().orElse(0);
    }
}
