package limbway.model.containment;

import java.util.List;

import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;

/**
 * A line beyond which an animal would be out: the top of a wall, the far bank of water, the edge of the ground.
 *
 * @param id name of the barrier or panel, or {@code edge of the ground}
 * @param words what it is, as the subject of a sentence
 * @param pieces the line, one piece or more; at height 0 if it is passed at every height
 * @param anyHeight whether it is passed at every height, so that only the distance in plan counts
 * @param nearBank of water, the line from which an animal on the ground would cross; empty otherwise
 * @param topForGround whether an animal on the ground stands right below it
 */
public record Brink(
        String id,
        String words,
        List<Segment> pieces,
        boolean anyHeight,
        List<Segment> nearBank,
        boolean topForGround) {

    /** Keeps copies of the lists. */
    public Brink {
        pieces = List.copyOf(pieces);
        nearBank = List.copyOf(nearBank);
    }

    /**
     * The place of the line nearest to another, at its height where height does not count.
     *
     * @param place any place
     * @return a place of the line
     */
    public Point nearestTo(Point place) {
        Point from = anyHeight ? place.atHeight(0) : place;
        Point best = pieces.get(0).a();
        double bestM = Double.POSITIVE_INFINITY;
        for (Segment piece : pieces) {
            Point nearest = piece.at(piece.nearestShare(from));
            double awayM = nearest.distanceM(from);
            if (awayM < bestM) {
                best = nearest;
                bestM = awayM;
            }
        }
        return anyHeight ? best.atHeight(place.zM()) : best;
    }

    /**
     * Least distance between two banks.
     *
     * @return distance [m]; infinite without a near bank
     */
    public double widthM() {
        double leastM = Double.POSITIVE_INFINITY;
        for (Segment near : nearBank) {
            for (Segment far : pieces) {
                leastM = Math.min(
                        leastM,
                        Math.min(
                                Math.min(far.distanceM(near.a()), far.distanceM(near.b())),
                                Math.min(near.distanceM(far.a()), near.distanceM(far.b()))));
            }
        }
        return leastM;
    }
}
