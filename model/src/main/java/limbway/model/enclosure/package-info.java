/**
 * What stands in an enclosure: ground, obstacles, supports, platforms, crowns and resources, at a place on Earth.
 *
 * <p>Plain records in metres. They say what is there, not what an animal can do with it; that is decided by
 * {@code limbway.model.graph}. Start at {@link limbway.model.enclosure.Enclosure}.
 */
package limbway.model.enclosure;
