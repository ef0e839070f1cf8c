package limbway.reports.command;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import limbway.model.parameter.Parameter;
import limbway.model.study.Variant;
import limbway.reports.data.Json;
import limbway.reports.measure.criterion.DesignCriterion;
import limbway.reports.page.Supplement;
import limbway.reports.page.WorldsSection;
import limbway.sim.experiment.RunSettings;
import limbway.sim.experiment.screening.Factor;
import limbway.sim.experiment.trial.Notebook;
import limbway.sim.experiment.worlds.InputEffect;
import limbway.sim.experiment.worlds.LivedWorlds;
import limbway.sim.experiment.worlds.PairFound;
import limbway.sim.experiment.worlds.PlausibleInputs;
import limbway.sim.experiment.worlds.PlausibleWorlds;
import limbway.sim.experiment.worlds.Reversal;
import limbway.sim.experiment.worlds.TotalEffect;
import limbway.sim.experiment.worlds.WorldProgress;
import limbway.sim.experiment.worlds.WorldSettings;
import limbway.sim.experiment.worlds.WorldsFound;

/** Compares layouts in plausible worlds and tells it; for other programs differences are {@code a} less {@code b}. */
final class WorldsAnswer {

    private WorldsAnswer() {}

    /**
     * Lives in the worlds.
     *
     * @param question the scenario
     * @param layouts what is compared, two or more
     * @param criteria what it is compared by; reversals are looked for by the first
     * @param worlds how many worlds and how closely
     * @param settings seed, days, date and warm-up
     * @param withWorth whether places are worth something beyond needs and energy
     * @param notebook where finished work is looked up and noted
     * @param progress told of what is finished; may end it
     * @return what is told of it; empty if it was ended early
     */
    static Optional<Supplement> of(
            Question question,
            List<Variant> layouts,
            List<DesignCriterion> criteria,
            WorldSettings worlds,
            RunSettings settings,
            boolean withWorth,
            Notebook notebook,
            WorldProgress progress) {
        return PlausibleWorlds.run(
                        PlausibleInputs.of(question.study(), question.assumptions(), withWorth),
                        layouts.stream().map(Variant::name).toList(),
                        criteria.stream().map(DesignCriterion::name).toList(),
                        new LivedWorlds(
                                question.study(),
                                layouts,
                                question.assumptions(),
                                withWorth,
                                settings,
                                List.copyOf(criteria),
                                notebook),
                        worlds,
                        progress)
                .map(found -> WorldsSection.of(found, criteria, answer(found)));
    }

    /** The machine-readable answer. */
    static Map<String, Object> answer(WorldsFound found) {
        Map<String, Object> root = new LinkedHashMap<>();
        root.put("worlds", found.settings().worlds());
        root.put("lived", found.worlds().size());
        root.put("refused", found.refused().size());
        root.put(
                "refusals",
                found.refused().stream()
                        .map(WorldsFound.Refused::why)
                        .distinct()
                        .toList());
        root.put("replications", found.settings().replications());
        List<Object> pairs = new ArrayList<>();
        found.pairs().forEach(pair -> pairs.add(pair(found, pair)));
        root.put("pairs", pairs);
        List<Object> totals = new ArrayList<>();
        found.totals().forEach(total -> totals.add(total(total)));
        root.put("totals", totals);
        List<Object> inputs = new ArrayList<>();
        found.inputs().forEach(input -> inputs.add(input(input)));
        root.put("inputs", inputs);
        return root;
    }

    private static Map<String, Object> pair(WorldsFound found, PairFound pair) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("a", found.layouts().get(pair.a()));
        object.put("b", found.layouts().get(pair.b()));
        object.put("measure", found.criteria().get(pair.criterion()));
        Map<String, Object> share = new LinkedHashMap<>();
        share.put("mean", pair.share().share());
        share.put("lo", pair.share().lo());
        share.put("hi", pair.share().hi());
        object.put("share_a_more", share);
        object.put("a_more", pair.more());
        object.put("b_more", pair.less());
        object.put("equal", pair.equal());
        object.put("mean_difference", pair.mean());
        Map<String, Object> quantiles = new LinkedHashMap<>();
        for (int i = 0; i < PairFound.AT.size(); i++) {
            quantiles.put(
                    Long.toString(Math.round(100 * PairFound.AT.get(i))),
                    pair.quantiles().get(i));
        }
        object.put("quantiles", quantiles);
        object.put("chance_share", Json.orNull(pair.chanceShare()));
        object.put(
                "index_floor",
                pair.effects().isEmpty() ? null : pair.effects().get(0).index().floor());
        List<Object> effects = new ArrayList<>();
        for (InputEffect effect :
                pair.effects().stream().limit(WorldSettings.MOST_TOTAL).toList()) {
            Map<String, Object> one = new LinkedHashMap<>();
            one.put("input", effect.input().parameter().name());
            one.put("index", effect.index().index());
            one.put("above_floor", effect.index().isAboveFloor());
            one.put("difference_where_low", effect.whereLow());
            one.put("difference_where_high", effect.whereHigh());
            effects.add(one);
        }
        object.put("strongest", effects);
        List<Object> reversals = new ArrayList<>();
        pair.reversals().forEach(reversal -> reversals.add(reversal(reversal)));
        object.put("reversals", reversals);
        return object;
    }

    private static Map<String, Object> reversal(Reversal reversal) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("input", reversal.input().parameter().name());
        object.put("assumed", reversal.input().parameter().value());
        object.put("difference_as_assumed", finite(reversal.asAssumed()));
        object.put("least_difference", finite(reversal.least()));
        object.put("greatest_difference", finite(reversal.greatest()));
        object.put("value", reversal.turn().map(Reversal.Turn::value).orElse(null));
        object.put(
                "side",
                reversal.turn().map(turn -> turn.above() ? "above" : "below").orElse(null));
        Optional<Reversal.Surroundings> sure = reversal.turn().flatMap(Reversal.Turn::confirmed);
        object.put("confirmed", sure.isPresent());
        object.put("confirmed_low", sure.map(Reversal.Surroundings::low).orElse(null));
        object.put("confirmed_high", sure.map(Reversal.Surroundings::high).orElse(null));
        return object;
    }

    private static Double finite(double value) {
        return Json.orNull(Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty());
    }

    private static Map<String, Object> total(TotalEffect total) {
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("input", total.input().parameter().name());
        object.put("first", total.first());
        object.put("total", total.total());
        object.put("total_se", total.totalError());
        object.put("points", total.points());
        return object;
    }

    private static Map<String, Object> input(Factor input) {
        Parameter p = input.parameter();
        Map<String, Object> object = new LinkedHashMap<>();
        object.put("name", p.name());
        object.put("meaning", p.meaning());
        object.put("unit", p.unit());
        object.put("assumed", p.value());
        object.put("low", p.low());
        object.put("high", p.high());
        object.put("logarithmic", input.isLogarithmic());
        return object;
    }
}
