package limbway.model.enclosure;

import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;
import limbway.model.geometry.UprightCylinder;

/**
 * The branches of a tree, taken as an upright cylinder in which an animal clambers in any direction.
 *
 * <p>That the twigs at its edge bear the animal is an assumption; see {@code docs/model.md}.
 *
 * @param id name, unique within the enclosure
 * @param trunk id of the trunk that carries it, or empty
 * @param foot point of the ground below its middle
 * @param radiusM radius of the cylinder [m], above 0
 * @param baseZM height of its lower end [m], 0 or more
 * @param topZM height of its upper end [m], above {@code baseZM}
 * @param foliage its leaves, which give shade
 */
public record Crown(String id, String trunk, Point foot, double radiusM, double baseZM, double topZM, Foliage foliage) {

    /**
     * Checks the measures.
     *
     * @throws IllegalArgumentException naming the crown and the impossible measure
     */
    public Crown {
        if (!(radiusM > 0)) {
            throw new IllegalArgumentException("crown \"" + id + "\": radiusM = " + radiusM + ", allowed above 0");
        }
        if (!(baseZM >= 0 && topZM > baseZM)) {
            throw new IllegalArgumentException("crown \"" + id + "\": baseZM = " + baseZM + ", topZM = " + topZM
                    + ", allowed 0 <= baseZM < topZM");
        }
    }

    /**
     * A crown of an evergreen of a usual thickness.
     *
     * @param id name, unique within the enclosure
     * @param trunk id of the trunk that carries it, or empty
     * @param foot point of the ground below its middle
     * @param radiusM radius of the cylinder [m], above 0
     * @param baseZM height of its lower end [m], 0 or more
     * @param topZM height of its upper end [m], above {@code baseZM}
     */
    public Crown(String id, String trunk, Point foot, double radiusM, double baseZM, double topZM) {
        this(id, trunk, foot, radiusM, baseZM, topZM, Foliage.EVERGREEN);
    }

    /**
     * The space that the branches fill.
     *
     * @return an upright cylinder
     */
    public UprightCylinder space() {
        return new UprightCylinder(new Segment(foot.atHeight(baseZM), foot.atHeight(topZM)), radiusM);
    }
}
