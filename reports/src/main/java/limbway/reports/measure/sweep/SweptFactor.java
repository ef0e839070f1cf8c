package limbway.reports.measure.sweep;

import java.util.List;

/**
 * One thing that was varied.
 *
 * @param name such as {@code rope-12.sag}; unique within a sweep
 * @param isRange whether it took any value between two ends
 * @param isAssumed whether it is an assumed number, which nobody can choose
 * @param levels its values as they are written; of a range the two ends
 */
public record SweptFactor(String name, boolean isRange, boolean isAssumed, List<String> levels) {

    /** The layouts, where there are several, are a factor of this name. */
    public static final String LAYOUT = "layout";

    /** Keeps a copy of the list. */
    public SweptFactor {
        levels = List.copyOf(levels);
    }
}
