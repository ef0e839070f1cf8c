package limbway.sim.experiment.placement;

import java.util.ArrayList;
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

    private static final int KEPT = 5_000;

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
     * @return the best; none if no choice keeps its places apart
     */
    public static Found run(
            Variant base,
            PlacingTask task,
            List<Candidate> candidates,
            ExpectedTravel travel,
            List<String> standing,
            double apartM,
            int most) {
        DemandTable table = travel.table(standing);
        Together together =
                (a, b) -> candidates.get(a).at().distanceM(candidates.get(b).at()) >= apartM;
        boolean all = FullSearch.choices(candidates.size(), task.count()) <= MOST_JUDGED;
        FullSearch.Found found = all
                ? FullSearch.run(table, together, task.count(), KEPT)
                : SwapSearch.run(table, together, task.count(), KEPT, BEGINNINGS);
        List<Proposal> proposals = new ArrayList<>();
        Map<List<String>, Integer> alike = new HashMap<>();
        for (Choice choice : found.best()) {
            List<String> carriers = choice.candidates().stream()
                    .map(c -> carrier(candidates.get(c)))
                    .sorted()
                    .toList();
            if (proposals.size() < most && alike.merge(carriers, 1, Integer::sum) <= ALIKE) {
                proposals.add(new Proposal(
                        placing(base, task, candidates, travel, table, choice),
                        travel.of(choice.candidates(), standing)));
            }
        }
        return new Found(proposals, found.judged(), all);
    }

    private static String carrier(Candidate candidate) {
        return candidate.on().isEmpty() ? candidate.words() : candidate.on();
    }

    /** The place with most food goes where most trips lead; of equals the first named to the lower number. */
    private static Placing placing(
            Variant base,
            PlacingTask task,
            List<Candidate> candidates,
            ExpectedTravel travel,
            DemandTable table,
            Choice choice) {
        double[] trips = travel.served(table, choice.candidates());
        List<Integer> busiest = IntStream.range(0, trips.length)
                .boxed()
                .sorted(Comparator.comparingDouble((Integer i) -> -trips[i]).thenComparing(Comparator.naturalOrder()))
                .toList();
        List<String> ids = task.ids();
        List<Integer> fullest = IntStream.range(0, ids.size())
                .boxed()
                .sorted(Comparator.comparingDouble((Integer i) -> -food(base, task, ids.get(i)))
                        .thenComparing(Comparator.naturalOrder()))
                .toList();
        Candidate[] spots = new Candidate[ids.size()];
        for (int rank = 0; rank < spots.length; rank++) {
            spots[fullest.get(rank)] = candidates.get(choice.candidates().get(busiest.get(rank)));
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
