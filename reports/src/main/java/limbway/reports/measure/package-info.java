/**
 * Numbers made from journals: shares off the ground, time at height, where the ground is used and why, energy by part;
 * and the audit of a design before any run.
 *
 * <p>Knows journals, habitats and the model; draws nothing. The unit of every interval is the replication. Start at
 * {@link limbway.reports.measure.Measures}.
 */
package limbway.reports.measure;
