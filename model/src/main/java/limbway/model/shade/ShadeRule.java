package limbway.model.shade;

import java.util.List;

import limbway.model.parameter.Parameter;
import limbway.model.parameter.Standing;

/**
 * When a platform counts as shaded, and how many must be.
 *
 * @param atLeast shaded platforms wanted at every moment, 1 or more
 * @param leastShadedShare share of the sample points of a platform that must lie in shade, above 0 to 1
 * @param mostBeam share of the direct sunlight that may reach a point in shade, 0 to below 1
 * @param lowestSunDeg height of the sun above the level from which shade is asked for [degrees], 0 to below 90
 */
public record ShadeRule(int atLeast, double leastShadedShare, double mostBeam, double lowestSunDeg) {

    /**
     * The rule of the trade with its usual thresholds.
     *
     * @return two platforms, three quarters of each, at most 30 % of the direct light, sun above 5 degrees
     * @source common practice, no source
     */
    public static ShadeRule standard() {
        return new ShadeRule(2, 0.75, 0.3, 5);
    }

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException naming the value outside its range
     */
    public ShadeRule {
        if (atLeast < 1) {
            throw new IllegalArgumentException("shade rule: atLeast = " + atLeast + ", allowed 1 or more");
        }
        if (!(leastShadedShare > 0 && leastShadedShare <= 1)) {
            throw new IllegalArgumentException(
                    "shade rule: leastShadedShare = " + leastShadedShare + ", allowed above 0 to 1");
        }
        if (!(mostBeam >= 0 && mostBeam < 1)) {
            throw new IllegalArgumentException("shade rule: mostBeam = " + mostBeam + ", allowed 0 to below 1");
        }
        if (!(lowestSunDeg >= 0 && lowestSunDeg < 90)) {
            throw new IllegalArgumentException(
                    "shade rule: lowestSunDeg = " + lowestSunDeg + ", allowed 0 to below 90");
        }
    }

    /**
     * Points of a platform that must lie in shade.
     *
     * @param points its sample points
     * @return the least number that makes up the share
     */
    public int leastPoints(int points) {
        return (int) Math.ceil(leastShadedShare * points - 1e-9);
    }

    /**
     * All values with unit, range and source.
     *
     * @return one parameter for each component
     */
    public List<Parameter> parameters() {
        String source = "common practice, no source; set on the command line";
        return List.of(
                new Parameter(
                        "shade.at-least",
                        "platforms that must lie in shade at once",
                        "1",
                        atLeast,
                        1,
                        5,
                        Standing.ASSUMPTION,
                        source),
                new Parameter(
                        "shade.shaded-share",
                        "share of a platform that must lie in shade for it to count",
                        "1",
                        leastShadedShare,
                        0.5,
                        1,
                        Standing.ASSUMPTION,
                        source),
                new Parameter(
                        "shade.most-beam",
                        "share of the direct sunlight that may reach a point in shade",
                        "1",
                        mostBeam,
                        0.1,
                        0.5,
                        Standing.ASSUMPTION,
                        source),
                new Parameter(
                        "shade.lowest-sun",
                        "height of the sun above the level from which shade is asked for",
                        "°",
                        lowestSunDeg,
                        0,
                        10,
                        Standing.ASSUMPTION,
                        source));
    }
}
