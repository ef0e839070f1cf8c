package limbway.scenarios.survey;

import java.util.List;

import limbway.model.geometry.Corner;
import limbway.scenarios.format.ListNode;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.format.Node;
import limbway.scenarios.format.ScalarNode;
import limbway.scenarios.problem.Place;

/**
 * One row of a stem map, with what the allometry added.
 *
 * @param row number of the row, the first below the header is 1
 * @param position where it stands, in plan
 * @param xPlace where the position is written
 * @param diameterM diameter at breast height [m]
 * @param diameterPlace where the diameter is written
 * @param heightM height of the tree [m]
 * @param crownRadiusM radius of the crown [m]
 * @param crownBaseM height of the lowest branches [m]
 */
record Stem(
        int row,
        Corner position,
        Place xPlace,
        double diameterM,
        Place diameterPlace,
        double heightM,
        double crownRadiusM,
        double crownBaseM) {

    /** The entry that a keeper would have written for this tree; its places are those of the table. */
    MappingNode toEntry(String prefix) {
        List<Node> at = List.of(number(xPlace, position.xM()), number(xPlace, position.yM()));
        return new MappingNode(
                xPlace,
                List.of(
                        entry(xPlace, "trunk", new ScalarNode(xPlace, prefix + "-" + row)),
                        entry(xPlace, "at", new ListNode(xPlace, at)),
                        entry(diameterPlace, "height", number(diameterPlace, heightM)),
                        entry(diameterPlace, "diameter", number(diameterPlace, diameterM)),
                        entry(diameterPlace, "crown-radius", number(diameterPlace, crownRadiusM)),
                        entry(diameterPlace, "crown-base", number(diameterPlace, crownBaseM))));
    }

    private static MappingNode.Entry entry(Place place, String key, Node value) {
        return new MappingNode.Entry(new ScalarNode(place, key), value);
    }

    private static ScalarNode number(Place place, double value) {
        return new ScalarNode(place, Double.toString(value));
    }
}
