package limbway.sim.experiment.trial;

import java.util.function.Supplier;

import limbway.sim.animal.DaySettings;
import limbway.sim.habitat.Habitat;

/**
 * A layout to be lived in under some assumptions.
 *
 * @param key names the layout and what else differs between the trials of a question; unique among them
 * @param habitat makes the layout ready; asked only if there is something to live, and then once
 * @param day how animals spend their day
 */
public record Trial(String key, Supplier<Habitat> habitat, DaySettings day) {}
