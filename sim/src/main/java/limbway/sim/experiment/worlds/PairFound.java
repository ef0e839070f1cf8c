package limbway.sim.experiment.worlds;

import java.util.List;
import java.util.OptionalDouble;

import limbway.sim.experiment.statistics.ShareInterval;

/**
 * Which of two layouts has more of something, over all plausible worlds.
 *
 * @param a number of a layout
 * @param b number of the layout that it is compared with
 * @param criterion number of what they are compared by
 * @param more worlds in which a has more
 * @param less worlds in which b has more
 * @param equal worlds in which both have exactly as much
 * @param share share of the worlds in which a has more, with its interval
 * @param mean mean difference, a less b
 * @param quantiles differences that 5, 25, 50, 75 and 95 % of the worlds stay below
 * @param chanceShare share of the variance of the difference that is chance within the worlds, 0 to 1; empty with one
 *     replication or where the difference is always the same
 * @param effects the inputs, the one that explains most first
 * @param reversals the strongest inputs in that order, as far as they were followed
 */
public record PairFound(
        int a,
        int b,
        int criterion,
        int more,
        int less,
        int equal,
        ShareInterval share,
        double mean,
        List<Double> quantiles,
        OptionalDouble chanceShare,
        List<InputEffect> effects,
        List<Reversal> reversals) {

    /** What {@link #quantiles} are. */
    public static final List<Double> AT = List.of(0.05, 0.25, 0.5, 0.75, 0.95);

    /** Keeps copies of the lists. */
    public PairFound {
        quantiles = List.copyOf(quantiles);
        effects = List.copyOf(effects);
        reversals = List.copyOf(reversals);
    }

    /**
     * The inputs that explain more than chance and all others together would by accident.
     *
     * @return effects, the greatest first
     */
    public List<InputEffect> main() {
        return effects.stream().filter(effect -> effect.index().isAboveFloor()).toList();
    }

    /**
     * Whether one of the two has more in every world.
     *
     * @return true if so
     */
    public boolean isOneSided() {
        return more == share.n() || less == share.n();
    }

    PairFound with(List<Reversal> followed) {
        return new PairFound(
                a, b, criterion, more, less, equal, share, mean, quantiles, chanceShare, effects, followed);
    }
}
