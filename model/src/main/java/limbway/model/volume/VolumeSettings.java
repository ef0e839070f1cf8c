package limbway.model.volume;

import java.util.List;
import java.util.OptionalDouble;

import limbway.model.body.Body;
import limbway.model.enclosure.Crown;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Panel;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.Support;
import limbway.model.geometry.Point;
import limbway.model.geometry.Triangle;

/**
 * What counts as within reach, up to which height, and how finely it is measured.
 *
 * @param reachM how far a hand reaches from the surface of what the body is on [m]; empty for the body's gap reach
 * @param topM up to which height room is counted [m]; empty for the highest thing plus the body's overhead reach
 * @param columns least number of upright lines along which the room is measured, 2 or more
 */
public record VolumeSettings(OptionalDouble reachM, OptionalDouble topM, int columns) {

    /** Default number of upright lines: a standard error below a thousandth of the room on the bundled yard, tested. */
    public static final int COLUMNS = 60_000;

    /**
     * Checks the ranges.
     *
     * @throws IllegalArgumentException naming the setting
     */
    public VolumeSettings {
        if (reachM.isPresent() && !(reachM.getAsDouble() > 0)) {
            throw new IllegalArgumentException("volume: reachM = " + reachM.getAsDouble() + ", allowed above 0");
        }
        if (topM.isPresent() && !(topM.getAsDouble() > 0)) {
            throw new IllegalArgumentException("volume: topM = " + topM.getAsDouble() + ", allowed above 0");
        }
        if (columns < 2) {
            throw new IllegalArgumentException("volume: columns = " + columns + ", allowed 2 or more");
        }
    }

    /**
     * The body's own reaches and the default number of columns.
     *
     * @return settings
     */
    public static VolumeSettings standard() {
        return new VolumeSettings(OptionalDouble.empty(), OptionalDouble.empty(), COLUMNS);
    }

    /**
     * One height for several bodies: the highest thing that stands there plus the longest overhead reach.
     *
     * @param enclosure what stands there
     * @param bodies who lives there, at least one
     * @return height [m], above 0
     */
    public static double commonTopM(Enclosure enclosure, List<Body> bodies) {
        double overheadM =
                bodies.stream().mapToDouble(Body::overheadReachM).max().orElseThrow();
        return highestM(enclosure) + overheadM;
    }

    /**
     * The same settings up to another height.
     *
     * @param heightM height [m], above 0
     * @return a copy
     */
    public VolumeSettings withTop(double heightM) {
        return new VolumeSettings(reachM, OptionalDouble.of(heightM), columns);
    }

    /**
     * The same settings with another reach.
     *
     * @param handM how far a hand reaches [m], above 0
     * @return a copy
     */
    public VolumeSettings withReach(double handM) {
        return new VolumeSettings(OptionalDouble.of(handM), topM, columns);
    }

    double reachM(Body body) {
        return reachM.orElse(body.gapReachM());
    }

    double topM(Enclosure enclosure, Body body) {
        return topM.orElse(commonTopM(enclosure, List.of(body)));
    }

    private static double highestM(Enclosure enclosure) {
        double highestM = 0;
        for (Support support : enclosure.supports()) {
            for (Point point : support.axis().points()) {
                highestM = Math.max(highestM, point.zM());
            }
        }
        for (Platform platform : enclosure.platforms()) {
            highestM = Math.max(highestM, platform.zM());
        }
        for (Panel panel : enclosure.panels()) {
            for (Point corner : panel.corners()) {
                highestM = Math.max(highestM, corner.zM());
            }
        }
        for (Triangle triangle : enclosure.ground().terrain().triangles()) {
            for (Point corner : List.of(triangle.a(), triangle.b(), triangle.c())) {
                highestM = Math.max(highestM, corner.zM());
            }
        }
        for (Crown crown : enclosure.crowns()) {
            highestM = Math.max(highestM, crown.topZM());
        }
        return highestM;
    }
}
