package limbway.sim.experiment.trial;

import java.util.Optional;

/**
 * Remembers what was found, so that work that was stopped need not be done again.
 *
 * <p>Whoever opens a notebook makes sure that it belongs to the same question: scenario, seed, settings and version.
 */
public interface Notebook {

    /**
     * Remembers nothing.
     *
     * @return a notebook in which nothing is ever found
     */
    static Notebook none() {
        return new Notebook() {
            @Override
            public Optional<double[]> find(String key) {
                return Optional.empty();
            }

            @Override
            public void note(String key, double[] values) {
                // nobody will ask for it
            }
        };
    }

    /**
     * Looks something up.
     *
     * @param key what was found, for example layout and replication
     * @return the values noted under that key, to the last bit; not a number where there was no value
     */
    Optional<double[]> find(String key);

    /**
     * Notes something. May be called by several threads.
     *
     * @param key what was found
     * @param values what came out
     */
    void note(String key, double[] values);

    /**
     * The same notebook for one of several questions that use the same keys.
     *
     * @param heading every key is noted behind it
     * @return a view of this notebook
     */
    default Notebook under(String heading) {
        Notebook whole = this;
        return new Notebook() {
            @Override
            public Optional<double[]> find(String key) {
                return whole.find(heading + key);
            }

            @Override
            public void note(String key, double[] values) {
                whole.note(heading + key, values);
            }
        };
    }
}
