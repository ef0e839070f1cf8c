/**
 * How well what stands in an enclosure hangs together off the ground: cut points, bridges, ways that share nothing.
 *
 * <p>Knows graphs and bodies' moves; uses JGraphT for flows and pieces. Start at
 * {@link limbway.model.structure.PartGraph}, the graph of one body whose vertices are supports, decks and crowns;
 * {@link limbway.model.structure.Joints} finds where it can be parted, {@link limbway.model.structure.DisjointWays} how
 * many ways share nothing, {@link limbway.model.structure.Blocking} what an animal that lets nobody pass cuts off.
 */
package limbway.model.structure;
