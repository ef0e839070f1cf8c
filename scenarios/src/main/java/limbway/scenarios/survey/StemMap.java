package limbway.scenarios.survey;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;

import limbway.model.geometry.Corner;

/** The trees of a stem map: stems at one position are one tree, and only the tallest trees are kept if so asked. */
final class StemMap {

    private final String table;
    private final List<Stem> stems;
    private final List<String> notes = new ArrayList<>();

    StemMap(String table, List<Stem> stems) {
        this.table = table;
        this.stems = stems;
    }

    /** The trees in the order of the table. */
    List<Stem> trees(OptionalInt tallest) {
        Map<Corner, Stem> thickest = new LinkedHashMap<>();
        for (Stem stem : stems) {
            thickest.merge(stem.position(), stem, (a, b) -> b.diameterM() > a.diameterM() ? b : a);
        }
        List<Stem> trees = new ArrayList<>(thickest.values());
        int repeated = stems.size() - trees.size();
        if (repeated > 0) {
            notes.add(table + ": " + repeated + " of " + stems.size()
                    + " stems stand where an earlier one stands; these are "
                    + "trees of several stems, of which the thickest is kept: " + trees.size() + " trees");
        }
        long beyond = trees.stream()
                .filter(tree -> !Allometry.covers(tree.diameterM()))
                .count();
        if (beyond > 0) {
            notes.add(table + ": trees thinner or thicker than those that the height curve was made for: " + beyond);
        }
        if (tallest.isPresent() && tallest.getAsInt() < trees.size()) {
            notes.add(table + ": the tallest " + tallest.getAsInt() + " of " + trees.size() + " trees are kept");
            trees.sort(Comparator.comparingDouble(tree -> -tree.heightM()));
            trees = new ArrayList<>(trees.subList(0, tallest.getAsInt()));
        }
        trees.sort(Comparator.comparingInt(Stem::row));
        return trees;
    }

    /** What happened on the way, one sentence each. */
    List<String> notes() {
        return notes;
    }
}
