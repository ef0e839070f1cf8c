package limbway.sim.experiment.trial;

import java.util.OptionalDouble;

import limbway.sim.experiment.Outcome;

/** Something that layouts are judged by: one number for each replication. Several threads may ask at once. */
public interface Criterion {

    /**
     * What it is called in answers for other programs.
     *
     * @return lower-case words joined by underscores, unique among the criteria used together
     */
    String name();

    /**
     * Whether it is a share, whose intervals are judged by their width, or an amount, whose intervals are judged by their
     * width over the mean.
     *
     * @return true for a share, 0 to 1
     */
    boolean isShare();

    /**
     * Its value in one replication.
     *
     * @param one an outcome with a single journal
     * @return a finite value, or empty where there is none, for example the share of travel where nobody travelled
     */
    OptionalDouble of(Outcome one);
}
