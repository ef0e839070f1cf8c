package limbway.scenarios.entry;

import java.util.Optional;
import java.util.OptionalDouble;

import limbway.model.enclosure.Foliage;
import limbway.model.enclosure.Material;
import limbway.model.enclosure.PlatformKind;
import limbway.model.enclosure.SupportKind;
import limbway.model.geometry.Outline;
import limbway.scenarios.problem.Place;

/** Something that an animal can move on, as declared; names of other entries are not yet looked up. */
public sealed interface SupportEntry extends Entry {

    /**
     * How a support gives way under an animal, as far as the scenario says so.
     *
     * @param stiffnessNPerM force for each metre that it gives [N/m]
     * @param bearsKg heaviest load allowed [kg]
     * @param sways whether an animal can swing it
     */
    record Stated(OptionalDouble stiffnessNPerM, OptionalDouble bearsKg, Optional<Boolean> sways) {}

    /**
     * A pole or the stem of a tree.
     *
     * @param id name
     * @param what kind and name, for messages
     * @param place where it is declared
     * @param kind pole or trunk
     * @param foot where it stands
     * @param heightM height of the top above the foot [m]
     * @param diameterM thickness at the foot [m]
     * @param tipDiameterM thickness at the top [m]
     * @param material surface
     * @param lean how it leans
     * @param crown branches, if it has any
     * @param stated how it gives way
     */
    record Upright(
            String id,
            String what,
            Place place,
            SupportKind kind,
            PlaceWords.Coordinates foot,
            double heightM,
            double diameterM,
            double tipDiameterM,
            Material material,
            Lean lean,
            Optional<CrownSize> crown,
            Stated stated)
            implements SupportEntry {}

    /**
     * How a pole leans.
     *
     * @param fromUprightDeg angle from upright, 0 to 60 [degrees]
     * @param towardsDeg compass direction of the top seen from the foot, 90 is east [degrees]
     */
    record Lean(double fromUprightDeg, double towardsDeg) {}

    /**
     * The crown of a trunk.
     *
     * @param radiusM radius [m]
     * @param baseM height of the lowest branches above the foot [m]
     * @param foliage its leaves
     */
    record CrownSize(double radiusM, double baseM, Foliage foliage) {}

    /**
     * Anything between two places: a beam, a branch, a rope, a ladder.
     *
     * @param id name
     * @param what kind and name, for messages
     * @param place where it is declared
     * @param kind what it is
     * @param from start
     * @param to end
     * @param diameterM thickness at the start [m]
     * @param tipDiameterM thickness at the end [m]
     * @param slack how far a rope hangs through
     * @param material surface
     * @param stated how it gives way
     */
    record Span(
            String id,
            String what,
            Place place,
            SupportKind kind,
            PlaceWords from,
            PlaceWords to,
            double diameterM,
            double tipDiameterM,
            Slack slack,
            Material material,
            Stated stated)
            implements SupportEntry {}

    /** How far something between two places hangs through. */
    sealed interface Slack {}

    /**
     * A stated sag.
     *
     * @param share sag at the middle as a share of the span in plan, 0 for what is stiff
     */
    record Sag(double share) implements Slack {}

    /**
     * A stated length of a rope.
     *
     * @param place where it is stated
     * @param lengthM length from end to end [m]
     */
    record Length(Place place, double lengthM) implements Slack {}

    /** A deck or hammock. */
    sealed interface Deck extends SupportEntry {

        /**
         * What it is.
         *
         * @return a rigid deck or a hammock
         */
        PlatformKind kind();

        /**
         * Heaviest load allowed.
         *
         * @return kilograms, or empty where none was stated
         */
        OptionalDouble bearsKg();
    }

    /**
     * A deck given by its middle and its sides.
     *
     * @param id name
     * @param what kind and name, for messages
     * @param place where it is declared
     * @param kind a rigid deck or a hammock
     * @param bearsKg heaviest load allowed [kg]
     * @param middle where its middle is
     * @param eastM side from west to east before the turn [m]
     * @param northM side from south to north before the turn [m]
     * @param turnDeg turn, clockwise seen from above [degrees]
     */
    record DeckBySize(
            String id,
            String what,
            Place place,
            PlatformKind kind,
            OptionalDouble bearsKg,
            PlaceWords middle,
            double eastM,
            double northM,
            double turnDeg)
            implements Deck {}

    /**
     * A deck given by its outline.
     *
     * @param id name
     * @param what kind and name, for messages
     * @param place where it is declared
     * @param kind a rigid deck or a hammock
     * @param bearsKg heaviest load allowed [kg]
     * @param outline edge in plan
     * @param heightM height of the surface [m]
     */
    record DeckByOutline(
            String id,
            String what,
            Place place,
            PlatformKind kind,
            OptionalDouble bearsKg,
            Outline outline,
            double heightM)
            implements Deck {}
}
