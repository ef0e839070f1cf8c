package limbway.model.link;

import limbway.model.geometry.Point;

/**
 * A place to which a link may be tied.
 *
 * @param on id of the support or platform
 * @param words the place as a scenario says it, for example {@code mast-2 at 6}
 * @param at where it is
 */
public record Tie(String on, String words, Point at) {}
