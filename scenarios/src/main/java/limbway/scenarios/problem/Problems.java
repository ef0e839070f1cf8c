package limbway.scenarios.problem;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/** Collects every mistake of one reading, each once. */
public final class Problems {

    /** Beyond so many mistakes nobody reads guesses about each word, and making them takes long. */
    private static final int CROWDED = 40;

    private record Spot(Place place, String headline) {}

    private final Map<Spot, Problem> found = new LinkedHashMap<>();

    /**
     * Adds a mistake, unless the same is known at the same place.
     *
     * @param problem the mistake
     */
    public void add(Problem problem) {
        found.putIfAbsent(new Spot(problem.place(), problem.headline()), problem);
    }

    /**
     * Adds the mistakes that appear only in one variant, and says so in each.
     *
     * @param others mistakes found while reading the variant
     * @param variant its name
     */
    public void addThoseOnlyIn(Problems others, String variant) {
        // the same words elsewhere are the same mistake, seen again through a change
        Set<String> known = found.keySet().stream().map(Spot::headline).collect(Collectors.toUnmodifiableSet());
        for (Problem other : others.found.values()) {
            if (!known.contains(other.headline())) {
                add(other.inVariant(variant));
            }
        }
    }

    /**
     * Whether a mistake is known at a place, so that what follows from it need not be told.
     *
     * @param place where
     * @return true if there is one
     */
    public boolean isKnownAt(Place place) {
        return found.keySet().stream().anyMatch(spot -> spot.place().equals(place));
    }

    /**
     * Whether no mistake was found.
     *
     * @return true if there is none
     */
    public boolean isEmpty() {
        return found.isEmpty();
    }

    /**
     * Whether there are so many mistakes that details no longer matter.
     *
     * @return true from 40 mistakes on
     */
    public boolean isCrowded() {
        return found.size() >= CROWDED;
    }

    /**
     * A sentence that guesses what an unknown word meant.
     *
     * @param word the unknown word
     * @param known words that would be right
     * @param otherwise what to say when no word is near
     * @return a question, or {@code otherwise}
     */
    public String didYouMean(String word, Collection<String> known, String otherwise) {
        Optional<String> near = isCrowded() ? Optional.empty() : Spelling.nearest(word, known);
        return near.map(guess -> "did you mean " + Wording.quote(guess) + "?").orElse(otherwise);
    }

    /**
     * All mistakes in the order of the files.
     *
     * @param first the file whose mistakes come first
     * @return mistakes sorted by file, line and column
     */
    public List<Problem> inOrder(String first) {
        List<Problem> sorted = new ArrayList<>(found.values());
        sorted.sort(Comparator.<Problem>comparingInt(p -> p.place().file().equals(first) ? 0 : 1)
                .thenComparing(p -> p.place().file())
                .thenComparingInt(p -> p.place().line())
                .thenComparingInt(p -> p.place().column()));
        return sorted;
    }
}
