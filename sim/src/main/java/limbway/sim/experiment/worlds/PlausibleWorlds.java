package limbway.sim.experiment.worlds;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.BooleanSupplier;

import limbway.sim.experiment.Progress;
import limbway.sim.experiment.Workers;
import limbway.sim.experiment.screening.Factor;
import limbway.sim.experiment.statistics.LatinHypercube;
import limbway.sim.experiment.statistics.LatinHypercube.Within;
import limbway.sim.experiment.worlds.WorldProgress.Stage;

/**
 * Compares layouts in worlds that differ in all that is not known.
 *
 * <p>All inputs are drawn together over their ranges by a Latin hypercube. Each world has chance of its own, the same for
 * every layout in it. Worlds are stored under their number: the result is the same for any number of threads.
 */
public final class PlausibleWorlds {

    private static final int SAMPLE = 1;

    private final List<Factor> inputs;
    private final List<String> layouts;
    private final List<String> criteria;
    private final WorldModel model;
    private final WorldSettings settings;
    private final WorldProgress progress;

    private PlausibleWorlds(
            List<Factor> inputs,
            List<String> layouts,
            List<String> criteria,
            WorldModel model,
            WorldSettings settings,
            WorldProgress progress) {
        this.inputs = List.copyOf(inputs);
        this.layouts = List.copyOf(layouts);
        this.criteria = List.copyOf(criteria);
        this.model = new Remembering(model);
        this.settings = settings;
        this.progress = progress;
    }

    /**
     * Draws the worlds, lives in them and sums up.
     *
     * @param inputs what may be otherwise, at least one, names used once
     * @param layouts names of the layouts of the model, two or more
     * @param criteria names of the criteria of the model, one or more; reversals are looked for by the first
     * @param model lives in the layouts
     * @param settings how many worlds and how closely
     * @param progress told of what is finished; may end it
     * @return what was found; empty if it was ended early
     */
    public static Optional<WorldsFound> run(
            List<Factor> inputs,
            List<String> layouts,
            List<String> criteria,
            WorldModel model,
            WorldSettings settings,
            WorldProgress progress) {
        return new PlausibleWorlds(inputs, layouts, criteria, model, settings, progress).run();
    }

    private Optional<WorldsFound> run() {
        List<String> names =
                inputs.stream().map(input -> input.parameter().name()).toList();
        LatinHypercube drawn = LatinHypercube.draw(settings.seed(), SAMPLE, names, settings.worlds(), Within.RANDOM);
        List<World> worlds = new ArrayList<>();
        List<WorldsFound.Refused> refused = new ArrayList<>();
        Optional<List<Tried>> lived = all(Stage.WORLDS, settings.worlds(), (number, stop) -> live(drawn, number, stop));
        if (lived.isEmpty()) {
            return Optional.empty();
        }
        for (Tried one : lived.get()) {
            one.world.ifPresent(worlds::add);
            one.refused.ifPresent(refused::add);
        }
        List<PairFound> pairs = pairs(worlds);
        return turned(pairs).flatMap(followed -> totals(followed)
                .map(totals ->
                        new WorldsFound(settings, inputs, layouts, criteria, worlds, refused, followed, totals)));
    }

    private <R> Optional<List<R>> all(Stage stage, int count, Workers.Task<R> task) {
        return Workers.all(count, settings.threads(), new OfStage(stage, progress), task);
    }

    private record OfStage(Stage stage, WorldProgress progress) implements Progress {
        @Override
        public void finished(int done, int total) {
            progress.finished(stage, done, total);
        }

        @Override
        public boolean wantsStop() {
            return progress.wantsStop();
        }
    }

    /** One of the worlds drawn: it was lived in, or the model refused it. */
    private record Tried(Optional<World> world, Optional<WorldsFound.Refused> refused) {}

