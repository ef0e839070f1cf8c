package limbway.scenarios.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.scenarios.format.ListNode;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.format.Node;
import limbway.scenarios.format.ScalarNode;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Reads what stands under {@code placing}. */
public final class PlacingReader {

    private static final int MOST_CANDIDATES = 2_000;

    private final Problems problems;
    private final PlaceReader places;
    private final Values values;

    /**
     * A reader.
     *
     * @param problems where mistakes go
     */
    public PlacingReader(Problems problems) {
        this.problems = problems;
        this.places = new PlaceReader(problems);
        this.values = new Values(problems);
    }

    /**
     * Reads the section.
     *
     * @param node the mapping under {@code placing}
     * @return what it says; after a problem, what could be read of it
     */
    public PlacingEntry read(MappingNode node) {
        Fields fields = Fields.of(node, Form.PLACING, problems);
        List<PlacingEntry.Spot> spots = new ArrayList<>();
        fields.read("candidates", this::candidates).ifPresent(spots::addAll);
        return new PlacingEntry(
                spots,
                fields.number("keeper-reach", Quantity.KEEPER_REACH),
                fields.yesNo("hoist"),
                fields.number("apart", Quantity.APART),
                fields.number("load", Quantity.LOAD),
                fields.yesNo("shaded"),
                fields.yesNo("no-hotter"),
                fields.number("barrier-distance", Quantity.BARRIER_DISTANCE));
    }

    private Optional<List<PlacingEntry.Spot>> candidates(Node node) {
        List<Node> nodes = values.list(node, "candidates");
        if (nodes.size() > MOST_CANDIDATES) {
            problems.add(Problem.at(node.place(), "there are too many candidates")
                    .found(Integer.toString(nodes.size()))
                    .allowed("at most " + MOST_CANDIDATES));
            return Optional.empty();
        }
        if (node instanceof ListNode && nodes.isEmpty()) {
            problems.add(Problem.at(node.place(), "there are no candidates")
                    .mend("name some, or leave the key out: then they are made along supports and on platforms"));
        }
        List<PlacingEntry.Spot> spots = new ArrayList<>();
        for (Node one : nodes) {
            places.anywhere(one, "place of a candidate", 2)
                    .ifPresent(where -> spots.add(new PlacingEntry.Spot(words(one, where), where)));
        }
        return Optional.of(spots);
    }

    private static String words(Node node, PlaceWords where) {
        if (node instanceof ScalarNode scalar) {
            return scalar.text().strip();
        }
        PlaceWords.Coordinates at = (PlaceWords.Coordinates) where;
        String plan = Wording.number(at.point().xM()) + ", "
                + Wording.number(at.point().yM());
        return at.onGround()
                ? "[" + plan + "]"
                : "[" + plan + ", " + Wording.number(at.point().zM()) + "]";
    }
}
