package limbway.model.shade;

/** Told how far an audit has come, and asked whether to go on; called from one thread. */
public interface ShadeProgress {

    /** Nobody watches. */
    ShadeProgress NONE = (done, total) -> true;

    /**
     * Some days are done.
     *
     * @param done days so far
     * @param total days in all
     * @return false to stop
     */
    boolean goesOn(int done, int total);
}
