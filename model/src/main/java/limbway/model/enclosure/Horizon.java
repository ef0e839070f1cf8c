package limbway.model.enclosure;

import java.util.List;

/**
 * How high the land around stands before the sky, seen from the enclosure.
 *
 * @param marks height at some azimuths, in rising order of azimuth; between two marks it runs straight, round through
 *     north; none for a level horizon
 */
public record Horizon(List<Mark> marks) {

    /** A level horizon. */
    public static final Horizon LEVEL = new Horizon(List.of());

    /**
     * Checks the order.
     *
     * @throws IllegalArgumentException naming the mark that does not lie after the one before it
     */
    public Horizon {
        marks = List.copyOf(marks);
        for (int i = 1; i < marks.size(); i++) {
            if (!(marks.get(i).azimuthDeg() > marks.get(i - 1).azimuthDeg())) {
                throw new IllegalArgumentException("horizon: azimuthDeg = "
                        + marks.get(i).azimuthDeg() + ", allowed above "
                        + marks.get(i - 1).azimuthDeg());
            }
        }
    }

    /**
     * Height of the horizon in one direction.
     *
     * @param azimuthDeg degrees clockwise from north, 0 to 360
     * @return degrees above the level
     */
    public double altitudeDeg(double azimuthDeg) {
        if (marks.isEmpty()) {
            return 0;
        }
        int next = 0;
        while (next < marks.size() && marks.get(next).azimuthDeg() < azimuthDeg) {
            next++;
        }
        Mark after = marks.get(next % marks.size());
        Mark before = marks.get((next + marks.size() - 1) % marks.size());
        double span = turn(after.azimuthDeg() - before.azimuthDeg());
        double share = span == 0 ? 0 : turn(azimuthDeg - before.azimuthDeg()) / span;
        return before.altitudeDeg() + share * (after.altitudeDeg() - before.altitudeDeg());
    }

    private static double turn(double deg) {
        return deg < 0 ? deg + 360 : deg;
    }

    /**
     * One point of the horizon.
     *
     * @param azimuthDeg degrees clockwise from north, 0 to below 360
     * @param altitudeDeg degrees above the level, -10 to 90
     */
    public record Mark(double azimuthDeg, double altitudeDeg) {

        /**
         * Checks the angles.
         *
         * @throws IllegalArgumentException naming the angle outside its range
         */
        public Mark {
            if (!(azimuthDeg >= 0 && azimuthDeg < 360)) {
                throw new IllegalArgumentException("horizon: azimuthDeg = " + azimuthDeg + ", allowed 0 to below 360");
            }
            if (!(altitudeDeg >= -10 && altitudeDeg <= 90)) {
                throw new IllegalArgumentException("horizon: altitudeDeg = " + altitudeDeg + ", allowed -10 to 90");
            }
        }
    }
}
