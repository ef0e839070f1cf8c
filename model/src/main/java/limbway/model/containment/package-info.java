/**
 * Where an animal would be out, and what live wire keeps free.
 *
 * <p>Knows enclosures and geometry. What is not found here is no pass. Start at
 * {@link limbway.model.containment.Brinks#of}.
 */
package limbway.model.containment;
