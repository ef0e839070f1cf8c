/**
 * How much of the room in an enclosure a body can reach.
 *
 * <p>Knows enclosures, bodies, graphs and geometry. Start at {@link limbway.model.volume.UsableVolume}. Everything that
 * the body can be on becomes a {@code Shape} whose reach above any place of the plan is one or more stretches of
 * height, found exactly; {@code Stops} takes away what walls fill and wire keeps free, and hides what is behind mesh, glass or
 * a wall; {@code Columns} adds what is left over the plan. Sampling three dimensions at once was tried
 * on paper and dropped: at the same number of samples its error is many times larger.
 */
package limbway.model.volume;
