package limbway.sim.habitat;

import java.time.LocalTime;
import java.time.MonthDay;
import java.time.ZoneId;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.DoubleUnaryOperator;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.enclosure.Barrier;
import limbway.model.enclosure.BarrierKind;
import limbway.model.enclosure.Bounds;
import limbway.model.enclosure.Cover;
import limbway.model.enclosure.CoverKind;
import limbway.model.enclosure.Crown;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Foliage;
import limbway.model.enclosure.OpenHours;
import limbway.model.enclosure.Panel;
import limbway.model.enclosure.PanelKind;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.Resource;
import limbway.model.enclosure.ResourceKind;
import limbway.model.enclosure.Shading;
import limbway.model.enclosure.Site;
import limbway.model.energy.EnergySettings;
import limbway.model.geometry.Corner;
import limbway.model.geometry.Facet;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.route.ChoiceSharpness;
import limbway.model.scene.Scene;
import limbway.model.study.Animal;
import limbway.model.study.Attendance;
import limbway.model.study.Keeping;
import limbway.model.study.Variant;
import limbway.model.study.Viewpoint;
import limbway.sim.Yard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

class PlaceCharacterTest {

    private static final long HOUR = 3_600_000;
    private static final OpenHours DAY = new OpenHours(LocalTime.of(9, 0), LocalTime.of(17, 0));
    private static final OpenHours ALWAYS = new OpenHours(LocalTime.MIDNIGHT, LocalTime.MIDNIGHT);

    private static Resource place(String id, ResourceKind kind, double x, double y) {
        return new Resource(id, kind, new Point(x, y, 0), "", 1);
    }

    private static final List<Resource> BED = List.of(place("bed", ResourceKind.RETREAT, 15, 10));

    private static Enclosure yard(
            List<Platform> decks,
            List<Crown> crowns,
            List<Panel> panels,
            Bounds bounds,
            Shading shading,
            List<Resource> places) {
        Enclosure bare = Scene.yard(30, 20).build();
        return new Enclosure(bare.site(), bare.ground(), List.of(), decks, crowns, panels, bounds, shading, places);
    }

    private static Enclosure yard(Bounds bounds, List<Resource> places) {
        return yard(List.of(), List.of(), List.of(), bounds, Shading.NONE, places);
    }

    private static Habitat habitat(Enclosure enclosure, List<Attendance> staff, List<Viewpoint> viewpoints) {
        Keeping keeping = new Keeping(List.of(), List.of(), List.of(), staff, viewpoints);
        return new Habitat(
                new Variant("as built", "", enclosure, keeping, Set.of()),
                List.of(new Animal("A", Yard.body("adult female"), 1)),
                Optional.empty(),
                EnergySettings.standard(),
                ChoiceSharpness.GROUP.standard());
    }

    /** The start at the very place of a resource. */
    private static int start(Habitat habitat, String id) {
        Passages any = habitat.passages(habitat.bodies().get(0)).get(0);
        Point at = habitat.graph()
                .resources()
                .get(habitat.graph().resourceNumber(id))
                .at();
        for (int start = 0; start < any.startCount(); start++) {
            if (habitat.graph().place(any.hold(start)).distanceM(at) < 1e-9) {
                return start;
            }
        }
        throw new AssertionError("no start at " + id);
    }

    private static Bounds wall(double x0, double y0, double x1, double y1, BarrierKind kind) {
        return new Bounds(
                List.of(new Barrier("wall", kind, Outline.rectangle(x0, y0, x1, y1), 0, 3)), List.of(), List.of());
    }

    private static double cover(Enclosure enclosure) {
        Habitat habitat = habitat(enclosure, List.of(), List.of());
        return habitat.character().cover(start(habitat, "bed"));
    }

    private static Enclosure roofed(double zM, double halfM, double transmittance) {
        List<Point> corners = List.of(
                new Point(15 - halfM, 10 - halfM, zM),
                new Point(15 + halfM, 10 - halfM, zM),
                new Point(15 + halfM, 10 + halfM, zM),
                new Point(15 - halfM, 10 + halfM, zM));
        Cover roof = new Cover(
                "roof", transmittance > 0 ? CoverKind.SAIL : CoverKind.ROOF, new Facet(corners), transmittance);
        Shading shading = new Shading(List.of(roof), List.of(), List.of());
        return yard(List.of(), List.of(), List.of(), Bounds.NONE, shading, BED);
    }

    /**
     * Share of a level surface's light that a level square of half side a at height h above it keeps off, from the view factor
     * of a small surface to a parallel rectangle over one of its corners (Howell, catalogue of configuration factors, B-3):
     * with a = h, 4/(2π) · 2 · atan(1/√2)/√2 = 0.5541. The solid angle of the same square is but a third of the half sphere.
     */
    @Test
    @Tag("published")
    void aSquareRoofCoversWhatItsViewFactorSays() {
        double expected = 4 / (2 * Math.PI) * 2 * Math.atan(1 / Math.sqrt(2)) / Math.sqrt(2);
        assertEquals(0.5541, expected, 1e-4);
        // 192 directions: each stands for half a hundredth, and some tens lie along the edge, on both sides of it
        assertEquals(expected, cover(roofed(Sights.EYE_M + 3, 3, 0)), 0.025);
        assertEquals(0.6 * cover(roofed(Sights.EYE_M + 3, 3, 0)), cover(roofed(Sights.EYE_M + 3, 3, 0.4)), 1e-9);
        assertEquals(0, cover(roofed(Sights.EYE_M - 0.1, 3, 0)), "what lies below the eyes covers nothing");
        assertEquals(0, cover(yard(Bounds.NONE, BED)));
    }

