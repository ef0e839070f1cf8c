/**
 * Compiles an enclosure into holds and moves.
 *
 * <p>Knows enclosures, bodies, energies and geometry. Start at {@link limbway.model.graph.RouteGraph#compile}; the
 * package-private classes are its steps in the order Pieces, Contacts, Decks, Canopy, GroundWays, UsePoints, Numbering.
 * Geometry is compiled once for all bodies; {@link limbway.model.graph.MoveCosts} then says what each body can do and
 * what it costs.
 *
 * <p>Two properties shaped the design. Each pair of supports gets bridges that depend on those two only, so a new
 * support never takes a way away. And a support cut in two is joined again before compiling, so drawing it in pieces
 * changes nothing.
 */
package limbway.model.graph;
