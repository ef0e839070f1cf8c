package limbway.sim.experiment.link;

import java.util.List;

import limbway.model.link.Candidates;

/**
 * What a search found.
 *
 * @param candidates all links within the limits
 * @param local how many of them were priced from their surroundings alone
 * @param sets how many sets of two or more links were compiled
 * @param tripsPerDay trips a day that the search went by
 * @param proposals best first: those whose gain held up under fresh chance, by what the search gave, then the others that were
 *     lived with, then the others by what is expected
 * @param fragile worst first
 */
public record LinkFindings(
        Candidates candidates,
        int local,
        int sets,
        double tripsPerDay,
        List<Proposal> proposals,
        List<Fragile> fragile) {

    /** Keeps copies of the lists. */
    public LinkFindings {
        proposals = List.copyOf(proposals);
        fragile = List.copyOf(fragile);
    }
}
