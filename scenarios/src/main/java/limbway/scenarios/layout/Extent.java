package limbway.scenarios.layout;

import limbway.model.enclosure.Crown;
import limbway.model.geometry.Corner;
import limbway.model.geometry.Point;

/**
 * A support or deck with a ball that holds it, so that far things are passed over quickly.
 *
 * @param built the support or deck with its crown
 * @param middle middle of the ball
 * @param radiusM radius of the ball [m]
 */
record Extent(Built built, Point middle, double radiusM) {

    static Extent of(Built built) {
        if (built instanceof Built.Deck deck) {
            Point middle = deck.platform().centre();
            double farthestM = 0;
            for (Corner corner : deck.platform().outline().corners()) {
                farthestM = Math.max(farthestM, middle.distanceM(corner.atHeight(middle.zM())));
            }
            return new Extent(built, middle, farthestM);
        }
        Built.Member member = (Built.Member) built;
        Point start = member.support().axis().start();
        Point middle = start.plus(member.support().axis().end().minus(start).times(0.5));
        double farthestM = 0;
        for (Point point : member.support().axis().points()) {
            farthestM = Math.max(farthestM, middle.distanceM(point));
        }
        double crownM = member.crown().map(Crown::radiusM).orElse(0.0);
        return new Extent(built, middle, farthestM + crownM + member.support().diameterM() / 2);
    }

    /** A bound below the distance from a point to the surface. */
    double leastDistanceM(Point p) {
        return Math.max(0, middle.distanceM(p) - radiusM);
    }
}
