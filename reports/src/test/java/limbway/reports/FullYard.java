package limbway.reports;

import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

import limbway.model.enclosure.Barrier;
import limbway.model.enclosure.BarrierKind;
import limbway.model.enclosure.Bearing;
import limbway.model.enclosure.Bounds;
import limbway.model.enclosure.Building;
import limbway.model.enclosure.Cover;
import limbway.model.enclosure.CoverKind;
import limbway.model.enclosure.Crown;
import limbway.model.enclosure.Door;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Ground;
import limbway.model.enclosure.HotWire;
import limbway.model.enclosure.Material;
import limbway.model.enclosure.Obstacle;
import limbway.model.enclosure.OpenHours;
import limbway.model.enclosure.Panel;
import limbway.model.enclosure.PanelKind;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.PlatformKind;
import limbway.model.enclosure.Resource;
import limbway.model.enclosure.ResourceKind;
import limbway.model.enclosure.Shading;
import limbway.model.enclosure.Site;
import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportKind;
import limbway.model.energy.EnergySettings;
import limbway.model.geometry.Corner;
import limbway.model.geometry.Facet;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.geometry.Polyline;
import limbway.model.geometry.Segment;
import limbway.model.geometry.Terrain;
import limbway.model.geometry.Triangle;
import limbway.model.route.ChoiceSharpness;
import limbway.model.study.Animal;
import limbway.model.study.Variant;
import limbway.sim.habitat.Habitat;

/** A yard of 24 by 16 m with one or more of everything that an enclosure can hold, on ground that rises to the north. */
public final class FullYard {

    private static final Outline OUTLINE = Outline.rectangle(0, 0, 24, 16);

    private FullYard() {}

    public static Enclosure enclosure() {
        return new Enclosure(
                new Site(1.5, 110.5, ZoneOffset.ofHours(8)),
                new Ground(
                        OUTLINE, "grass", List.of(new Obstacle("rock", Outline.rectangle(13.5, 2, 15.5, 3.5))), hill()),
                supports(),
                platforms(),
                List.of(new Crown("fig crown", "fig", new Point(17, 11, 0), 2.4, 4, 7.5)),
                panels(),
                bounds(),
                Shading.NONE,
                resources());
    }

    /** The same with a roof, a sail, a building, and two trees beside it, one of them far away. */
    public static Enclosure shaded() {
        return enclosure()
                .withShading(new Shading(
                        List.of(
                                new Cover(
                                        "deck-roof",
                                        CoverKind.ROOF,
                                        new Facet(List.of(
                                                p(7.6, 3.6, 5), p(10.4, 3.6, 5), p(10.4, 6, 5.6), p(7.6, 6, 5.6))),
                                        0),
                                new Cover(
                                        "sling-sail",
                                        CoverKind.SAIL,
                                        new Facet(List.of(p(11.5, 4, 4), p(15, 4.4, 4.4), p(12.4, 7.4, 4.8))),
                                        0.2)),
                        List.of(new Building("night-house", Outline.rectangle(-9, 4, -1, 13), 0, 4.5)),
                        List.of(
                                new Crown("lime", "", new Point(27, 4, 0), 2.5, 3, 11),
                                new Crown("far lime", "", new Point(60, 4, 0), 2.5, 3, 11))));
    }

    /** Compiled for an adult female and a juvenile. */
    public static Habitat habitat() {
        return new Habitat(
                new Variant("full", "", shaded(), List.of()),
                List.of(new Animal("A", Pole.female(), 1), new Animal("B", Pole.juvenile(), 2)),
                Optional.empty(),
                EnergySettings.standard(),
                ChoiceSharpness.GROUP.standard());
    }

    /** Level to y = 6, then rising to 1.5 m at the north edge, more in the west. */
    private static Terrain hill() {
        List<Triangle> triangles = new ArrayList<>();
        for (int x = 0; x < 24; x += 4) {
            for (int y = 0; y < 16; y += 4) {
                Point a = onHill(x, y);
                Point b = onHill(x + 4, y);
                Point c = onHill(x + 4, y + 4);
                Point d = onHill(x, y + 4);
                // clockwise and anticlockwise by turns: both are allowed
                triangles.add(new Triangle(a, b, c));
                triangles.add(new Triangle(a, d, c));
            }
        }
        return new Terrain(triangles);
    }

    private static Point onHill(double x, double y) {
        return new Point(x, y, Math.max(0, (y - 4) / 12) * (1.8 - x / 24));
    }

