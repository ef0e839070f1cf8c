package limbway.model.enclosure;

import java.util.ArrayList;
import java.util.List;

import limbway.model.geometry.Corner;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;

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

    /**
     * The sides of the deck, in order.
     *
     * @return one line for each corner
     */
    public List<Segment> edges() {
        List<Segment> edges = new ArrayList<>();
        int n = outline.corners().size();
        for (int i = 0; i < n; i++) {
            edges.add(new Segment(
                    outline.corners().get(i).atHeight(zM),
                    outline.corners().get((i + 1) % n).atHeight(zM)));
        }
        return edges;
    }

    /**
     * The place of the deck that is nearest to a point: straight below or above it, or on the edge.
     *
     * @param place any point
     * @return a point of the surface
     */
    public Point nearestTo(Point place) {
        if (outline.covers(place.xM(), place.yM())) {
            return place.atHeight(zM);
        }
        Point best = null;
        for (Segment edge : edges()) {
            Point candidate = edge.at(edge.nearestShare(place));
            if (best == null || candidate.distanceM(place) < best.distanceM(place)) {
                best = candidate;
            }
        }
        return best;
    }
}
