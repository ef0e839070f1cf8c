package limbway.model.graph;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import limbway.model.body.Body;
import limbway.model.energy.Elasticities;
import limbway.model.energy.EnergySettings;
import limbway.model.parameter.Parameter;
import limbway.model.parameter.Standing;
import limbway.model.strength.Strengths;

/**
 * How finely an enclosure is compiled, and for whom.
 *
 * @param holdSpacingM greatest distance between two holds along a support [m], above 0
 * @param bodies who will use the graph, at least one; no gap gets a move that none of them could cross
 * @param useReachM how far from a resource a hold may be to use it [m]
 * @param energy bounds the sways, leaps and drops that get a move
 * @param elasticities how the materials bend
 * @param strengths at what stress they break, and how much of it a support may take
 * @param branchesNPerM force for each metre that the branches of a crown give where they are held [N/m], above 0
 * @param hammockNPerM force for each metre that a hammock gives [N/m], above 0
 * @param fingerShare breadth of the fingers over the thickest hook grip of a body, above 0
 */
public record GraphSettings(
        double holdSpacingM,
        List<Body> bodies,
        double useReachM,
        EnergySettings energy,
        Elasticities elasticities,
        Strengths strengths,
        double branchesNPerM,
        double hammockNPerM,
        double fingerShare) {

    /** Default distance between holds [m]. */
    public static final double HOLD_SPACING_M = 0.25;

    /** Default distance from which a resource is used [m]. */
    public static final double USE_REACH_M = 0.6;

    private static final double BRANCHES_N_PER_M = 2000;
    private static final double HAMMOCK_N_PER_M = 1500;
    private static final double FINGER_SHARE = 0.2;

    /**
     * Checks that all lengths are above 0 and that there is a body.
     *
     * @throws IllegalArgumentException naming the setting
     */
    public GraphSettings {
        if (!(holdSpacingM > 0)) {
            throw new IllegalArgumentException("graph: holdSpacingM = " + holdSpacingM + ", allowed above 0");
        }
        bodies = List.copyOf(bodies);
        if (bodies.isEmpty()) {
            throw new IllegalArgumentException("graph: bodies = [], allowed one or more");
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
        return new GraphSettings(
                HOLD_SPACING_M,
                bodies,
                USE_REACH_M,
                EnergySettings.standard(),
                Elasticities.standard(),
                Strengths.standard(),
                BRANCHES_N_PER_M,
                HAMMOCK_N_PER_M,
                FINGER_SHARE);
    }

    /**
     * The same settings with another spacing.
     *
     * @param spacingM greatest distance between two holds along a support [m], above 0
     * @return a copy
     */
    public GraphSettings withHoldSpacing(double spacingM) {
        return new GraphSettings(
                spacingM, bodies, useReachM, energy, elasticities, strengths, branchesNPerM, hammockNPerM, fingerShare);
    }

    /**
     * How far the bodies reach, across and overhead.
     *
     * @return reaches [m], ascending, each once
     */
    public List<Double> reachesM() {
        return bodies.stream()
                .flatMap(body -> Stream.of(body.gapReachM(), body.overheadReachM()))
                .distinct()
                .sorted()
                .toList();
    }

    /**
     * Widest gap that is crossed by reaching.
     *
     * @return the longest reach [m]
     */
    public double widestGapM() {
        return reachesM().get(reachesM().size() - 1);
    }

    /**
     * The settings as parameters.
     *
     * @return spacing, use reach and how materials bend; the reaches follow from the bodies
     */
    public List<Parameter> parameters() {
        List<Parameter> all = new ArrayList<>(fineness());
        all.addAll(elasticities.parameters());
        all.addAll(strengths.parameters());
        return all;
    }

    private List<Parameter> fineness() {
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
                        "about half an arm's length of a juvenile"),
                new Parameter(
                        "graph.branches-stiffness",
                        "force for each metre that the branches of a crown give",
                        "N/m",
                        branchesNPerM,
                        200,
                        5000,
                        Standing.ASSUMPTION,
                        "about that of a living branch 7 cm thick and 2.5 m long; real crowns were not measured"),
                new Parameter(
                        "graph.hammock-stiffness",
                        "force for each metre that a hammock gives",
                        "N/m",
                        hammockNPerM,
                        500,
                        5000,
                        Standing.ASSUMPTION,
                        "a large male sinks by half a metre; no measurement was found"),
                new Parameter(
                        "graph.finger-share",
                        "breadth of the fingers over the thickest hook grip",
                        "1",
                        fingerShare,
                        0.1,
                        0.3,
                        Standing.ASSUMPTION,
                        "fingers of 25 mm for a hook grip of 125 mm; no measurement was found"));
    }
}