    private static List<Support> supports() {
        return List.of(
                new Support(
                        "mast",
                        SupportKind.POLE,
                        Polyline.straight(new Point(7, 5, 0), new Point(7, 5, 6)),
                        0.12,
                        0.08,
                        Material.GALVANISED_STEEL,
                        new Bearing(OptionalDouble.of(900), OptionalDouble.empty(), true)),
                new Support(
                        "prop",
                        SupportKind.POLE,
                        Polyline.straight(new Point(12, 7, 0.3), new Point(12, 7, 5.5)),
                        0.1,
                        Material.TIMBER),
                new Support(
                        "fig",
                        SupportKind.TRUNK,
                        Polyline.straight(new Point(17, 11, 0.6), new Point(17, 11, 6)),
                        0.4,
                        0.2,
                        Material.BARK,
                        Bearing.UNSTATED),
                new Support(
                        "limb",
                        SupportKind.BRANCH,
                        new Polyline(List.of(new Point(17, 11, 4.5), new Point(15.5, 10, 5), new Point(14, 9.5, 5))),
                        0.14,
                        0.04,
                        Material.BARK,
                        Bearing.UNSTATED),
                new Support(
                        "ladder",
                        SupportKind.LADDER,
                        Polyline.straight(new Point(9, 2.5, 0), new Point(9, 4, 3)),
                        0.04,
                        Material.TIMBER),
                new Support(
                        "line",
                        SupportKind.ROPE,
                        new Polyline(List.of(new Point(7, 5, 5.5), new Point(9.5, 6, 4.9), new Point(12, 7, 5))),
                        0.05,
                        Material.FIBRE_ROPE),
                new Support(
                        "elbow",
                        SupportKind.BEAM,
                        new Polyline(List.of(new Point(12, 7, 3), new Point(14, 7, 3), new Point(14, 9.5, 3))),
                        0.12,
                        Material.CONCRETE));
    }

    private static List<Platform> platforms() {
        return List.of(
                new Platform("deck", Outline.rectangle(8, 4, 10, 5.6), 3),
                new Platform(
                        "sling",
                        new Outline(List.of(
                                new Corner(12.2, 4.6), new Corner(14, 5), new Corner(13.8, 6.4), new Corner(12, 6.2))),
                        2.4,
                        PlatformKind.HAMMOCK,
                        OptionalDouble.of(120)));
    }

    private static List<Panel> panels() {
        return List.of(
                panel("west-mesh", PanelKind.MESH, 0.05, 0.004, p(3, 4, 0.6), p(3, 8, 1), p(3, 8, 4), p(3, 4, 4)),
                panel("roof-mesh", PanelKind.MESH, 0.05, 0.004, p(3, 4, 4), p(3, 6, 4), p(5, 6, 4), p(5, 4, 4)),
                // a dent, so that it cannot be a fan about its first corner
                panel(
                        "gable-mesh",
                        PanelKind.MESH,
                        0.05,
                        0.004,
                        p(3, 8, 4),
                        p(4, 8, 2.5),
                        p(5, 8, 4),
                        p(5, 8, 1),
                        p(3, 8, 1)),
                panel("net", PanelKind.NET, 0.15, 0.016, p(7, 9, 1), p(9, 9, 1), p(9, 11, 2.6), p(7, 11, 2.6)));
    }

    private static Panel panel(String id, PanelKind kind, double openingM, double strandM, Point... corners) {
        return new Panel(id, kind, new Facet(List.of(corners)), openingM, strandM, OptionalDouble.empty());
    }

    private static Point p(double x, double y, double z) {
        return new Point(x, y, z);
    }

    private static Bounds bounds() {
        return new Bounds(
                List.of(
                        new Barrier("north-wall", BarrierKind.WALL, Outline.rectangle(0, 15.6, 24, 16), 0, 4),
                        new Barrier("window", BarrierKind.GLASS, Outline.rectangle(0, 0, 8, 0.1), 0, 3.5),
                        new Barrier("moat", BarrierKind.WATER, Outline.rectangle(21, 0, 24, 15.6), -1.5, -0.1)),
                List.of(
                        new HotWire.Strand("wall-wire", new Polyline(List.of(p(5, 15.3, 3.6), p(24, 15.3, 3.6))), 0.3),
                        new HotWire.Strand(
                                "bend-wire", new Polyline(List.of(p(18, 2, 0.6), p(20, 2, 0.6), p(20, 5, 0.6))), 0.4),
                        new HotWire.Planting(
                                "bamboo",
                                new Outline(List.of(new Corner(17.5, 6), new Corner(19.5, 6.4), new Corner(18.4, 8))),
                                0,
                                3,
                                0.5)),
                List.of(
                        new Door(
                                "hatch",
                                "west-mesh",
                                new Segment(p(3, 5.4, 1), p(3, 6.4, 1)),
                                1.6,
                                List.of(new OpenHours(LocalTime.of(8, 0), LocalTime.of(17, 30)))),
                        new Door(
                                "keeper-door",
                                "north-wall",
                                new Segment(p(11, 15.6, 1.3), p(12.2, 15.6, 1.3)),
                                2,
                                List.of())));
    }

    private static List<Resource> resources() {
        return List.of(
                new Resource("tray", ResourceKind.FOOD, p(9, 4.8, 3), "deck", 2),
                new Resource("cup", ResourceKind.WATER, p(12, 7, 2), "prop", 1),
                new Resource("roof", ResourceKind.SHADE, p(7, 5, 4), "mast", 1),
                new Resource("bed", ResourceKind.NEST, p(13, 5.5, 2.4), "sling", 1),
                new Resource("den", ResourceKind.RETREAT, p(5, 10, 0.8), "", 1));
    }
}
