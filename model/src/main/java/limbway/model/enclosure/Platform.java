package limbway.model.enclosure;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

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
 * @param kind a rigid deck or a hammock
 * @param bearsKg heaviest load allowed on it [kg], above 0; empty where none was stated
 */
public record Platform(String id, Outline outline, double zM, PlatformKind kind, OptionalDouble bearsKg) {

    /** Heights and places closer than this are the same. */
    private static final double SAME_HEIGHT_M = 1e-6;

    /**
     * A rigid deck without a stated load.
     *
     * @param id name, unique within the enclosure
     * @param outline its edge, in plan
     * @param zM height of its surface [m], 0 or more
     */
    public Platform(String id, Outline outline, double zM) {
        this(id, outline, zM, PlatformKind.DECK, OptionalDouble.empty());
    }

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
        return outline.covers(place.xM(), place.yM()) ? place.atHeight(zM) : nearestEdgeTo(place);
    }

    /**
     * The place of the deck where a body at a point would get hold of it: the nearest, but from below on the edge, because
     * nobody reaches through the boards.
     *
     * @param place any point
     * @return a point of the surface
     */
    public Point grasped(Point place) {
        return place.zM() < zM - SAME_HEIGHT_M ? nearestEdgeTo(place) : nearestTo(place);
    }

    /**
     * Whether a straight line between two points passes through the boards; a line that ends on them or passes at their edge
     * does not.
     *
     * @param from one end
     * @param to other end
     * @return true if the deck is in the way
     */
    public boolean blocks(Point from, Point to) {
        double low = Math.min(from.zM(), to.zM());
        double high = Math.max(from.zM(), to.zM());
        if (low >= zM - SAME_HEIGHT_M || high <= zM + SAME_HEIGHT_M) {
            return false;
        }
        Point through = new Segment(from, to).at((zM - from.zM()) / (to.zM() - from.zM()));
        return outline.covers(through.xM(), through.yM())
                && nearestEdgeTo(through).distanceM(through) > SAME_HEIGHT_M;
    }

    private Point nearestEdgeTo(Point place) {
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
