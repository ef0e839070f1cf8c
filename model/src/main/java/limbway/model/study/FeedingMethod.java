package limbway.model.study;

/** How food is put out, which decides how fast it can be eaten as it grows less. */
public enum FeedingMethod {
    /** In a heap, bowl or hopper: eaten at full speed until nothing is left. */
    HEAP("heap"),
    /** Strewn over a surface: what is left must be searched for, so that the speed falls with the share that is left. */
    SCATTERED("scattered"),
    /** Branches with leaves: the best is stripped first, so that the speed falls with the square of the share that is left. */
    BROWSE("browse"),
    /** In a device that must be worked: each portion costs a time of handling first. */
    PUZZLE("puzzle");

    private final String word;

    FeedingMethod(String word) {
        this.word = word;
    }

    /**
     * The word used in scenarios.
     *
     * @return one lower-case English word
     */
    public String word() {
        return word;
    }
}
