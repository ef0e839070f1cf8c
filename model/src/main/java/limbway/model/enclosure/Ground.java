package limbway.model.enclosure;

import java.util.List;

import limbway.model.geometry.Outline;

/**
 * The level ground of an enclosure, at height 0.
 *
 * @param outline what the enclosure covers, in plan
 * @param surface what it is covered with, in the scenario's words; shown, not computed with
 * @param obstacles areas that cannot be walked over
 */
public record Ground(Outline outline, String surface, List<Obstacle> obstacles) {

    /** Keeps a copy of the list. */
    public Ground {
        obstacles = List.copyOf(obstacles);
    }
}
