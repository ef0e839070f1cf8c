/**
 * A run as data that can be watched: the enclosure in space, one repetition move by move, the use of every place, and the
 * cards of trips.
 *
 * <p>Knows journals, measures, scenes and words; writes JSON as docs/replay-data.md tells, and the scripts that show it,
 * which lie beside these classes in the resources. Computes no measure. Start at {@link limbway.reports.replay.ReplayData}.
 */
package limbway.reports.replay;
