package limbway.scenarios.entry;

import java.util.Optional;

import limbway.model.enclosure.Material;
import limbway.model.enclosure.SupportKind;
import limbway.model.geometry.Outline;
import limbway.scenarios.problem.Place;

/** Something that an animal can move on, as declared; names of other entries are not yet looked up. */
public sealed interface SupportEntry {

    /**
     * Its name.
     *
     * @return unique within the enclosure once that was checked
     */
    String id();

    /**
     * What it is called in messages.
     *
     * @return for example {@code pole "mast-1"}
     */
    String what();

    /**
     * Where the entry stands.
     *
     * @return place of its first key
     */
    Place place();

    /**
     * A pole or the stem of a tree.
     *
     * @param id name
     * @param what kind and name, for messages
     * @param place where it is declared
     * @param kind pole or trunk
     * @param foot where it stands
     * @param heightM height of the top above the foot [m]
     * @param diameterM thickness [m]
     * @param material surface
     * @param lean how it leans
     * @param crown branches, if it has any
     */
    record Upright(
            String id,
            String what,
            Place place,
            SupportKind kind,
            PlaceWords.Coordinates foot,
            double heightM,
            double diameterM,
            Material material,
            Lean lean,
            Optional<CrownSize> crown)
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
     */
    record CrownSize(double radiusM, double baseM) {}

    /**
     * A beam or a rope between two places.
     *
     * @param id name
     * @param what kind and name, for messages
     * @param place where it is declared
     * @param kind beam or rope
     * @param from start
     * @param to end
     * @param diameterM thickness [m]
     * @param sagShare sag at the middle as a share of the span in plan, 0 for a beam
     * @param material surface
     */
    record Span(
            String id,
            String what,
            Place place,
            SupportKind kind,
            PlaceWords from,
            PlaceWords to,
            double diameterM,
            double sagShare,
            Material material)
            implements SupportEntry {}

    /**
     * A deck given by its middle and its sides.
     *
     * @param id name
     * @param what kind and name, for messages
     * @param place where it is declared
     * @param middle where its middle is
     * @param eastM side from west to east before the turn [m]
     * @param northM side from south to north before the turn [m]
     * @param turnDeg turn, clockwise seen from above [degrees]
     */
    record DeckBySize(
            String id, String what, Place place, PlaceWords middle, double eastM, double northM, double turnDeg)
            implements SupportEntry {}

    /**
     * A deck given by its outline.
     *
     * @param id name
     * @param what kind and name, for messages
     * @param place where it is declared
     * @param outline edge in plan
     * @param heightM height of the surface [m]
     */
    record DeckByOutline(String id, String what, Place place, Outline outline, double heightM)
            implements SupportEntry {}
}
