package limbway.sim.animal;

import limbway.model.parameter.Parameter;
import limbway.model.parameter.ParameterGroup;
import limbway.model.parameter.Standing;
import limbway.sim.food.Foraging;

/**
 * What an animal remembers of how much food lies where.
 *
 * @param learning share of the difference to what it sees that it learns in one visit
 * @param forgettingDays time in which what it saw fades by 63 % towards what it expects of an ordinary day [d]
 * @param rateMin feeding time over which it averages how fast it gains [min]
 */
public record MemorySettings(double learning, double forgettingDays, double rateMin) {

    /** What the numbers are. */
    public static final ParameterGroup<MemorySettings> GROUP = ParameterGroup.of(
            MemorySettings.class,
            new Parameter(
                    "memory.learning",
                    "share of the difference to what it sees that an animal learns in one visit",
                    "1",
                    0.5,
                    0,
                    1,
                    Standing.ASSUMPTION,
                    "no source"),
            new Parameter(
                    "memory.forgetting",
                    "time in which what it saw fades by 63 % towards what it expects of an ordinary moment",
                    "d",
                    1,
                    0.2,
                    7,
                    Standing.ASSUMPTION,
                    "no source"),
            new Parameter(
                    "memory.rate",
                    "time of feeding and of going to food over which it averages how fast it gains",
                    "min",
                    120,
                    20,
                    600,
                    Standing.ASSUMPTION,
                    "no source"));

    private static final double MS_PER_MIN = 60_000;
    private static final double MS_PER_DAY = 86_400_000;

    /**
     * What an animal knows of food before the first day.
     *
     * @param ordinaryJ for each resource what lies there at an ordinary moment [J]
     * @return knowledge that changes
     */
    public Foraging foraging(double[] ordinaryJ) {
        return new Foraging(ordinaryJ, learning, forgettingDays * MS_PER_DAY, rateMin * MS_PER_MIN);
    }
}
