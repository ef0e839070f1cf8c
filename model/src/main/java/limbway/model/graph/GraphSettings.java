package limbway.model.graph;

import java.util.List;
import java.util.stream.Stream;

import limbway.model.body.Body;
import limbway.model.parameter.Parameter;
import limbway.model.parameter.Standing;

/**
 * How finely an enclosure is compiled.
 *
 * @param holdSpacingM greatest distance between two holds along a support [m], above 0
 * @param reachesM how far the bodies that will use the graph reach [m], ascending, at least one, each above 0
 * @param useReachM how far from a resource a hold may be to use it [m]
 */
public record GraphSettings(double holdSpacingM, List<Double> reachesM, double useReachM) {

    /** Default distance between holds [m]. */
    public static final double HOLD_SPACING_M = 0.25;

    /** Default distance from which a resource is used [m]. */
    public static final double USE_REACH_M = 0.6;

    /**
     * Checks that all lengths are above 0.
     *
     * @throws IllegalArgumentException naming the setting
     */
    public GraphSettings {
        if (!(holdSpacingM > 0)) {
            throw new IllegalArgumentException("graph: holdSpacingM = " + holdSpacingM + ", allowed above 0");
        }
        reachesM = List.copyOf(reachesM);
        if (reachesM.isEmpty() || !(reachesM.get(0) > 0)) {
            throw new IllegalArgumentException("graph: reachesM = " + reachesM + ", allowed one or more above 0");
        }
        if (!(useReachM > 0)) {
            throw new IllegalArgumentException("graph: useReachM = " + useReachM + ", allowed above 0");
        }
    }

    /**
     * Default settings for given bodies.
     *
     * @param bodies who will use the graph, at least one
     * @return settings
     */
    public static GraphSettings forBodies(List<Body> bodies) {
        List<Double> reachesM = bodies.stream()
                .flatMap(body -> Stream.of(body.gapReachM(), body.overheadReachM()))
                .distinct()
                .sorted()
                .toList();
        return new GraphSettings(HOLD_SPACING_M, reachesM, USE_REACH_M);
    }

    /**
     * The same settings with another spacing.
     *
     * @param spacingM greatest distance between two holds along a support [m], above 0
     * @return a copy
     */
    public GraphSettings withHoldSpacing(double spacingM) {
        return new GraphSettings(spacingM, reachesM, useReachM);
    }

    /**
     * Widest gap that gets a move.
     *
     * @return the longest reach [m]
     */
    public double widestGapM() {
        return reachesM.get(reachesM.size() - 1);
    }

    /**
     * The settings as parameters.
     *
     * @return spacing and use reach; the reaches follow from the bodies
     */
    public List<Parameter> parameters() {
        return List.of(
                new Parameter(
                        "graph.hold-spacing",
                        "greatest distance between holds along a support",
                        "m",
                        holdSpacingM,
                        0.1,
                        1,
                        Standing.ASSUMPTION,
                        "halving it moves costs by less than 2 % on random enclosures, tested"),
                new Parameter(
                        "graph.use-reach",
                        "distance from which a resource is used",
                        "m",
                        useReachM,
                        0.3,
                        1.2,
                        Standing.ASSUMPTION,
                        "about half an arm's length of a juvenile"));
    }
}
