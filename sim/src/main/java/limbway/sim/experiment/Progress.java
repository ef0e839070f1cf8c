package limbway.sim.experiment;

/** Watches a run, and may end it. Called by the thread that started the run, never by two at once. */
@FunctionalInterface
public interface Progress {

    /**
     * Another replication is finished.
     *
     * @param done replications finished so far
     * @param total replications asked for
     */
    void finished(int done, int total);

    /**
     * Asked several times a second.
     *
     * @return true to end the run and keep what is finished
     */
    default boolean wantsStop() {
        return false;
    }
}
