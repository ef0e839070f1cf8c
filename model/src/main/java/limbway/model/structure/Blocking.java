package limbway.model.structure;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;

import org.jgrapht.Graph;
import org.jgrapht.graph.AsSubgraph;
import org.jgrapht.graph.DefaultEdge;

/**
 * What an animal that lets nobody pass cuts off, sitting on one part.
 *
 * @param part number of the part on which it sits, a cut point
 * @param sides sets of resources between which no way off the ground is left, the largest first, each ascending;
 *     resources used from the part itself belong to none
 */
public record Blocking(int part, List<List<Integer>> sides) {

    /** Keeps a copy of the list. */
    public Blocking {
        sides = List.copyOf(sides);
    }

    /**
     * The resources that are cut off from the largest set.
     *
     * @return places of resources in the graph's list, ascending
     */
    public List<Integer> cutOff() {
        return sides.stream().skip(1).flatMap(List::stream).sorted().toList();
    }

    /**
     * Finds every part from which resources can be cut off from each other that are joined while it is free.
     *
     * @param parts the graph of a body
     * @return one for each such part, ascending by part
     */
    public static List<Blocking> all(PartGraph parts) {
        Graph<Integer, DefaultEdge> graph = parts.graph();
        int[] pieceOf = pieceOf(graph, parts.parts().size());
        List<Blocking> found = new ArrayList<>();
        for (int cut : Joints.of(graph).cutPoints()) {
            AsSubgraph<Integer, DefaultEdge> rest = new AsSubgraph<>(graph);
            rest.removeVertex(cut);
            List<List<Integer>> sides = sides(parts, cut, pieceOf, pieceOf(rest, pieceOf.length));
            if (sides.size() > 1) {
                found.add(new Blocking(cut, sides));
            }
        }
        return found;
    }

    private static List<List<Integer>> sides(PartGraph parts, int cut, int[] before, int[] after) {
        Map<Integer, TreeSet<Integer>> byPiece = new TreeMap<>();
        for (int resource = 0; resource < parts.resourceCount(); resource++) {
            List<Integer> own = parts.partsOf(resource);
            if (own.contains(cut)) {
                continue;
            }
            for (int part : own) {
                if (before[part] == before[cut]) {
                    byPiece.computeIfAbsent(after[part], k -> new TreeSet<>()).add(resource);
                }
            }
        }
        List<TreeSet<Integer>> sides = new ArrayList<>(byPiece.values());
        sides.sort((one, other) -> Integer.compare(other.size(), one.size()));
        // a resource that is used on two sides is cut off from neither; the larger keeps it
        TreeSet<Integer> told = new TreeSet<>();
        for (TreeSet<Integer> side : sides) {
            side.removeAll(told);
            told.addAll(side);
        }
        return sides.stream().filter(side -> !side.isEmpty()).map(List::copyOf).toList();
    }

    private static int[] pieceOf(Graph<Integer, DefaultEdge> graph, int parts) {
        int[] pieceOf = new int[parts];
        List<List<Integer>> pieces = Joints.pieces(graph);
        for (int piece = 0; piece < pieces.size(); piece++) {
            for (int part : pieces.get(piece)) {
                pieceOf[part] = piece;
            }
        }
        return pieceOf;
    }
}
