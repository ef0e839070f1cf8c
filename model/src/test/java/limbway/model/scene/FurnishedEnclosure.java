package limbway.model.scene;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;

import limbway.model.enclosure.Barrier;
import limbway.model.enclosure.BarrierKind;
import limbway.model.enclosure.Bearing;
import limbway.model.enclosure.Bounds;
import limbway.model.enclosure.Door;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.HotWire;
import limbway.model.enclosure.Material;
import limbway.model.enclosure.OpenHours;
import limbway.model.enclosure.Panel;
import limbway.model.enclosure.PanelKind;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.PlatformKind;
import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportKind;
import limbway.model.geometry.Facet;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.geometry.Polyline;
import limbway.model.geometry.Segment;

/** A random yard with everything else besides: mesh, net, branch, ladder, hammock, swaying poles, wall, door, moat, wire. */
public final class FurnishedEnclosure {

    private final SplittableRandom chance;

    private FurnishedEnclosure(long seed) {
        chance = new SplittableRandom(seed ^ 0xf0ffee);
    }

    /** The enclosure of a seed; the same seed always gives the same one. */
    public static Enclosure of(long seed) {
        return new FurnishedEnclosure(seed).furnish(RandomEnclosure.of(seed));
    }

    /** The same with one more barrier, strand, planting or shut door, chosen by the seed. */
    public static Enclosure moreClosed(Enclosure enclosure, long seed) {
        SplittableRandom chance = new SplittableRandom(seed ^ 0xbad);
        Bounds bounds = enclosure.bounds();
        List<Barrier> barriers = new ArrayList<>(bounds.barriers());
        List<HotWire> wires = new ArrayList<>(bounds.hotWires());
        double x = chance.nextDouble(3, 18);
        double y = chance.nextDouble(3, 12);
        switch ((int) (seed % 3)) {
            case 0 ->
                barriers.add(new Barrier("more", BarrierKind.GLASS, Outline.rectangle(x, y, x + 3, y + 0.1), 0, 4));
            case 1 ->
                wires.add(new HotWire.Strand(
                        "more", Polyline.straight(new Point(x, y, 3), new Point(x + 3, y + 1, 4)), 0.7));
            default -> wires.add(new HotWire.Planting("more", Outline.rectangle(x, y, x + 2, y + 2), 0, 3, 0.4));
        }
        return enclosure.withBounds(new Bounds(barriers, wires, bounds.doors()));
    }

    private Enclosure furnish(Enclosure bare) {
        List<Support> supports = new ArrayList<>();
        for (Support support : bare.supports()) {
            supports.add(support.kind() == SupportKind.POLE && chance.nextBoolean() ? swaying(support) : support);
        }
        Point fork = supports.get(0).axis().end();
        supports.add(new Support(
                "limb",
                SupportKind.BRANCH,
                Polyline.straight(fork, fork.plus(new Point(chance.nextDouble(1, 3), chance.nextDouble(-1, 1), 0.5))),
                0.12,
                0.04,
                Material.BARK,
                new Bearing(OptionalDouble.empty(), OptionalDouble.of(chance.nextDouble(20, 100)), false)));
        supports.add(new Support(
                "ladder",
                SupportKind.LADDER,
                Polyline.straight(new Point(3, 3, 0), new Point(3, 3.5, 3)),
                0.04,
                Material.TIMBER));
        Point sagging =
                supports.get(0).axis().end().plus(supports.get(1).axis().end()).times(0.5);
        supports.add(new Support(
                "slack",
                SupportKind.ROPE,
                new Polyline(List.of(
                        supports.get(0).axis().end(),
                        sagging.plus(new Point(0, 0, -0.4)),
                        supports.get(1).axis().end())),
                0.04,
                Material.FIBRE_ROPE));
        List<Platform> platforms = new ArrayList<>(bare.platforms());
        platforms.add(new Platform(
                "hammock", Outline.rectangle(18, 2, 19.2, 3), 2.2, PlatformKind.HAMMOCK, OptionalDouble.of(60)));
        return new Enclosure(
                bare.site(),
                bare.ground(),
                supports,
                platforms,
                bare.crowns(),
                panels(),
                bounds(),
                bare.shading(),
                bare.resources());
    }

    private Support swaying(Support pole) {
        return new Support(
                pole.id(),
                pole.kind(),
                pole.axis(),
                pole.diameterM(),
                pole.diameterM() * 0.6,
                Material.TIMBER,
                new Bearing(OptionalDouble.of(chance.nextDouble(80, 600)), OptionalDouble.empty(), true));
    }

    private List<Panel> panels() {
        double y = chance.nextDouble(6, 10);
        double topZM = chance.nextDouble(2, 4);
        double openingM = chance.nextBoolean() ? 0.05 : 0.02;
        Facet wall = new Facet(
                List.of(new Point(8, y, 0), new Point(14, y, 0), new Point(14, y, topZM), new Point(8, y, topZM)));
        Facet roof = new Facet(List.of(
                new Point(8, y, topZM),
                new Point(14, y, topZM),
                new Point(14, y + 2, topZM),
                new Point(8, y + 2, topZM)));
        Facet slope = new Facet(
                List.of(new Point(16, 10, 0.5), new Point(19, 10, 0.5), new Point(19, 13, 3), new Point(16, 13, 3)));
        return List.of(
                new Panel("mesh-wall", PanelKind.MESH, wall, openingM, 0.004, OptionalDouble.empty()),
                new Panel("mesh-roof", PanelKind.MESH, roof, openingM, 0.004, OptionalDouble.empty()),
                new Panel("net", PanelKind.NET, slope, 0.12, 0.012, OptionalDouble.of(1500)));
    }

    private Bounds bounds() {
        double x = chance.nextDouble(10, 14);
        Barrier wall = new Barrier("wall", BarrierKind.WALL, Outline.rectangle(x, 0, x + 0.2, 5), 0, 3);
        Barrier moat = new Barrier("moat", BarrierKind.WATER, Outline.rectangle(20, 0, 22, 4), -1.5, 0);
        Door hatch = new Door(
                "slide",
                "wall",
                new Segment(new Point(x + 0.1, 2, 0), new Point(x + 0.1, 2.8, 0)),
                1,
                List.of(new OpenHours(LocalTime.of(8, 0), LocalTime.of(16, 0))));
        HotWire strand = new HotWire.Strand(
                "strand", Polyline.straight(new Point(1, 1, 1.5), new Point(1, 9, chance.nextDouble(1, 3))), 0.4);
        HotWire bed = new HotWire.Planting("bed", Outline.rectangle(4, 11, 6, 13), 0, 2.5, 0.3);
        return new Bounds(List.of(wall, moat), List.of(strand, bed), List.of(hatch));
    }
}
