package limbway.model.graph;

import java.util.List;

import limbway.model.body.Body;
import limbway.model.parameter.Parameter;
import limbway.model.parameter.Standing;

/**
 * How finely an enclosure is compiled.
 *
 * @param holdSpacingM greatest distance between two holds along a support [m], above 0
 * @param widestGapM widest gap that gets a move [m]: the longest reach of any body that will use the graph
 * @param useReachM how far from a resource a hold may be to use it [m]
 */
public record GraphSettings(double holdSpacingM, double widestGapM, double useReachM) {

    /** Default distance between holds [m]. */
    public static final double HOLD_SPACING_M = 0.5;

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
        if (!(widestGapM > 0)) {
            throw new IllegalArgumentException("graph: widestGapM = " + widestGapM + ", allowed above 0");
        }
        if (!(useReachM > 0)) {
            throw new IllegalArgumentException("graph: useReachM = " + useReachM + ", allowed above 0");
        }
    }

    /**
     * Default settings with gaps up to the longest reach of the given bodies.
     *
     * @param bodies who will use the graph, at least one
     * @return settings
     */
    public static GraphSettings forBodies(List<Body> bodies) {
        double widestM = bodies.stream()
                .mapToDouble(body -> Math.max(body.gapReachM(), body.overheadReachM()))
                .max()
                .orElseThrow(() -> new IllegalArgumentException("graph: bodies = none, allowed one or more"));
        return new GraphSettings(HOLD_SPACING_M, widestM, USE_REACH_M);
    }

    /**
     * The settings as parameters.
     *
     * @return spacing and use reach; the widest gap follows from the bodies
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
