package limbway.model.enclosure;

import java.util.List;

import limbway.model.geometry.Outline;
import limbway.model.geometry.Terrain;

/**
 * The ground of an enclosure.
 *
 * @param outline what the enclosure covers, in plan
 * @param surface what it is covered with, in the scenario's words; shown, not computed with
 * @param obstacles areas that cannot be walked over
 * @param terrain its heights
 */
public record Ground(Outline outline, String surface, List<Obstacle> obstacles, Terrain terrain) {

    /** Keeps a copy of the list. */
    public Ground {
        obstacles = List.copyOf(obstacles);
    }

    /**
     * Level ground at height 0.
     *
     * @param outline what the enclosure covers, in plan
     * @param surface what it is covered with
     * @param obstacles areas that cannot be walked over
     */
    public Ground(Outline outline, String surface, List<Obstacle> obstacles) {
        this(outline, surface, obstacles, Terrain.LEVEL);
    }
}