    @Test
    @Tag("derived")
    void leavesCoverAsInTheSummerOfTheirHalfOfTheEarth() {
        double evergreen = cover(treed(50, Optional.empty()));
        Optional<Foliage.Season> northern = Optional.of(new Foliage.Season(MonthDay.of(4, 15), MonthDay.of(11, 5)));
        Optional<Foliage.Season> southern = Optional.of(new Foliage.Season(MonthDay.of(10, 15), MonthDay.of(5, 5)));
        assertEquals(evergreen, cover(treed(50, northern)), 1e-12);
        assertEquals(evergreen, cover(treed(-35, southern)), 1e-12);
        assertTrue(cover(treed(50, southern)) < evergreen - 0.1, "bare at midsummer");
    }

    private static Enclosure treed(double latitudeDeg, Optional<Foliage.Season> season) {
        Crown tree = new Crown("tree", "", new Point(15, 10, 0), 4, 3, 8, new Foliage(4, season));
        Enclosure here = yard(List.of(), List.of(tree), List.of(), Bounds.NONE, Shading.NONE, BED);
        Site site = new Site(latitudeDeg, 7, ZoneId.of("Etc/UTC"));
        return new Enclosure(
                site, here.ground(), List.of(), List.of(), here.crowns(), List.of(), Bounds.NONE, Shading.NONE, BED);
    }

    @Test
    @Tag("derived")
    void theEdgeIsTheEndOfTheGroundABarrierOrAWallOfMesh() {
        List<Resource> places = List.of(
                place("west", ResourceKind.FOOD, 3, 8),
                place("by-the-wall", ResourceKind.RETREAT, 12, 10),
                place("by-the-mesh", ResourceKind.NEST, 22, 9),
                place("middle", ResourceKind.SHADE, 18, 9.5));
        Panel mesh = panel(
                "mesh",
                PanelKind.MESH,
                new Point(23, 5, 0),
                new Point(23, 12, 0),
                new Point(23, 12, 3),
                new Point(23, 5, 3));
        Panel roof = panel(
                "roof",
                PanelKind.MESH,
                new Point(16, 8, 3),
                new Point(20, 8, 3),
                new Point(20, 11, 3),
                new Point(16, 11, 3));
        Panel net = panel(
                "net",
                PanelKind.NET,
                new Point(18.5, 8, 0),
                new Point(18.5, 11, 0),
                new Point(18.5, 11, 3),
                new Point(18.5, 8, 3));
        Habitat habitat = habitat(
                yard(
                        List.of(),
                        List.of(),
                        List.of(mesh, roof, net),
                        wall(13.5, 8, 14, 12, BarrierKind.GLASS),
                        Shading.NONE,
                        places),
                List.of(),
                List.of());
        PlaceCharacter character = habitat.character();
        assertEquals(3, character.edgeM(start(habitat, "west")), 1e-9);
        assertEquals(1.5, character.edgeM(start(habitat, "by-the-wall")), 1e-9);
        assertEquals(1, character.edgeM(start(habitat, "by-the-mesh")), 1e-9);
        assertEquals(4, character.edgeM(start(habitat, "middle")), 1e-9, "neither a roof of mesh nor a net is an edge");
        assertEquals(0, character.heightM(start(habitat, "middle")), 1e-9);
    }

    /** The wall from (14, 4) to (15, 16) stands between the western places and the rest; the pane hides nobody. */
    @Test
    @Tag("derived")
    void aWallHidesFoodStaffAndVisitorsAndAPaneDoesNot() {
        List<Resource> places = List.of(
                place("bed", ResourceKind.RETREAT, 8, 10),
                place("tray", ResourceKind.FOOD, 6, 12),
                place("hatch", ResourceKind.FOOD, 25, 10));
        List<Attendance> staff = List.of(
                new Attendance("gate", new Point(2, 10, 1.5), DAY),
                new Attendance("kitchen", new Point(28, 10, 1.5), ALWAYS));
        List<Viewpoint> viewpoints = List.of(
                new Viewpoint("terrace", new Point(29, 10, 1.6), DAY),
                new Viewpoint("tunnel", new Point(8, 1, 1.6), ALWAYS));
        Habitat walled = habitat(yard(wall(14, 4, 15, 16, BarrierKind.WALL), places), staff, viewpoints);
        int bed = start(walled, "bed");
        PlaceCharacter character = walled.character();
        assertEquals(0.5, character.lookOut(bed), "the tray and the gate, not the hatch and not the kitchen");
        assertFalse(character.isSeen(0, bed));
        assertTrue(character.isSeen(1, bed) && character.isSeen(0, start(walled, "hatch")));
        assertEquals(0.5, character.seenShare(bed, 12 * HOUR));
        assertEquals(1, character.seenShare(bed, 20 * HOUR), "only the tunnel is open, from which it is seen");
        Habitat paned = habitat(yard(wall(14, 4, 15, 16, BarrierKind.GLASS), places), staff, viewpoints);
        assertEquals(1, paned.character().lookOut(start(paned, "bed")));
        assertEquals(1, paned.character().seenShare(start(paned, "bed"), 12 * HOUR));
    }

