package limbway.reports.measure;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;

import limbway.sim.experiment.screening.Effect;
import limbway.sim.experiment.screening.Screened;
import limbway.sim.experiment.screening.Trajectory;
import limbway.sim.experiment.statistics.Interval;

/**
 * Which assumptions move an answer.
 *
 * <p>An assumption moves it if its mean absolute effect is {@link #leastMove} or more and above {@value #ERRORS} of its own
 * standard errors. It may move it if only the first is true: then the walks disagree, and more of them would tell.
 *
 * @param answer what was screened for
 * @param base the answer as the scenario stands, with its interval over the replications; empty where nobody travels
 * @param chance mean absolute effect of a number that did no more than to reshuffle all chance, 0 to 1; 0 with fewer than
 *     two replications
 * @param effects effects, the greatest mean absolute effect first
 * @param tried the answer at every point that was tried, ascending
 */
public record Movers(
        ScreenedAnswer answer, Optional<Interval> base, double chance, List<Effect> effects, List<Double> tried) {

    /** Least mean absolute effect of a number that moves a share: two percentage points. Assumption. */
    public static final double LEAST_MOVE = 0.02;

    /** By how many standard errors a mean absolute effect must exceed what chance alone makes. Assumption. */
    public static final int ERRORS = 2;

    /** Keeps copies of the lists. */
    public Movers {
        effects = List.copyOf(effects);
        tried = List.copyOf(tried);
    }

    /**
     * Sorts what came out of a screening.
     *
     * @param answer which answer
     * @param screened the screening
     * @param base the answer in each replication as the scenario stands
     * @return effects in order of their size
     */
    public static Movers of(ScreenedAnswer answer, Screened screened, List<Double> base) {
        return new Movers(
                answer,
                Interval.of(base),
                chance(base),
                screened.effects(answer.ordinal()).stream()
                        .sorted(Comparator.comparingDouble(Effect::meanAbsolute).reversed())
                        .toList(),
                screened.answers(answer.ordinal()).stream().sorted().toList());
    }

    /**
     * Two independent means over n replications differ, without their signs, by s·sqrt(2/n)·sqrt(2/pi) on average if they
     * are normal with standard deviation s; over one step that is the whole range divided by the step.
     */
    private static double chance(List<Double> base) {
        int n = base.size();
        if (n < 2) {
            return 0;
        }
        double mean = base.stream().mapToDouble(Double::doubleValue).sum() / n;
        double squares = 0;
        for (double value : base) {
            squares += (value - mean) * (value - mean);
        }
        return Math.sqrt(squares / (n - 1) / n) * 2 / Math.sqrt(Math.PI) / Trajectory.STEP;
    }

    /**
     * What a mean absolute effect must reach.
     *
     * @return two percentage points, or what chance alone makes if that is more; 0 to 1
     */
    public double leastMove() {
        return Math.max(LEAST_MOVE, chance);
    }

    /**
     * What moves the answer.
     *
     * @return effects, greatest first
     */
    public List<Effect> sure() {
        return effects.stream().filter(this::isMover).toList();
    }

    /**
     * What may move the answer.
     *
     * @return effects that are large enough, of which the walks tell too little; greatest first
     */
    public List<Effect> unsure() {
        return effects.stream()
                .filter(effect -> effect.meanAbsolute() >= leastMove() && !isMover(effect))
                .toList();
    }

    /**
     * What does not.
     *
     * @return all other effects, greatest first
     */
    public List<Effect> others() {
        return effects.stream()
                .filter(effect -> effect.meanAbsolute() < leastMove())
                .toList();
    }

    /**
     * Whether an effect is among those that move the answer.
     *
     * @param effect one of these effects
     * @return true if it is large enough and the walks agree on it
     */
    public boolean isMover(Effect effect) {
        return effect.meanAbsolute() >= leastMove()
                && effect.standardError().isPresent()
                && effect.meanAbsolute() - ERRORS * effect.standardError().getAsDouble() > chance;
    }

    /**
     * How often the answer has the sign that it has as the scenario stands.
     *
     * @return share of the points that were tried, 0 to 1; 0 where there is no answer
     */
    public double sameSign() {
        double sign = Math.signum(base.map(Interval::mean).orElse(Double.NaN));
        long same = tried.stream().filter(value -> Math.signum(value) == sign).count();
        return tried.isEmpty() ? 0 : (double) same / tried.size();
    }
}
