package limbway.model.alteration;

import java.util.List;
import java.util.OptionalDouble;
import java.util.Set;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.enclosure.Bearing;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Material;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.Resource;
import limbway.model.enclosure.ResourceKind;
import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportKind;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.geometry.Polyline;
import limbway.model.scene.Scene;
import limbway.model.study.Variant;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

@Tag("derived")
class AlterationTest {

    private static final Support SWAYING = new Support(
            "whip",
            SupportKind.POLE,
            Polyline.straight(new Point(6, 2, 0), new Point(6, 2, 5)),
            0.05,
            0.04,
            Material.TIMBER,
            new Bearing(OptionalDouble.of(300), OptionalDouble.of(80), true));

    private static final Enclosure YARD = Scene.yard(12, 8)
            .pole("mast", 2, 2, 5)
            .add(SWAYING)
            .deck("deck", 1, 1, 3, 3, 2)
            .food("tray", 9, 4, 0)
            .resource("nest", ResourceKind.NEST, new Point(2, 2, 2), "deck")
            .build();

    private static Support rope(String id) {
        return new Support(
                id,
                SupportKind.ROPE,
                Polyline.straight(new Point(2, 2, 4), new Point(6, 2, 4)),
                0.05,
                Material.FIBRE_ROPE);
    }

    private static Support support(Enclosure enclosure, String id) {
        return enclosure.supports().stream()
                .filter(one -> one.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    private static String fault(Alteration alteration) {
        return assertThrows(IllegalArgumentException.class, () -> alteration.applyTo(YARD))
                .getMessage();
    }

    @Test
    void aPlaceIsMovedAndNothingElseOfItChanges() {
        Enclosure then = new Alteration.ResourceMoved("nest", new Point(2, 2, 4), "mast").applyTo(YARD);
        assertEquals(
                List.of(
                        YARD.resources().get(0),
                        new Resource("nest", ResourceKind.NEST, new Point(2, 2, 4), "mast", 1, 0)),
                then.resources());
        assertEquals(YARD, then.withResources(YARD.resources()));
    }

    @Test
    void aPlaceIsAddedAtTheEnd() {
        Resource cup = new Resource("cup", ResourceKind.WATER, new Point(3, 3, 0), "", 2);
        Enclosure then = new Alteration.ResourceAdded(cup).applyTo(YARD);
        assertEquals(
                List.of("tray", "nest", "cup"),
                then.resources().stream().map(Resource::id).toList());
        assertEquals(cup, then.resources().get(2));
    }

    @Test
    void aRopeSteadiesWhatItIsTiedToAndNothingElse() {
        Enclosure then = new Alteration.SupportAdded(rope("line"), Set.of("whip", "mast")).applyTo(YARD);
        assertEquals(
                List.of("mast", "whip", "line"),
                then.supports().stream().map(Support::id).toList());
        Support steadied = support(then, "whip");
        assertEquals(false, steadied.bearing().sways());
        assertEquals(OptionalDouble.of(300), steadied.bearing().stiffnessNPerM());
        assertEquals(OptionalDouble.of(80), steadied.bearing().bearsKg());
        assertEquals(SWAYING.axis(), steadied.axis());
        assertEquals(0.04, steadied.tipDiameterM());
        Enclosure elsewhere = new Alteration.SupportAdded(rope("line"), Set.of("mast")).applyTo(YARD);
        assertEquals(SWAYING, support(elsewhere, "whip"));
    }

    @Test
    void aSupportIsReplacedInItsPlaceOfTheList() {
        Support thick = new Support("mast", SupportKind.POLE, SWAYING.axis(), 0.2, Material.TIMBER);
        Enclosure then = new Alteration.SupportReplaced(thick).applyTo(YARD);
        assertEquals(List.of(thick, SWAYING), then.supports());
    }

    @Test
    void whatATakenSupportCarriedStays() {
        Enclosure then = new Alteration.SupportTaken("mast").applyTo(YARD);
        assertEquals(List.of(SWAYING), then.supports());
        assertEquals(YARD.platforms(), then.platforms());
        assertEquals(YARD.resources(), then.resources());
    }

    @Test
    void aDeckIsAdded() {
        Platform shelf = new Platform("shelf", Outline.rectangle(5, 1, 7, 3), 3);
        assertEquals(
                List.of(YARD.platforms().get(0), shelf),
                new Alteration.PlatformAdded(shelf).applyTo(YARD).platforms());
    }

    @Test
    void anUnknownNameIsNamed() {
        assertEquals(
                "alteration: nothing is called \"trai\"",
                fault(new Alteration.ResourceMoved("trai", new Point(1, 1, 0), "")));
        assertEquals("alteration: nothing is called \"line\"", fault(new Alteration.SupportReplaced(rope("line"))));
        assertEquals("alteration: nothing is called \"line\"", fault(new Alteration.SupportTaken("line")));
    }

    @Test
    void aNameInUseIsNamed() {
        assertEquals(
                "alteration: \"tray\" is in use already",
                fault(new Alteration.ResourceAdded(YARD.resources().get(0))));
        assertEquals(
                "alteration: \"mast\" is in use already", fault(new Alteration.SupportAdded(rope("mast"), Set.of())));
        assertEquals(
                "alteration: \"deck\" is in use already",
                fault(new Alteration.PlatformAdded(YARD.platforms().get(0))));
    }

    @Test
    void aVariantKnowsWhatIsNewInItAndKeepsTheRest() {
        Variant base = new Variant("as drawn", "a note", YARD, List.of());
        Variant then = Alteration.variant(
                base,
                "linked",
                List.of(
                        new Alteration.SupportAdded(rope("line"), Set.of("mast")),
                        new Alteration.ResourceMoved("tray", new Point(2, 2, 4), "mast"),
                        new Alteration.SupportAdded(rope("gone"), Set.of()),
                        new Alteration.SupportTaken("gone")));
        assertEquals("linked", then.name());
        assertEquals("a note", then.note());
        assertEquals(base.keeping(), then.keeping());
        assertEquals(Set.of("line", "tray"), then.added());
        assertTrue(then.enclosure().supports().stream().anyMatch(one -> one.id().equals("line")));
        // what was new before is still new
        Variant more = Alteration.variant(
                then, "more", List.of(new Alteration.ResourceMoved("nest", new Point(2, 2, 4), "mast")));
        assertEquals(Set.of("line", "tray", "nest"), more.added());
    }
}
