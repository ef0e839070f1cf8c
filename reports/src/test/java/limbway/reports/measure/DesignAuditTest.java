package limbway.reports.measure;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

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
import limbway.model.enclosure.Resource;
import limbway.model.enclosure.ResourceKind;
import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportKind;
import limbway.model.geometry.Facet;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.geometry.Polyline;
import limbway.model.geometry.Segment;
import limbway.model.study.Animal;
import limbway.model.study.Variant;
import limbway.reports.Pole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** One fault at a time beside a pole of 2 m in the middle of 10 by 10 m: the finding that names it, worked by hand. */
@Tag("derived")
class DesignAuditTest {

    private static final List<Animal> ANIMALS =
            List.of(new Animal("Ibu", Pole.female(), 1), new Animal("Anak", Pole.juvenile(), 2));

    private static final Enclosure SOUND = Pole.layout("as drawn").enclosure();

    private static List<Finding> findings(Enclosure enclosure, String kind) {
        Variant layout =
                new Variant("as drawn", "", enclosure, Pole.layout("as drawn").feedings());
        return Audit.of(Pole.habitat(layout, ANIMALS)).findings().stream()
                .filter(finding -> finding.kind().equals(kind))
                .toList();
    }

    private static List<String> texts(Enclosure enclosure, String kind) {
        return findings(enclosure, kind).stream().map(Finding::text).toList();
    }

    private static Enclosure with(Support... more) {
        List<Support> all = new ArrayList<>(SOUND.supports());
        all.addAll(List.of(more));
        return SOUND.withSupports(all);
    }

    private static Support branch(Bearing bearing) {
        return new Support(
                "limb",
                SupportKind.BRANCH,
                Polyline.straight(new Point(5, 5, 1.8), new Point(8, 5, 1.8)),
                0.06,
                0.06,
                Material.BARK,
                bearing);
    }

    private static Bounds barrier(Barrier barrier) {
        return new Bounds(List.of(barrier), List.of(), List.of());
    }

    private static Panel mesh(double openingM) {
        return new Panel(
                "screen",
                PanelKind.MESH,
                new Facet(List.of(new Point(4, 7, 0), new Point(6, 7, 0), new Point(6, 7, 2), new Point(4, 7, 2))),
                openingM,
                0.004,
                OptionalDouble.empty());
    }

    @Test
    void aSoundPoleHasNoneOfTheseFindings() {
        for (String kind : List.of(
                "broken-by",
                "weight-limit",
                "bends-away",
                "mesh-too-fine",
                "mesh-too-wide",
                "lost-to-wire",
                "usable-beside-wire",
                "behind-wire",
                "no-step-for-smallest",
                "smallest-goes-round",
                "door-shut-at-feeding",
                "door-parts-nest-from-food",
                "barrier-in-reach",
                "barrier-in-sway",
                "barrier-in-leap")) {
            assertEquals(List.of(), texts(SOUND, kind), kind);
        }
        assertEquals(1, texts(SOUND, "wear").size());
    }

    /** 0.5 · 50 MPa · pi · 0.06³ / (32 · 3 m) = 176.7 N = 18 kg; 60 kg are borne up to 3 · 18.02 / 60 = 0.9 m. */
    @Test
    void aLivingBranchOfSixCentimetresIsBrokenByBothBodies() {
        assertEquals(
                List.of(
                        "limb may be broken by an adult female of up to 60 kg in captivity: it bears 18 kg, then it gives way "
                                + "by bending, 0 m along it; it bears such an animal up to 0.9 m from its first end (a "
                                + "warning, no structural calculation: licensed people decide)",
                        "limb may be broken by a juvenile of up to 25 kg in captivity: it bears 18 kg, then it gives way by "
                                + "bending, 0 m along it; it bears such an animal up to 2.16 m from its first end (a "
                                + "warning, no structural calculation: licensed people decide)"),
                texts(with(branch(Bearing.UNSTATED)), "broken-by"));
    }

    @Test
    void aStatedLoadBelowTheCaptiveMassIsNamedOnSupportsAndDecks() {
        Bearing stated = new Bearing(OptionalDouble.empty(), OptionalDouble.of(40), false);
        Enclosure branched = with(branch(stated));
        assertEquals(
                List.of("limb bears 40 kg as stated, and an adult female of up to 60 kg in captivity is heavier"),
                texts(branched, "weight-limit"));
        assertEquals(List.of(), texts(branched, "broken-by"));
        Platform sling =
                new Platform("sling", Outline.rectangle(4, 4, 6, 6), 1.5, PlatformKind.HAMMOCK, OptionalDouble.of(20));
        Enclosure slung = new Enclosure(
                SOUND.site(), SOUND.ground(), SOUND.supports(), List.of(sling), SOUND.crowns(), SOUND.resources());
        assertEquals(
                List.of(
                        "sling bears 20 kg as stated, and an adult female of up to 60 kg in captivity is heavier; the model "
                                + "keeps that body off it",
                        "sling bears 20 kg as stated, and a juvenile of up to 25 kg in captivity is heavier"),
                texts(slung, "weight-limit"));
    }

