package limbway.scenarios.entry;

import java.util.List;
import java.util.OptionalDouble;

import limbway.model.enclosure.BarrierKind;
import limbway.model.geometry.Corner;
import limbway.model.geometry.Outline;
import limbway.scenarios.problem.Place;

/**
 * Something that stops an animal and cannot be climbed, as declared.
 *
 * @param id name
 * @param what kind and name, for messages
 * @param place where it is declared
 * @param kind wall, glass or water
 * @param planPlace where its plan is declared
 * @param plan what it covers
 * @param upright how far it goes up and down
 */
public record BarrierEntry(
        String id, String what, Place place, BarrierKind kind, Place planPlace, Plan plan, Upright upright)
        implements Entry {

    /** What a barrier covers. */
    public sealed interface Plan {

        /**
         * The places that were declared.
         *
         * @return corners of an outline or points of a line, in order
         */
        List<Corner> corners();
    }

    /**
     * A plan by its edge.
     *
     * @param outline the edge
     */
    public record ByOutline(Outline outline) implements Plan {

        @Override
        public List<Corner> corners() {
            return outline.corners();
        }
    }

    /**
     * A plan by its middle line.
     *
     * @param corners points of the line, two or more
     * @param thicknessM how thick it is [m]
     */
    public record ByLine(List<Corner> corners, double thicknessM) implements Plan {

        /** Keeps a copy of the list. */
        public ByLine {
            corners = List.copyOf(corners);
        }
    }

    /** How far something goes up and down. */
    public sealed interface Upright {}

    /**
     * It stands on the ground.
     *
     * @param bottomM height of its lower end [m]; empty for the lowest ground below it
     * @param topM height of its upper end [m]
     */
    public record Standing(OptionalDouble bottomM, double topM) implements Upright {}

    /**
     * It fills a hollow.
     *
     * @param depthM how deep it is [m]
     * @param surfaceM height of its surface [m]; empty for the lowest ground at its edge
     */
    public record Hollow(double depthM, OptionalDouble surfaceM) implements Upright {}
}
