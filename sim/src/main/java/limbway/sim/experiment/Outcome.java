package limbway.sim.experiment;

import java.util.List;

import limbway.sim.habitat.Habitat;
import limbway.sim.journal.Journal;

/**
 * What came out of a run.
 *
 * @param habitat what was lived in
 * @param settings how it was run
 * @param journals one for each finished replication, in order of its number
 * @param complete false if the run was interrupted before all replications were finished
 */
public record Outcome(Habitat habitat, RunSettings settings, List<Journal> journals, boolean complete) {

    /** Keeps a copy of the list. */
    public Outcome {
        journals = List.copyOf(journals);
    }

    /**
     * One of the replications alone.
     *
     * @param index place among the journals, from 0
     * @return an outcome with one journal
     */
    public Outcome only(int index) {
        return new Outcome(habitat, settings, List.of(journals.get(index)), true);
    }
}
