package limbway.reports.command;

import java.util.List;
import java.util.Optional;

import limbway.sim.experiment.placement.Candidate;
import limbway.sim.experiment.placement.PlacingRules;
import limbway.sim.experiment.placement.PlacingTask;

/**
 * What somebody wants placed.
 *
 * @param task what
 * @param rules what a place must satisfy
 * @param given candidates of the scenario; empty if they are to be made
 * @param spacingM distance at which they are made, or empty for the usual one
 */
record PlaceWish(PlacingTask task, PlacingRules rules, Optional<List<Candidate>> given, Optional<Double> spacingM) {}
