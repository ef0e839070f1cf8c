package limbway.scenarios;

import java.util.ArrayList;
import java.util.List;
import java.util.StringJoiner;

import limbway.scenarios.format.Node;

/** One combination of values of a sweep. */
public final class SweepPoint {

    private final List<SweepFactor> factors;
    private final List<Node> nodes;
    private final List<Double> positions;

    SweepPoint(List<SweepFactor> factors, List<Node> nodes, List<Double> positions) {
        this.factors = List.copyOf(factors);
        this.nodes = List.copyOf(nodes);
        this.positions = List.copyOf(positions);
    }

    /**
     * The values, as they would be written in the scenario.
     *
     * @return one for each factor, in their order
     */
    public List<String> values() {
        return nodes.stream().map(SweepFactor::text).toList();
    }

    /**
     * Where a value lies.
     *
     * @param factor number of the factor, from 0
     * @return of a range the share of it, 0 to 1; else the number of the value in its list, from 0
     */
    public double position(int factor) {
        return positions.get(factor);
    }

    /**
     * The point in words.
     *
     * @return such as {@code rope-12.sag = 5 %, deck-3.on = mast-3 at 4}
     */
    public String words() {
        StringJoiner words = new StringJoiner(", ");
        for (int i = 0; i < factors.size(); i++) {
            words.add(factors.get(i).name() + " = " + SweepFactor.text(nodes.get(i)));
        }
        return words.toString();
    }

    List<SweepFactor> factors() {
        return new ArrayList<>(factors);
    }

    Node node(int factor) {
        return nodes.get(factor);
    }
}
