package limbway.reports.command;

import java.util.List;
import java.util.Optional;

import limbway.scenarios.PlacingGiven;
import limbway.scenarios.entry.PlacingEntry;
import limbway.sim.experiment.placement.CandidatePlace;
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
record PlaceWish(
        PlacingTask task, PlacingRules rules, Optional<List<CandidatePlace>> given, Optional<Double> spacingM) {

    /** What the command line says counts before what the scenario says; a spacing makes candidates in any case. */
    static PlaceWish of(Question question, PlaceOptions options) throws Refusal {
        Optional<PlacingGiven> scenario = question.read().placing();
        PlacingRules rules =
                scenario.map(PlacingGiven::entry).map(PlaceWish::rules).orElse(PlacingRules.standard());
        Optional<Double> spacingM = Optional.ofNullable(options.spacingM);
        Optional<List<CandidatePlace>> given = scenario.filter(
                        placing -> !placing.entry().candidates().isEmpty() && spacingM.isEmpty())
                .map(placing -> candidates(placing, question.layout().name()));
        return new PlaceWish(options.task(question.layout()), options.rules(rules), given, spacingM);
    }

    private static PlacingRules rules(PlacingEntry entry) {
        PlacingRules standard = PlacingRules.standard();
        return new PlacingRules(
                entry.keeperReachM(),
                entry.hoist().orElse(standard.hoist()),
                entry.apartM().orElse(standard.apartM()),
                entry.loadKg(),
                entry.shaded().orElse(standard.shaded()),
                entry.noHotter().orElse(standard.noHotter()),
                entry.barrierM().orElse(standard.barrierM()));
    }

    private static List<CandidatePlace> candidates(PlacingGiven placing, String layout) {
        return placing.candidates().getOrDefault(layout, List.of()).stream()
                .map(spot -> new CandidatePlace(spot.words(), spot.at(), spot.on()))
                .toList();
    }
}
