/**
 * What happened, in the order it happened, and the ledgers that must balance.
 *
 * <p>Knows the model only. Measures and replays are made from {@link limbway.sim.journal.Journal} and nothing else.
 */
package limbway.sim.journal;
