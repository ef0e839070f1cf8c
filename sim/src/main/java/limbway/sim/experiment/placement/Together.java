package limbway.sim.experiment.placement;

/** Which candidates may be chosen together. */
@FunctionalInterface
public interface Together {

    /** Any may. */
    Together ANY = (a, b) -> true;

    /**
     * Whether two candidates may both be chosen.
     *
     * @param a number of a candidate
     * @param b number of another
     * @return false if they stand in each other's way
     */
    boolean allowed(int a, int b);
}
