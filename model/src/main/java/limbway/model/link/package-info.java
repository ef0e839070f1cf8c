/**
 * Ropes and poles that could be added, and what each would do to the cost of a trip.
 *
 * <p>Knows enclosures, graphs, routes, containment and alterations. {@link limbway.model.link.Candidates} lists what could be
 * tied where; {@link limbway.model.link.WhatIf} tells the costs that recompiling would give, from trees that are built once
 * and the few moves that one link adds.
 */
package limbway.model.link;
