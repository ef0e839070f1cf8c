package limbway.scenarios.problem;

/**
 * Where something stands in a text.
 *
 * @param file name of the file as the user gave it
 * @param line line, the first is 1
 * @param column character within the line, the first is 1
 */
public record Place(String file, int line, int column) {

    /**
     * The first character of a file, for problems with the file as a whole.
     *
     * @param file name of the file
     * @return line 1, column 1
     */
    public static Place startOf(String file) {
        return new Place(file, 1, 1);
    }

    /** The place as compilers print it. */
    @Override
    public String toString() {
        return file + ":" + line + ":" + column;
    }
}
