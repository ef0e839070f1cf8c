package limbway.sim.experiment.link;

/** Told how far a search is, and asked whether it shall stop. Called from one thread. */
public interface SearchProgress {

    /**
     * Something was finished.
     *
     * @param stage what is being done, in a few words
     * @param done how much of it
     * @param total of how much
     */
    void at(String stage, int done, int total);

    /**
     * Whether to stop.
     *
     * @return true to end early
     */
    boolean wantsStop();
}
