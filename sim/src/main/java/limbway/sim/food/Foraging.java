package limbway.sim.food;

/** What one animal knows of food: how much lies where, and how fast it gains by and large. */
public final class Foraging {

    private final FoodMemory memory;
    private final RunningRate rate;
    private final int places;

    /**
     * Knows nothing of the past.
     *
     * @param ordinaryJ for each place what lies there at an ordinary moment [J]; 0 where no food is put out
     * @param learning share of the difference to what it sees that it learns in one visit, 0 to 1
     * @param forgettingMs time in which what it saw fades by 63 % [ms], above 0
     * @param rateMs feeding time in which past gain fades by 63 % [ms], above 0
     */
    public Foraging(double[] ordinaryJ, double learning, double forgettingMs, double rateMs) {
        memory = new FoodMemory(ordinaryJ, learning, forgettingMs);
        rate = new RunningRate(rateMs);
        places = ordinaryJ.length;
    }

    /**
     * Number of places.
     *
     * @return number of resources of any kind
     */
    public int places() {
        return places;
    }

    /**
     * How much it believes to lie where.
     *
     * @return its memory, which changes
     */
    public FoodMemory memory() {
        return memory;
    }

    /**
     * How fast it has gained of late.
     *
     * @return its rate, which changes
     */
    public RunningRate rate() {
        return rate;
    }

    /**
     * The slowest eating that it puts up with at a place, by the marginal value rule: as fast as it gains by and large.
     *
     * <p>It never eats more slowly than a limit of its own. If it comes back to a place that it left by this rule,
     * nothing better has turned up, and only that second limit holds: otherwise an animal could starve beside food, because
     * its rate stands still while it does not feed.
     *
     * @param place number of a place
     * @param limitJPerMs the slowest eating that it puts up with anywhere, however little it gains elsewhere [J/ms]
     * @return speed [J/ms]
     * @source Charnov 1976, doi 10.1016/0040-5809(76)90040-X, from memory; the limits are assumptions
     */
    public double leastJPerMs(int place, double limitJPerMs) {
        return memory.wasFoundPoor(place) ? limitJPerMs : Math.max(rate.jPerMs(), limitJPerMs);
    }
}
