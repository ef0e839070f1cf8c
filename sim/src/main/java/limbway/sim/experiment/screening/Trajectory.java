package limbway.sim.experiment.screening;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

import limbway.sim.chance.Chance;
import limbway.sim.chance.Purpose;
import limbway.sim.chance.Stream;

/**
 * A walk through the ranges of all factors on which each factor changes once, and one factor at a time.
 *
 * <p>A factor sets out from one of four levels (shares 0, 1/3, 2/3 and 1 of its range) and moves by two thirds of it. In
 * each four walks that follow each other a factor sets out once from every level, in an order by chance; without that, few
 * walks may leave half of a range out. Start and turn are keyed by seed, walk and name of the factor: a walk is the same
 * however many there are, and another factor leaves the others' starts alone.
 *
 * @param turns numbers of the factors in the order in which they change
 * @param starts place in the range from which each factor sets out, 0 to 1
 * @source Morris 1991, Technometrics 33:161-174, doi 10.1080/00401706.1991.10484804: p = 4 levels and a step of p/(2(p-1));
 *     evenly used starts are our own
 */
public record Trajectory(List<Integer> turns, List<Double> starts) {

    /** Levels in the range of each factor. */
    public static final int LEVELS = 4;

    /** How far a factor moves, as a share of its range. */
    public static final double STEP = LEVELS / (2.0 * (LEVELS - 1));

    /** Keeps copies of the lists. */
    public Trajectory {
        turns = List.copyOf(turns);
        starts = List.copyOf(starts);
    }

    /**
     * Draws a walk.
     *
     * @param factors what changes
     * @param seed seed of the screening, 1 to 2147483647
     * @param number number of the walk, from 0
     * @param draw 0, or how often this walk was drawn before and could not be used
     * @return the walk
     */
    public static Trajectory draw(List<Factor> factors, int seed, int number, int draw) {
        Chance ofBlock = new Chance(seed, number / LEVELS + 1);
        Chance ofWalk = new Chance(seed, number + 1);
        List<Double> starts = new ArrayList<>();
        List<Double> keys = new ArrayList<>();
        for (Factor factor : factors) {
            String name = factor.parameter().name();
            Stream start = ofBlock.stream(name, Purpose.SCREENING_START);
            int level = shuffled(LEVELS, i -> start.uniform((long) LEVELS * draw + i))
                    .get(number % LEVELS);
            starts.add(level / (LEVELS - 1.0));
            keys.add(ofWalk.stream(name, Purpose.SCREENING_TURN).uniform(draw));
        }
        return new Trajectory(shuffled(factors.size(), keys::get), starts);
    }

    /**
     * Where the walk leads.
     *
     * @param factors the factors it was drawn for
     * @return values by the names of parameters, at the start and after each turn
     */
    public List<Map<String, Double>> points(List<Factor> factors) {
        Map<String, Double> now = new LinkedHashMap<>();
        for (int f = 0; f < factors.size(); f++) {
            now.put(factors.get(f).parameter().name(), factors.get(f).at(starts.get(f)));
        }
        List<Map<String, Double>> points = new ArrayList<>(List.of(new LinkedHashMap<>(now)));
        for (int f : turns) {
            double start = starts.get(f);
            double end = start < 0.5 ? start + STEP : start - STEP;
            // 1/3 + 2/3 may miss the end of a range by a rounding
            now.put(factors.get(f).parameter().name(), factors.get(f).at(Math.min(1, Math.max(0, end))));
            points.add(new LinkedHashMap<>(now));
        }
        return points;
    }

    private static List<Integer> shuffled(int count, java.util.function.IntToDoubleFunction key) {
        return IntStream.range(0, count)
                .boxed()
                .sorted(Comparator.comparingDouble(key::applyAsDouble))
                .toList();
    }
}
