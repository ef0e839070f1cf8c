/**
 * One replication: a group living through its days, from event to event on MASON's clock.
 *
 * <p>Knows animals, habitat and journal. Times are whole milliseconds since midnight before day 1, exact in the doubles
 * of MASON's schedule. Every event of an animal has an order of its own among events of the same moment, so that MASON
 * never shuffles, and MASON's random numbers are never read. Start at {@link limbway.sim.day.Replication}.
 */
package limbway.sim.day;