    /** Half of 35 kg on 100 N/m: 0.5 · 35 · 9.80665 / 100 = 1.72 m, beyond 1.5 m; of 15 kg 0.74 m, within 1.1 m. */
    @Test
    void aLimbThatBendsFartherThanTheBodyReachesIsNamed() {
        Bearing limp = new Bearing(OptionalDouble.of(100), OptionalDouble.of(200), false);
        assertEquals(
                List.of(
                        "limb bends 1.72 m under half the weight of an adult female, which reaches 1.5 m: it loses hold of "
                                + "where it comes from"),
                texts(with(branch(limp)), "bends-away"));
    }

    /** Fingers 0.2 · 12.5 cm = 2.5 cm and 0.2 · 9.4 cm = 1.88 cm; head 0.08 · 1.4 m = 11.2 cm, shoulders 28 cm. */
    @Test
    void openingsTooFineForFingersAndWideEnoughForAHeadAreNamed() {
        assertEquals(
                List.of("adult female"),
                findings(SOUND.withPanels(List.of(mesh(0.02))), "mesh-too-fine").stream()
                        .map(Finding::body)
                        .toList());
        assertEquals(List.of(), texts(SOUND.withPanels(List.of(mesh(0.05))), "mesh-too-fine"));
        assertEquals(List.of(), texts(SOUND.withPanels(List.of(mesh(0.05))), "mesh-too-wide"));
        assertEquals(
                List.of(
                        "a juvenile may get its head through, and be caught, the openings of screen, 12 cm wide, where its "
                                + "head is some 11.2 cm broad (assumption); infants are smaller yet"),
                texts(SOUND.withPanels(List.of(mesh(0.12))), "mesh-too-wide"));
    }

    /** A strand round the pole's top with 0.5 m of clearance leaves the lower 1.5 of 2 m. */
    @Test
    void theShareLostToLiveWireIsMeasured() {
        HotWire strand = new HotWire.Strand("wire", Polyline.straight(new Point(4, 5, 2), new Point(6, 5, 2)), 0.5);
        Enclosure live = SOUND.withBounds(new Bounds(List.of(), List.of(strand), List.of()));
        assertEquals(75, findings(live, "lost-to-wire").get(0).figure().getAsDouble(), 1e-9);
        assertEquals(
                List.of("of 2 m of supports that can be seen, 1.5 m (75 %) lie outside the clearance of live wire"),
                texts(live, "usable-beside-wire"));
        assertEquals(List.of("the food food lies within the clearance of live wire"), texts(live, "behind-wire"));
    }

    /** The pole's top is 2 m up; a mast of 4 m stands 1 m from the east edge, and its holds above 1.7 m count. */
    @Test
    void aMastNearTheOpenEdgeIsInReachOfIt() {
        Support mast = new Support(
                "mast",
                SupportKind.POLE,
                Polyline.straight(new Point(9, 5, 0), new Point(9, 5, 4)),
                0.08,
                Material.TIMBER);
        List<Finding> found = findings(with(mast), "barrier-in-reach");
        assertEquals(2, found.size());
        assertEquals(0.96, found.get(0).figure().getAsDouble(), 1e-9);
        assertTrue(found.get(0).text().contains("is no pass"), found.get(0).text());
    }

    /** A wall on the east edge, 3.5 m high, stands 1.9 m from the mast: beyond 1.5 m, but the mast swings 0.3 of 3.5 m. */
    @Test
    void aSwayedMastIsNearerToAWallThanAStillOne() {
        Barrier wall = new Barrier("wall", BarrierKind.WALL, Outline.rectangle(9.9, 0, 10, 10), 0, 3.5);
        Enclosure still = with(mast(false)).withBounds(barrier(wall));
        Enclosure swaying = with(mast(true)).withBounds(barrier(wall));
        assertEquals(List.of(), texts(still, "barrier-in-sway"));
        // the female is near enough by sway: 1.9 - 0.04 - 0.3 · 3.5 = 0.81 m at the height of the wall's top, less
        // above
        List<Finding> swayed = findings(swaying, "barrier-in-sway");
        assertEquals("adult female", swayed.get(0).body());
        assertTrue(swayed.get(0).figure().getAsDouble() <= 0.81 + 1e-9);
        assertEquals(List.of(), texts(swaying, "barrier-in-reach"));
    }

