package limbway.sim.experiment.worlds;

/** Watches plausible worlds, and may end them. Called by the thread that asked for them, never by two at once. */
public interface WorldProgress {

    /** What is being done. */
    enum Stage {
        /** Worlds are lived in. */
        WORLDS,
        /** The strongest inputs are tried over their ranges, everything else as assumed. */
        RANGES,
        /** The points are narrowed down at which the answer turns. */
        TURNS,
        /** Worlds for total indices are lived in. */
        TOTALS
    }

    /**
     * Some more is done.
     *
     * @param stage of what
     * @param done so much of it
     * @param total of so much
     */
    void finished(Stage stage, int done, int total);

    /**
     * Asked several times a second.
     *
     * @return true to give up
     */
    boolean wantsStop();
}
