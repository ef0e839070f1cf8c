package limbway.scenarios.entry;

import limbway.model.geometry.Point;
import limbway.scenarios.problem.Place;

/** Where something is, as the scenario says it: by coordinates, or on something that has a name. */
public sealed interface PlaceWords {

    /**
     * Where the words stand.
     *
     * @return place of the first character
     */
    Place place();

    /**
     * A point given by its coordinates.
     *
     * @param place where the words stand
     * @param point the point
     * @param onGround whether no height was given, so that it lies on the ground, however high that is
     */
    record Coordinates(Place place, Point point, boolean onGround) implements PlaceWords {}

    /**
     * A place on a support or platform.
     *
     * @param place where the words stand
     * @param id name of the support or platform
     * @param spot where on it
     */
    record OnNamed(Place place, String id, Spot spot) implements PlaceWords {}

    /** Where on a support or platform. */
    sealed interface Spot {}

    /** The thing as a whole: the middle of a platform. */
    record Whole() implements Spot {}

    /**
     * A height on a pole or trunk, a distance from the start of a beam or rope.
     *
     * @param alongM height above ground or distance [m]
     */
    record Along(double alongM) implements Spot {}

    /**
     * A part of the way from foot to top or from start to end.
     *
     * @param share 0 to 1
     */
    record Share(double share) implements Spot {}

    /**
     * A place on a platform beside its middle.
     *
     * @param eastM metres east of the middle
     * @param northM metres north of the middle
     */
    record Offset(double eastM, double northM) implements Spot {}
}
