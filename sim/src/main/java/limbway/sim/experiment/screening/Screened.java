package limbway.sim.experiment.screening;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** What came out of a screening. */
public final class Screened {

    private final List<Factor> factors;
    private final List<Walk> walks;
    private final int wanted;

    Screened(List<Factor> factors, List<Walk> walks, int wanted) {
        this.factors = List.copyOf(factors);
        this.walks = List.copyOf(walks);
        this.wanted = wanted;
    }

    /**
     * What was varied.
     *
     * @return factors in their order
     */
    public List<Factor> factors() {
        return factors;
    }

    /**
     * The walks that the result rests on.
     *
     * @return walks that came to their end, 0 or more
     */
    public int trajectories() {
        return walks.size();
    }

    /**
     * Whether nothing was interrupted.
     *
     * @return true if every walk came to its end
     */
    public boolean isComplete() {
        return walks.size() == wanted;
    }

    /**
     * Points that the result rests on.
     *
     * @return points of the walks that came to their end
     */
    public int evaluations() {
        return walks.size() * (factors.size() + 1);
    }

    /**
     * Walks that were drawn anew because the model refuses values together.
     *
     * @return draws that were not used
     */
    public int redrawn() {
        return walks.stream().mapToInt(Walk::redrawn).sum();
    }

    /**
     * How each factor moves an answer.
     *
     * @param answer number of the answer, from 0
     * @return effects in the order of the factors; a factor is missing where no walk gave an effect
     */
    public List<Effect> effects(int answer) {
        List<List<Double>> found = new ArrayList<>();
        factors.forEach(factor -> found.add(new ArrayList<>()));
        for (Walk walk : walks) {
            List<Integer> turns = walk.trajectory().turns();
            for (int turn = 0; turn < turns.size(); turn++) {
                int f = turns.get(turn);
                double effect = walk.effect(turn, factors.get(f), answer);
                if (!Double.isNaN(effect)) {
                    found.get(f).add(effect);
                }
            }
        }
        return IntStream.range(0, factors.size())
                .mapToObj(f -> Effect.of(factors.get(f), found.get(f)))
                .flatMap(java.util.Optional::stream)
                .toList();
    }

    /**
     * An answer at every point.
     *
     * @param answer number of the answer, from 0
     * @return answers in the order of the walks, without those that are missing
     */
    public List<Double> answers(int answer) {
        return walks.stream()
                .flatMap(walk -> walk.answers().stream())
                .map(all -> all.get(answer))
                .filter(value -> !value.isNaN())
                .toList();
    }
}