    /** Lives in one world, unless that is given up. */
    private Optional<Tried> live(LatinHypercube drawn, int number, BooleanSupplier stop) {
        Map<String, Double> values = new LinkedHashMap<>();
        for (int i = 0; i < inputs.size(); i++) {
            values.put(inputs.get(i).parameter().name(), inputs.get(i).at(drawn.share(number, i)));
        }
        WorldModel.Lived found =
                model.live(values, 1 + number * settings.replications(), settings.replications(), stop);
        if (found instanceof WorldModel.Lived.Values lived) {
            return Optional.of(new Tried(Optional.of(new World(number + 1, values, lived.values())), Optional.empty()));
        }
        return found instanceof WorldModel.Lived.Refused no
                ? Optional.of(new Tried(Optional.empty(), Optional.of(new WorldsFound.Refused(number + 1, no.why()))))
                : Optional.empty();
    }

    private List<PairFound> pairs(List<World> worlds) {
        List<PairFound> pairs = new ArrayList<>();
        for (int a = 0; a < layouts.size(); a++) {
            for (int b = a + 1; b < layouts.size(); b++) {
                for (int criterion = 0; criterion < criteria.size(); criterion++) {
                    PairSummary.of(inputs, worlds, a, b, criterion).ifPresent(pairs::add);
                }
            }
        }
        return pairs;
    }

    /** The pairs with the reversals of their strongest inputs, or nothing if it was given up. */
    private Optional<List<PairFound>> turned(List<PairFound> pairs) {
        List<Followed> searches = new ArrayList<>();
        List<Map<String, Double>> ranges = new ArrayList<>();
        for (PairFound pair : pairs) {
            for (InputEffect effect : followed(pair)) {
                searches.add(new Followed(pair, effect.input()));
                for (double share : TurnSearch.GRID) {
                    ranges.add(Map.of(
                            effect.input().parameter().name(), effect.input().at(share)));
                }
            }
        }
        if (searches.isEmpty()) {
            return Optional.of(pairs);
        }
        ranges.add(Map.of());
        // several pairs may share an input; each point of its range is lived in once for all of them
        List<Map<String, Double>> different = ranges.stream().distinct().toList();
        return all(Stage.RANGES, different.size(), (i, stop) -> tried(different.get(i), stop))
                .flatMap(done -> all(Stage.TURNS, searches.size(), (i, stop) -> searches.get(i)
                        .follow(model, settings, stop)))
                .map(found -> with(pairs, searches, found));
    }

    /** An input of a pair to be followed over its range. */
    private record Followed(PairFound pair, Factor input) {
        Optional<Reversal> follow(WorldModel model, WorldSettings settings, BooleanSupplier stop) {
            return new TurnSearch(model, pair, input, settings.turnReplications(), stop).follow();
        }
    }

    private List<InputEffect> followed(PairFound pair) {
        return pair.criterion() > 0
                ? List.of()
                : pair.effects().stream().limit(settings.turned()).toList();
    }

    private Optional<Boolean> tried(Map<String, Double> values, BooleanSupplier stop) {
        return model.live(values, 1, settings.turnReplications(), stop) instanceof WorldModel.Lived.GivenUp
                ? Optional.empty()
                : Optional.of(true);
    }

    private static List<PairFound> with(List<PairFound> pairs, List<Followed> searches, List<Reversal> found) {
        List<PairFound> all = new ArrayList<>();
        for (PairFound pair : pairs) {
            List<Reversal> own = new ArrayList<>();
            for (int i = 0; i < found.size(); i++) {
                if (searches.get(i).pair.equals(pair)) {
                    own.add(found.get(i));
                }
            }
            all.add(pair.with(own));
        }
        return all;
    }

    /** Total indices of the strongest inputs, or nothing if it was given up. */
    private Optional<List<TotalEffect>> totals(List<PairFound> pairs) {
        if (settings.totalPoints() == 0 || pairs.isEmpty()) {
            return Optional.of(List.of());
        }
        PairFound pair = pairs.get(0);
        List<Factor> strongest = pair.effects().stream()
                .limit(WorldSettings.MOST_TOTAL)
                .map(InputEffect::input)
                .toList();
        TotalSearch search = new TotalSearch(strongest, settings.totalPoints(), settings.seed());
        return all(
                        Stage.TOTALS,
                        search.count(),
                        (number, stop) -> search.live(model, number, settings.replications(), stop))
                .map(worlds -> search.effects(worlds, pair.a(), pair.b(), pair.criterion()));
    }
}
