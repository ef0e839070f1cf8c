package limbway.model.strength;

import limbway.model.geometry.Point;
import limbway.model.geometry.Polyline;

/**
 * The tension of a rope under a weight in its middle.
 *
 * <p>The weight draws the rope into two straight legs of half its length S over the chord c. With the leg's angle to the
 * chord a, {@code cos a = c / S}, and the chord sloping by t, the balance of forces gives the steeper leg {@code T / P =
 * (cos t / sin a + sin t / cos a) / 2}: for level ends the textbook {@code 1 / (2 sin a)}, with sag share f of the drawn
 * rope {@code sqrt(1 + 4 f²) / (4 f)}. Where the lower leg would have to push, it hangs slack and the upper one bears all.
 *
 * @source statics of a weight on a light cord, textbook
 * @validity light rope that the animal grips in its middle; a swinging or leaping animal pulls more
 */
final class RopeTension {

    private RopeTension() {}

    /** Greatest tension over the weight; infinite for a straight level rope that does not stretch. */
    static double perLoad(Polyline axis, double stretchShare) {
        Point start = axis.start();
        Point end = axis.end();
        double chordM = start.distanceM(end);
        double ropeM = axis.lengthM() * (1 + stretchShare);
        if (chordM == 0) {
            return 1;
        }
        double cosLeg = Math.min(1, chordM / ropeM);
        double sinLeg = Math.sqrt(1 - cosLeg * cosLeg);
        double cosSlope = start.planDistanceM(end) / chordM;
        double sinSlope = Math.abs(end.zM() - start.zM()) / chordM;
        double across = cosSlope / sinLeg;
        double along = sinSlope / cosLeg;
        boolean lowerLegSlack = cosSlope == 0 || along >= across;
        return lowerLegSlack ? 1 : (across + along) / 2;
    }
}
