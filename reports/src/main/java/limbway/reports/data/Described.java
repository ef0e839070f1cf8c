package limbway.reports.data;

/** An answer whose tables are written with a description. */
public interface Described {

    /**
     * What the tables are about.
     *
     * @return the head of their description
     */
    Head head();

    /**
     * Head of the description of a set of tables.
     *
     * @param name lower-case words joined by hyphens
     * @param title the question, for example the scenario and the layouts
     * @param description what the tables hold, a sentence
     */
    record Head(String name, String title, String description) {}
}
