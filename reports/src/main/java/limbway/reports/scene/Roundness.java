package limbway.reports.scene;

/**
 * How many flat sides stand for what is round.
 *
 * @param rodSides sides of a pole, rope or branch
 * @param crownSides sides of a crown
 */
record Roundness(int rodSides, int crownSides) {

    /** For files that are opened in other programs. */
    static final Roundness FINE = new Roundness(12, 24);

    /** For pictures that are drawn anew many times a second, and carried by a page. */
    static final Roundness QUICK = new Roundness(8, 16);
}
