package limbway.model.enclosure;

import limbway.model.geometry.Corner;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;

/**
 * A level deck on which an animal can walk, sit or lie in any place.
 *
 * @param id name, unique within the enclosure
 * @param outline its edge, in plan
 * @param zM height of its surface [m], 0 or more
 */
public record Platform(String id, Outline outline, double zM) {

    /**
     * The middle of the deck: the mean of its corners.
     *
     * @return a point on the surface
     */
    public Point centre() {
        double x = 0;
        double y = 0;
        for (Corner corner : outline.corners()) {
            x += corner.xM();
            y += corner.yM();
        }
        int n = outline.corners().size();
        return new Point(x / n, y / n, zM);
    }
}