    private static Support mast(boolean sways) {
        return new Support(
                "mast",
                SupportKind.POLE,
                Polyline.straight(new Point(8, 5, 0), new Point(8, 5, 4)),
                0.08,
                0.08,
                Material.TIMBER,
                new Bearing(OptionalDouble.empty(), OptionalDouble.empty(), sways));
    }

    /** The female reaches 1.7 m up and does not leap; the juvenile reaches 1.2 m and leaps 3.2²/2g = 0.52 m higher. */
    @Test
    void aLowWallIsReachedFromTheGroundOrLeaped() {
        Enclosure low = SOUND.withBounds(
                barrier(new Barrier("wall", BarrierKind.WALL, Outline.rectangle(9.9, 0, 10, 10), 0, 1.6)));
        assertEquals("adult female", findings(low, "barrier-in-reach").get(0).body());
        assertEquals("juvenile", findings(low, "barrier-in-leap").get(0).body());
        Enclosure high = SOUND.withBounds(
                barrier(new Barrier("wall", BarrierKind.WALL, Outline.rectangle(9.9, 0, 10, 10), 0, 4)));
        assertEquals(List.of(), texts(high, "barrier-in-reach"));
        assertTrue(texts(high, "barrier-clearance").get(0).contains("no pass"));
    }

    /** Level leap of the juvenile 3.2²/g = 1.044 m; the female reaches 1.5 m. */
    @Test
    void aMoatIsMeasuredFromBankToBankAndAPondWithinIsNone() {
        for (double widthM : new double[] {1.0, 1.4, 3.0}) {
            Barrier moat = new Barrier("moat", BarrierKind.WATER, Outline.rectangle(10 - widthM, 0, 10, 10), -1, 0);
            Enclosure wet = SOUND.withBounds(barrier(moat));
            int named = findings(wet, "barrier-in-reach").size()
                    + findings(wet, "barrier-in-leap").size();
            assertEquals(widthM < 1.1 ? 2 : widthM < 1.5 ? 1 : 0, named, "width " + widthM);
        }
        Barrier pond = new Barrier("pond", BarrierKind.WATER, Outline.rectangle(6, 6, 7, 7), -1, 0);
        assertEquals(
                List.of(),
                findings(SOUND.withBounds(barrier(pond)), "barrier-clearance").stream()
                        .filter(finding -> finding.place().equals("pond"))
                        .toList());
    }

    /** The food at the pole's top is fed at 8; the wall with the door parts it from nothing else but the water. */
    @Test
    void aDoorShutWhenFoodIsPutOutBehindItIsNamed() {
        Barrier wall = new Barrier("wall", BarrierKind.WALL, Outline.rectangle(6.4, 0, 6.6, 10), 0, 3);
        Enclosure shut = SOUND.withBounds(new Bounds(List.of(wall), List.of(), List.of(door(LocalTime.of(10, 0)))));
        Enclosure open = SOUND.withBounds(new Bounds(List.of(wall), List.of(), List.of(door(LocalTime.of(7, 0)))));
        // half of the places are behind the door, no more: the nest is on the same side as the food
        assertEquals(List.of(), texts(shut, "door-shut-at-feeding"));
        Enclosure nestless = new Enclosure(
                shut.site(),
                shut.ground(),
                shut.supports(),
                List.of(),
                List.of(),
                List.of(),
                shut.bounds(),
                shut.shading(),
                List.of(shut.resources().get(0), shut.resources().get(2)));
        assertEquals(
                "food, for adult female, is fed at 08:00 while gate is shut, which cuts it off from 1 of 1 other places",
                texts(nestless, "door-shut-at-feeding").get(0));
        assertEquals(List.of(), texts(open, "door-shut-at-feeding"));
    }

    private static Door door(LocalTime from) {
        return new Door(
                "gate",
                "wall",
                new Segment(new Point(6.5, 4, 0), new Point(6.5, 5, 0)),
                1.5,
                List.of(new OpenHours(from, LocalTime.of(18, 0))));
    }

    /** Two posts 1.22 m apart at their tops, 6 m from the pole: the female bridges, the juvenile reaches 1.1 m. */
    @Test
    void aStepThatOnlyTheLargerTakeIsToldOnce() {
        Support bar = new Support(
                "bar",
                SupportKind.BEAM,
                Polyline.straight(new Point(6.3, 5, 2), new Point(8, 5, 2)),
                0.08,
                Material.TIMBER);
        List<Resource> resources = new ArrayList<>(SOUND.resources());
        resources.add(new Resource("seat", ResourceKind.RETREAT, new Point(8, 5, 2), "bar", 1));
        Enclosure far =
                new Enclosure(SOUND.site(), SOUND.ground(), with(bar).supports(), List.of(), List.of(), resources);
        int told = findings(far, "gap-for-some").size()
                + findings(far, "no-step-for-smallest").size();
        assertEquals(1, told);
    }
}
