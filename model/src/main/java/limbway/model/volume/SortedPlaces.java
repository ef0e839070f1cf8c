package limbway.model.volume;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.ToDoubleFunction;

import limbway.model.geometry.Point;

/** Places sorted from west to east, to find those on a shape without asking all of them. */
final class SortedPlaces {

    private final List<Point> places;

    SortedPlaces(List<Point> places) {
        this.places = new ArrayList<>(places);
        this.places.sort(Comparator.comparingDouble(Point::xM)
                .thenComparingDouble(Point::yM)
                .thenComparingDouble(Point::zM));
    }

    /**
     * The places that lie on a shape.
     *
     * @param one a corner of a box around the shape
     * @param other the opposite corner
     * @param slackM how far from the shape still counts [m]
     * @param awayM distance from the shape, for places within the box [m]
     * @return places from west to east
     */
    List<Point> within(Point one, Point other, double slackM, ToDoubleFunction<Point> awayM) {
        double west = Math.min(one.xM(), other.xM()) - slackM;
        List<Point> found = new ArrayList<>();
        double east = Math.max(one.xM(), other.xM()) + slackM;
        for (int i = firstFrom(west); i < places.size() && places.get(i).xM() <= east; i++) {
            Point place = places.get(i);
            if (between(place.yM(), one.yM(), other.yM(), slackM)
                    && between(place.zM(), one.zM(), other.zM(), slackM)
                    && awayM.applyAsDouble(place) <= slackM) {
                found.add(place);
            }
        }
        return found;
    }

    private int firstFrom(double xM) {
        int low = 0;
        int high = places.size();
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (places.get(middle).xM() < xM) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low;
    }

    private static boolean between(double value, double one, double other, double slackM) {
        return value >= Math.min(one, other) - slackM && value <= Math.max(one, other) + slackM;
    }
}
