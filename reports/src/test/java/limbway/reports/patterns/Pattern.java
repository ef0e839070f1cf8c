package limbway.reports.patterns;

import java.util.List;

/**
 * One published pattern.
 *
 * @param number 1 to 18; odd ones may be fitted, even ones may not (decision 22)
 * @param words the pattern
 * @param source who saw it
 * @param terms what of the model it rests on
 * @param parts its numbers; it is met if all of them are
 */
record Pattern(int number, String words, String source, String terms, List<Part> parts) {

    Pattern {
        parts = List.copyOf(parts);
    }

    boolean mayBeFitted() {
        return number % 2 == 1;
    }
}
