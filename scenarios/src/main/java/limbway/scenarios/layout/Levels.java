package limbway.scenarios.layout;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import limbway.model.geometry.Corner;
import limbway.model.geometry.Terrain;
import limbway.scenarios.problem.Place;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/**
 * Lower and upper end of something upright.
 *
 * @param baseM height of the lower end [m]
 * @param topM height of the upper end [m], above {@code baseM}
 */
record Levels(double baseM, double topM) {

    /** Something lower than this is none [m]. */
    private static final double LOWEST_M = 0.01;

    /** What stands on the ground: from its stated bottom, or from the lowest ground at its corners. */
    static Optional<Levels> standing(
            OptionalDouble bottomM,
            double topM,
            List<Corner> corners,
            Terrain terrain,
            Place place,
            String what,
            Problems problems) {
        double baseM = bottomM.orElseGet(() -> lowestGroundM(corners, terrain));
        if (topM - baseM >= LOWEST_M) {
            return Optional.of(new Levels(baseM, topM));
        }
        problems.add(Problem.at(place, what + " ends where it begins or below")
                .found("bottom " + Wording.measure(baseM, "m") + ", top " + Wording.measure(topM, "m"))
                .allowed("top at least 0.01 m above bottom, both measured from height 0")
                .mend("correct top or bottom"));
        return Optional.empty();
    }

    static double lowestGroundM(List<Corner> corners, Terrain terrain) {
        return corners.stream()
                .mapToDouble(corner -> terrain.heightM(corner.xM(), corner.yM()))
                .min()
                .orElse(0);
    }
}
