package limbway.sim.journal;

/**
 * One animal that took the stall of another.
 *
 * @param day day of the run, from 1
 * @param timeMs when, in milliseconds since midnight before day 1
 * @param resource number of the resource
 * @param winner number of the animal that took the stall
 * @param loser number of the animal that gave way
 * @param motive why the winner came
 */
public record Displacement(int day, long timeMs, int resource, int winner, int loser, Motive motive) {}
