package limbway.scenarios;

import java.util.ArrayList;
import java.util.List;

import limbway.scenarios.format.Node;

/**
 * What a scenario wants to be tried.
 *
 * @param isFull true for all combinations, false for points spread over all ranges at once
 * @param count number of points, 2 or more
 * @param factors what is varied, at least one
 * @param layouts names of the layouts that are lived in at each point, at least one
 */
public record SweepPlan(boolean isFull, int count, List<SweepFactor> factors, List<String> layouts) {

    /** Most points of a plan: what one machine can live through in a night. Assumption. */
    public static final int MOST_POINTS = 1000;

    /** Keeps copies of the lists. */
    public SweepPlan {
        factors = List.copyOf(factors);
        layouts = List.copyOf(layouts);
    }

    /**
     * All combinations, the last factor changing fastest.
     *
     * @return the points of a full plan
     * @throws IllegalStateException if the plan is not full
     */
    public List<SweepPoint> combinations() {
        if (!isFull) {
            throw new IllegalStateException("sweep: the points of this plan are spread by chance");
        }
        List<SweepPoint> points = new ArrayList<>();
        for (int number = 0; number < count; number++) {
            List<Node> nodes = new ArrayList<>();
            List<Double> positions = new ArrayList<>();
            int rest = number;
            for (int f = factors.size() - 1; f >= 0; f--) {
                List<Node> values = factors.get(f).ends();
                nodes.add(0, values.get(rest % values.size()));
                positions.add(0, (double) (rest % values.size()));
                rest /= values.size();
            }
            points.add(new SweepPoint(factors, nodes, positions));
        }
        return points;
    }

    /**
     * A point of a plan that is spread by chance.
     *
     * @param shares for each factor a place in its range or list, 0 to 1
     * @return the point
     */
    public SweepPoint at(List<Double> shares) {
        List<Node> nodes = new ArrayList<>();
        List<Double> positions = new ArrayList<>();
        for (int f = 0; f < factors.size(); f++) {
            SweepFactor factor = factors.get(f);
            double share = shares.get(f);
            nodes.add(factor.at(share));
            int values = factor.ends().size();
            positions.add(factor.isRange() ? share : Math.min(values - 1, Math.floor(share * values)));
        }
        return new SweepPoint(factors, nodes, positions);
    }
}