    @Test
    @Tag("derived")
    void staffAreAsFarAsTheNearestThatIsThere() {
        List<Resource> places =
                List.of(place("bed", ResourceKind.RETREAT, 8, 10), place("tray", ResourceKind.FOOD, 12, 13));
        List<Attendance> staff = List.of(
                new Attendance("gate", new Point(8, 6, 3), DAY),
                new Attendance("kitchen", new Point(8, 22, 0), new OpenHours(LocalTime.of(16, 0), LocalTime.of(1, 0))));
        Habitat habitat = habitat(yard(Bounds.NONE, places), staff, List.of());
        PlaceCharacter character = habitat.character();
        int bed = start(habitat, "bed");
        assertEquals(5, character.staffM(bed, 9 * HOUR), 1e-9);
        assertEquals(5, character.staffM(bed, 16 * HOUR), 1e-9);
        assertEquals(12, character.staffM(bed, 24 * HOUR), 1e-9);
        assertEquals(Double.POSITIVE_INFINITY, character.staffM(bed, 25 * HOUR));
        assertEquals(5, character.separationM(bed, start(habitat, "tray")), 1e-6);
        assertEquals(0, character.seenShare(bed, 12 * HOUR), "nobody looks in");
        assertSame(character, habitat.character());
    }

    @Test
    @Tag("derived")
    void withNothingToWatchThereIsNoLookOut() {
        Habitat habitat = habitat(yard(Bounds.NONE, BED), List.of(), List.of());
        assertEquals(0, habitat.character().lookOut(start(habitat, "bed")));
    }

    /** A yard looked at in a mirror: east and west change places, and every place stays what it is like. */
    @Test
    @Tag("derived")
    void aMirroredYardIsLikeTheYard() {
        Habitat one = mirrored(x -> x);
        Habitat other = mirrored(x -> 30 - x);
        for (String id : List.of("bed", "tray", "hatch", "den")) {
            int a = start(one, id);
            int b = start(other, id);
            assertEquals(one.character().cover(a), other.character().cover(b), 1e-9, id);
            assertEquals(one.character().edgeM(a), other.character().edgeM(b), 1e-9, id);
            assertEquals(one.character().lookOut(a), other.character().lookOut(b), 1e-9, id);
            assertEquals(one.character().seenShare(a, 0), other.character().seenShare(b, 0), 1e-9, id);
            assertEquals(one.character().staffM(a, 0), other.character().staffM(b, 0), 1e-9, id);
        }
        int bed = start(one, "bed");
        assertTrue(one.character().cover(bed) > 0.05, "the yard has something to mirror");
        assertTrue(one.character().seenShare(bed, 0) > 0 && one.character().seenShare(bed, 0) < 1);
    }

    private static Habitat mirrored(DoubleUnaryOperator x) {
        List<Resource> places = List.of(
                place("bed", ResourceKind.RETREAT, x.applyAsDouble(7.3), 9.1),
                place("tray", ResourceKind.FOOD, x.applyAsDouble(5.2), 13.4),
                place("hatch", ResourceKind.FOOD, x.applyAsDouble(24.6), 10.7),
                place("den", ResourceKind.NEST, x.applyAsDouble(19.9), 4.4));
        Outline footprint = new Outline(List.of(
                new Corner(x.applyAsDouble(13.1), 5.2),
                new Corner(x.applyAsDouble(14.2), 5.3),
                new Corner(x.applyAsDouble(13.9), 15.2)));
        Bounds bounds =
                new Bounds(List.of(new Barrier("wall", BarrierKind.WALL, footprint, 0, 3)), List.of(), List.of());
        Crown crown = new Crown("tree", "", new Point(x.applyAsDouble(8.1), 10.3, 0), 2.7, 2.1, 6.3);
        Enclosure enclosure = yard(List.of(), List.of(crown), List.of(), bounds, Shading.NONE, places);
        return habitat(
                enclosure,
                List.of(new Attendance("gate", new Point(x.applyAsDouble(1.2), 9.7, 1.5), ALWAYS)),
                List.of(
                        new Viewpoint("terrace", new Point(x.applyAsDouble(29.1), 9.8, 1.6), ALWAYS),
                        new Viewpoint("tunnel", new Point(x.applyAsDouble(7.1), 1.3, 1.6), ALWAYS)));
    }

    private static Panel panel(String id, PanelKind kind, Point... corners) {
        return new Panel(id, kind, new Facet(List.of(corners)), 0.05, 0.004, OptionalDouble.empty());
    }
}
