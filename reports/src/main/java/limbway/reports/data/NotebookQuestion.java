package limbway.reports.data;

import java.util.ArrayList;
import java.util.List;

import limbway.sim.experiment.RunSettings;

/**
 * The first line of a notebook, written together: all that decides what is noted in it. Another line is another question, of
 * which nothing that was noted may be used.
 */
public final class NotebookQuestion {

    private final String between;
    private final String is;
    private final List<String> parts = new ArrayList<>();

    /**
     * A line that says nothing yet.
     *
     * @param between what divides its parts
     * @param is what stands between a name and its value
     */
    public NotebookQuestion(String between, String is) {
        this.between = between;
        this.is = is;
    }

    /**
     * Adds parts as they are.
     *
     * @param words the parts
     * @return this
     */
    public NotebookQuestion says(String... words) {
        parts.addAll(List.of(words));
        return this;
    }

    /**
     * Adds a name with its value.
     *
     * @param name the name
     * @param value the value
     * @return this
     */
    public NotebookQuestion has(String name, Object value) {
        parts.add(name + is + value);
        return this;
    }

    /**
     * Adds what decides what an animal does in a replication. How many replications there are does not.
     *
     * @param settings seed, days, days of warm-up and date
     * @return this
     */
    public NotebookQuestion lives(RunSettings settings) {
        return has("seed", settings.seed())
                .has("days", settings.days())
                .has("warm-up", settings.warmUpDays())
                .has("date", settings.date());
    }

    /**
     * The line.
     *
     * @return without an end of line
     */
    public String line() {
        return String.join(between, parts);
    }
}
