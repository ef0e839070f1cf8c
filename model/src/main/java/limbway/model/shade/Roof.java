package limbway.model.shade;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;

import limbway.model.enclosure.Cover;
import limbway.model.enclosure.CoverKind;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Shading;
import limbway.model.geometry.Facet;
import limbway.model.geometry.Point;

/**
 * A level roof over one platform, perhaps with screens that hang from its edges down to the height of the deck.
 *
 * @param platform name of the platform
 * @param riseM height above the deck [m]
 * @param sideAM length along the first side of the deck [m]
 * @param sideBM length at right angles to it [m]
 * @param shiftAM how far its middle lies from that of the deck along the first side [m]
 * @param shiftBM how far at right angles to it [m]
 * @param roof the roof itself
 * @param screens the screens, none for a plain roof
 * @param screensFaceDeg which way each screen faces, degrees clockwise from north, in the order of {@code screens}
 */
public record Roof(
        String platform,
        double riseM,
        double sideAM,
        double sideBM,
        double shiftAM,
        double shiftBM,
        Cover roof,
        List<Cover> screens,
        List<Double> screensFaceDeg) {

    /** Keeps copies of the lists. */
    public Roof {
        screens = List.copyOf(screens);
        screensFaceDeg = List.copyOf(screensFaceDeg);
    }

    static Roof of(String platform, DeckFrame frame, RoofPlan plan) {
        double top = frame.zM() + plan.riseM();
        Cover roof = new Cover(
                "roof over " + platform,
                CoverKind.ROOF,
                new Facet(List.of(
                        frame.at(plan.a0(), plan.b0(), top),
                        frame.at(plan.a1(), plan.b0(), top),
                        frame.at(plan.a1(), plan.b1(), top),
                        frame.at(plan.a0(), plan.b1(), top))),
                0);
        List<Cover> screens = new ArrayList<>();
        List<Double> facing = new ArrayList<>();
        for (RoofSide side : RoofSide.values()) {
            if (plan.has(side)) {
                double deg = frame.azimuthDeg(side.anticlockwiseDeg());
                screens.add(screen("screen " + (screens.size() + 1) + " at " + platform, frame, plan, side));
                facing.add(deg);
            }
        }
        return new Roof(
                platform,
                plan.riseM(),
                plan.a1() - plan.a0(),
                plan.b1() - plan.b0(),
                (plan.a0() + plan.a1() - frame.longA()) / 2,
                (plan.b0() + plan.b1() - frame.longB()) / 2,
                roof,
                screens,
                facing);
    }

    private static Cover screen(String id, DeckFrame frame, RoofPlan plan, RoofSide side) {
        double a0 = side == RoofSide.RIGHT ? plan.a1() : plan.a0();
        double a1 = side == RoofSide.LEFT ? plan.a0() : plan.a1();
        double b0 = side == RoofSide.FAR ? plan.b1() : plan.b0();
        double b1 = side == RoofSide.NEAR ? plan.b0() : plan.b1();
        Point up = new Point(0, 0, plan.riseM());
        Point from = frame.at(a0, b0, frame.zM());
        Point to = frame.at(a1, b1, frame.zM());
        return new Cover(id, CoverKind.ROOF, new Facet(List.of(from, to, to.plus(up), from.plus(up))), 0);
    }

    /**
     * Everything that has to be put up.
     *
     * @return the roof, then the screens
     */
    public List<Cover> covers() {
        return Stream.concat(Stream.of(roof), screens.stream()).toList();
    }

    /**
     * Area of roof and screens.
     *
     * @return square metres
     */
    public double areaM2() {
        return covers().stream().mapToDouble(cover -> cover.facet().areaM2()).sum();
    }

    /**
     * The layout with this roof in it.
     *
     * @param enclosure the layout without
     * @return a copy
     */
    public Enclosure addedTo(Enclosure enclosure) {
        Shading shading = enclosure.shading();
        List<Cover> all =
                Stream.concat(shading.covers().stream(), covers().stream()).toList();
        return enclosure.withShading(new Shading(all, shading.buildings(), shading.neighbours()));
    }
}
