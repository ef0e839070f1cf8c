/**
 * What an animal needs, what it knows, how it weighs places and chooses.
 *
 * <p>Knows habitat and chance, not the clock: every method is told the time. Start at
 * {@link limbway.sim.animal.Appraisal}; all numbers are in {@link limbway.sim.animal.DaySettings}.
 */
package limbway.sim.animal;
