/**
 * Single changes of a layout: a place moved, a rope added, a pole made thinner. Designs are searched and trips are turned by
 * them.
 *
 * <p>Knows enclosures and studies. Start at {@link limbway.model.alteration.Alteration}.
 */
package limbway.model.alteration;
