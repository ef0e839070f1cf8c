package limbway.model.volume;

import java.util.Set;

/**
 * On which sides of which panels a body can be.
 *
 * @param front ids of panels of which it uses the side to which the normal points
 * @param back ids of those of which it uses the other
 */
record UsedSides(Set<String> front, Set<String> back) {}
