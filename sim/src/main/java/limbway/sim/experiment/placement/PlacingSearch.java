package limbway.sim.experiment.placement;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

import limbway.model.enclosure.ResourceKind;
import limbway.model.study.Feeding;
import limbway.model.study.Variant;
import limbway.sim.experiment.placement.ExpectedTravel.Expected;

/**
 * The first layer: judges combinations of candidates by expected travel and hands on the best of them, no two of which are
 * much the same.
 */
public final class PlacingSearch {

    /** Up to so many choices all are judged. */
    public static final long MOST_JUDGED = 1_000_000;

    /** Beginnings of the search where there are more. */
    public static final int BEGINNINGS = 20;

    /** Of choices on the same supports so many are handed on; the others differ by a step along them. */
    private static final int ALIKE = 2;

    /**
     * A choice to be lived in.
     *
     * @param placing which place goes where
     * @param expected what is expected of it
     */
    public record Proposal(Placing placing, Expected expected) {}

    /**
     * What came of the first layer.
     *
     * @param proposals the best, best first
     * @param judged how many choices were judged
     * @param all whether these were all there are
     */
    public record Found(List<Proposal> proposals, long judged, boolean all) {

        /** Keeps a copy of the list. */
        public Found {
            proposals = List.copyOf(proposals);
        }
    }

    private PlacingSearch() {}

    /**
     * Judges choices.
     *
     * @param base the layout before
     * @param task what is placed
     * @param candidates the candidates, each of which every body reaches
     * @param travel expected travel to and from them
     * @param standing ids of places of the kind that stay where they are
     * @param apartM least distance between two of the places chosen [m]
     * @param most how many are handed on
     * @return the best, at most two on the same supports and platforms; fewer than asked for only if there are no more; none if
     *     no choice keeps its places apart and changes anything
     */
    public static Found run(
            Variant base,
            PlacingTask task,
            List<CandidatePlace> candidates,
            ExpectedTravel travel,
            List<String> standing,
            double apartM,
            int most) {
        DemandTable table = travel.table(standing);
        Together together =
                (a, b) -> candidates.get(a).at().distanceM(candidates.get(b).at()) >= apartM
                        && !candidates.get(a).coincides(candidates.get(b));
        boolean[] now = new boolean[candidates.size()];
        for (int c = 0; c < now.length; c++) {
            CandidatePlace candidate = candidates.get(c);
            now[c] = task.moved().stream().anyMatch(id -> candidate.isWhere(base, id));
        }
        BestChoices best = new BestChoices(
                most,
                ALIKE,
                kinds(candidates),
                chosen -> Arrays.stream(chosen).anyMatch(c -> !now[c])
                        || placing(base, task, candidates, travel, table, chosen)
                                .changes(base));
        boolean all = FullSearch.choices(candidates.size(), task.count()) <= MOST_JUDGED;
        FullSearch.Found found = all
                ? FullSearch.run(table, together, task.count(), best)
                : SwapSearch.run(table, together, task.count(), best, BEGINNINGS);
        List<Proposal> proposals = new ArrayList<>();
        for (Choice choice : found.best()) {
            int[] chosen = choice.candidates().stream().mapToInt(c -> c).toArray();
            proposals.add(new Proposal(
                    placing(base, task, candidates, travel, table, chosen), travel.of(choice.candidates(), standing)));
        }
        return new Found(proposals, found.judged(), all);
    }

    /** Candidates on the same support or platform are of one kind; one in the air is of its own. */
    private static int[] kinds(List<CandidatePlace> candidates) {
        Map<String, Integer> known = new HashMap<>();
        return candidates.stream()
                .map(candidate -> candidate.on().isEmpty() ? candidate.words() : candidate.on())
                .mapToInt(carrier -> known.computeIfAbsent(carrier, fresh -> known.size()))
                .toArray();
    }

    /**
     * A place whose spot of now is chosen stays. Of the others the place with most food goes where most trips lead; of equals the
     * first named to the lower number.
     */
    private static Placing placing(
            Variant base,
            PlacingTask task,
            List<CandidatePlace> candidates,
            ExpectedTravel travel,
            DemandTable table,
            int[] chosen) {
        List<String> ids = task.ids();
        CandidatePlace[] spots = new CandidatePlace[ids.size()];
        boolean[] taken = new boolean[chosen.length];
        for (int place = 0; place < spots.length; place++) {
            for (int i = 0; i < chosen.length && spots[place] == null; i++) {
                if (!taken[i] && candidates.get(chosen[i]).isWhere(base, ids.get(place))) {
                    spots[place] = candidates.get(chosen[i]);
                    taken[i] = true;
                }
            }
        }
        double[] trips = travel.served(table, Arrays.stream(chosen).boxed().toList());
        List<Integer> busiest = IntStream.range(0, trips.length)
                .filter(i -> !taken[i])
                .boxed()
                .sorted(Comparator.comparingDouble((Integer i) -> -trips[i]).thenComparing(Comparator.naturalOrder()))
                .toList();
        List<Integer> fullest = IntStream.range(0, spots.length)
                .filter(place -> spots[place] == null)
                .boxed()
                .sorted(Comparator.comparingDouble((Integer i) -> -food(base, task, ids.get(i)))
                        .thenComparing(Comparator.naturalOrder()))
                .toList();
        for (int rank = 0; rank < busiest.size(); rank++) {
            spots[fullest.get(rank)] = candidates.get(chosen[busiest.get(rank)]);
        }
        return new Placing(task, List.of(spots));
    }

    private static double food(Variant base, PlacingTask task, String id) {
        return task.kind() != ResourceKind.FOOD
                ? 0
                : base.feedings().stream()
                        .filter(feeding -> feeding.resource().equals(id))
                        .mapToDouble(Feeding::energyKj)
                        .sum();
    }
}
