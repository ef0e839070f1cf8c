package limbway.model.link;

/**
 * What may be tied where.
 *
 * @param kind rope or pole
 * @param diameterM its thickness [m], above 0
 * @param shortestM least distance between its ends [m], above 0
 * @param longestM greatest distance between its ends [m], above {@code shortestM}
 * @param steepestDeg steepest slope of the line between its ends [°], 0 to 90
 * @param clearanceM least height of any part of it above the ground [m], 0 or more
 * @param spacingM distance between the places along a support to which it may be tied [m], above 0
 * @param onRopes whether it may be tied to ropes and branches too, which give way
 */
public record LinkLimits(
        LinkKind kind,
        double diameterM,
        double shortestM,
        double longestM,
        double steepestDeg,
        double clearanceM,
        double spacingM,
        boolean onRopes) {

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException naming the limit
     */
    public LinkLimits {
        require("diameterM", diameterM, diameterM > 0, "above 0");
        require("shortestM", shortestM, shortestM > 0, "above 0");
        require("longestM", longestM, longestM > shortestM, "above shortestM = " + shortestM);
        require("steepestDeg", steepestDeg, steepestDeg >= 0 && steepestDeg <= 90, "0 to 90");
        require("clearanceM", clearanceM, clearanceM >= 0, "0 or more");
        require("spacingM", spacingM, spacingM > 0, "above 0");
    }

    private static void require(String name, double value, boolean isFine, String allowed) {
        if (!isFine) {
            throw new IllegalArgumentException("link limits: " + name + " = " + value + ", allowed " + allowed);
        }
    }
}
