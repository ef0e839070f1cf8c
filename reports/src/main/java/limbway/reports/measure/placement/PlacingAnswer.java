package limbway.reports.measure.placement;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

import limbway.sim.experiment.placement.Front;
import limbway.sim.experiment.placement.PlacingContest;
import limbway.sim.experiment.placement.PlacingSearch.Proposal;
import limbway.sim.experiment.placement.PlacingTask;
import limbway.sim.experiment.statistics.Interval;
import limbway.sim.experiment.statistics.KimNelson;

/**
 * Where places should be, and how sure that is.
 *
 * @param task what was placed
 * @param layouts what was lived in, best first
 * @param before the layout as it stands, under the chance of the search
 * @param selected what the selection came to
 * @param fresh the best under chance that the search never met
 * @param freshBefore the layout as it stands under the same
 */
public record PlacingAnswer(
        PlacingTask task,
        List<PlacedLayout> layouts,
        LivedLayout before,
        KimNelson.Selected selected,
        LivedLayout fresh,
        LivedLayout freshBefore) {

    private static final int LETTERS = 26;

    /** Keeps a copy of the list. */
    public PlacingAnswer {
        layouts = List.copyOf(layouts);
    }

    /**
     * Puts an answer together.
     *
     * @param task what was placed
     * @param proposals what was lived in
     * @param contest what came of it
     * @param fresh values of the selected layout under fresh chance
     * @param freshBefore values of the layout before under the same
     * @return the answer
     */
    public static PlacingAnswer of(
            PlacingTask task,
            List<Proposal> proposals,
            PlacingContest.Outcome contest,
            double[][] fresh,
            double[][] freshBefore) {
        List<LivedLayout> lived =
                contest.values().stream().map(LivedLayout::new).toList();
        boolean[] front = Front.of(lived.stream().map(PlacingAnswer::aims).toArray(double[][]::new));
        List<Integer> order = IntStream.range(0, proposals.size())
                .boxed()
                .sorted(Comparator.comparing(
                                (Integer i) -> i != contest.selected().best())
                        .thenComparing(i -> !contest.selected().left().contains(i))
                        .thenComparing(i -> -lived.get(i).mean(PlacingCriteria.OFF_GROUND))
                        .thenComparing(Comparator.naturalOrder()))
                .toList();
        List<PlacedLayout> layouts = new ArrayList<>();
        for (int i : order) {
            layouts.add(new PlacedLayout(
                    letter(layouts.size()),
                    proposals.get(i).placing(),
                    proposals.get(i).expected(),
                    lived.get(i),
                    contest.selected().left().contains(i),
                    front[i],
                    hardest(lived, i)));
        }
        return new PlacingAnswer(
                task,
                layouts,
                new LivedLayout(contest.before()),
                contest.selected(),
                new LivedLayout(List.of(fresh)),
                new LivedLayout(List.of(freshBefore)));
    }

    /**
     * Travel off the ground, less waiting, less energy of moves of the mean animal: with an aim for each animal nearly every layout
     * would be on the front of a group.
     */
    private static double[] aims(LivedLayout lived) {
        return new double[] {
            lived.mean(PlacingCriteria.OFF_GROUND),
            -lived.mean(PlacingCriteria.WAITING),
            -lived.mean(PlacingCriteria.ENERGY)
        };
    }

    /** Places among the animals of those that spend most on moving in this one of several layouts; of equals in the first. */
    private static List<Integer> hardest(List<LivedLayout> all, int layout) {
        return IntStream.range(0, all.get(layout).criteria() - PlacingCriteria.FIRST_ANIMAL)
                .filter(animal -> all.size() > 1 && layout == most(all, PlacingCriteria.FIRST_ANIMAL + animal))
                .boxed()
                .toList();
    }

    private static int most(List<LivedLayout> all, int criterion) {
        int most = 0;
        for (int i = 1; i < all.size(); i++) {
            most = all.get(i).mean(criterion) > all.get(most).mean(criterion) ? i : most;
        }
        return most;
    }

    /** A to Z, then A2 and so on. */
    static String letter(int index) {
        String letter = Character.toString((char) ('A' + index % LETTERS));
        return index < LETTERS ? letter : letter + (index / LETTERS + 1);
    }

    /**
     * The best.
     *
     * @return the layout that was selected
     */
    public PlacedLayout best() {
        return layouts.get(0);
    }

    /**
     * How much more of the travel is off the ground in the best than in the layout as it stands, under fresh chance.
     *
     * @return difference of shares with its interval; empty where nobody travelled
     */
    public Optional<Interval> gain() {
        return fresh.less(freshBefore, PlacingCriteria.OFF_GROUND);
    }

    /**
     * Whether the best is better than the layout as it stands.
     *
     * @return true if the whole interval of the gain lies above 0
     */
    public boolean isBetter() {
        return gain().map(gain -> gain.lo().orElse(-1) > 0).orElse(false);
    }
}
