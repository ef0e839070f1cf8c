package limbway.reports.measure;

import java.util.ArrayList;
import java.util.List;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Material;
import limbway.model.enclosure.Resource;
import limbway.model.enclosure.ResourceKind;
import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportKind;
import limbway.model.geometry.Point;
import limbway.model.geometry.Polyline;
import limbway.model.study.Animal;
import limbway.model.study.Variant;
import limbway.reports.Pole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

@Tag("derived")
class AuditTest {

    private static final List<Animal> ANIMALS =
            List.of(new Animal("Ibu", Pole.female(), 1), new Animal("Anak", Pole.juvenile(), 2));

    private static Audit audit(List<Support> more, List<Resource> resources) {
        Variant pole = Pole.layout("as drawn");
        List<Support> supports = new ArrayList<>(pole.enclosure().supports());
        supports.addAll(more);
        Enclosure old = pole.enclosure();
        Enclosure enclosure =
                new Enclosure(old.site(), old.ground(), supports, old.platforms(), old.crowns(), resources);
        return Audit.of(Pole.habitat(new Variant("as drawn", "", enclosure, pole.feedings()), ANIMALS));
    }

    private static List<String> texts(Audit audit, String kind) {
        return audit.findings().stream()
                .filter(finding -> finding.kind().equals(kind))
                .map(Finding::text)
                .toList();
    }

    private static List<Resource> resources() {
        return Pole.layout("as drawn").enclosure().resources();
    }

    @Test
    void waterOnTheGroundIsReachedOnlyOverTheGround() {
        Audit audit = audit(List.of(), resources());
        // the water lies 3 m from the axis of the pole, which is 0.08 m thick
        assertEquals(
                List.of(
                        "an adult female comes to water only over the ground, because water has nothing to hold within "
                                + "0.6 m: the nearest, pole, is 2.96 m away",
                        "a juvenile comes to water only over the ground, because water has nothing to hold within "
                                + "0.6 m: the nearest, pole, is 2.96 m away"),
                texts(audit, "ground-only"));
        assertEquals(
                "water, for every animal: only over the ground, because water has nothing to hold within 0.6 m: the "
                        + "nearest, pole, is 2.96 m away",
                audit.groups().get(0).text(2));
        assertFalse(audit.mustMend());
        assertEquals(100, audit.groundM2(), 1e-9);
        // the pole is 2 m high, and the female reaches higher than the juvenile
        assertEquals(100 * (2 + Pole.female().overheadReachM()), audit.grossM3(), 1e-9);
    }

    @Test
    void foodThatNobodyCanReachMustBeMended() {
        Resource aloft = new Resource("aloft", ResourceKind.FOOD, new Point(2, 2, 6), "", 2);
        Audit audit =
                audit(List.of(), List.of(resources().get(1), aloft, resources().get(2)));
        assertTrue(audit.mustMend());
        assertEquals(
                "aloft cannot be used by anyone: nothing to hold or stand on lies within reach of it",
                audit.findings().get(0).text());
        assertEquals(Weight.MEND, audit.findings().get(0).weight());
    }

    @Test
    void aThickPoleIsNamedForTheBodyThatCannotGripIt() {
        Support thick = new Support(
                "mast",
                SupportKind.POLE,
                Polyline.straight(new Point(7, 5, 0), new Point(7, 5, 4)),
                0.11,
                Material.GALVANISED_STEEL);
        Audit audit = audit(List.of(thick), resources());
        assertEquals(
                List.of(
                        "a juvenile can neither hold mast nor walk on it: mast is 11 cm thick where this body can grip up "
                                + "to 9.4 cm"),
                texts(audit, "too-thick"));
        assertEquals(
                List.of("mast, for juvenile: too thick to hold, 11 cm (grips up to 9.4 cm)"),
                audit.groups().stream()
                        .filter(group -> group.strictest().kind().equals("too-thick"))
                        .map(group -> group.text(2))
                        .toList());
    }

    @Test
    void aGapThatOnlySomeCrossIsNamedForTheOthers() {
        // both end there, 1.3 m from axis to axis: 1.22 m clear, within 1.5 m but beyond 1.1 m
        Support bar = new Support(
                "bar",
                SupportKind.BEAM,
                Polyline.straight(new Point(6.3, 5, 2), new Point(9, 5, 2)),
                0.08,
                Material.TIMBER);
        Audit audit = audit(List.of(bar), resources());
        assertEquals(
                List.of(
                        "pole and bar are 1.22 m apart: a juvenile reaches 1.1 m and must go another way, while others can "
                                + "cross (adult female)"),
                texts(audit, "gap-for-some"));
    }

    @Test
    void fewerNestsThanAnimalsAndNoWaterAreFound() {
        Resource oneNest = new Resource("nest", ResourceKind.NEST, new Point(5, 5, 0), "pole", 1);
        Audit audit = audit(List.of(), List.of(resources().get(0), oneNest));
        assertEquals(
                List.of("1 nest place for 2 animals to sleep: those of low rank wait or go without"),
                texts(audit, "too-few-places"));
        assertEquals(List.of("there is no water for 2 animals"), texts(audit, "none"));
        assertTrue(audit.mustMend());
    }

    @Test
    void aPlaceAtTheEndOfOneRopeHasASingleWay() {
        // two poles and one rope between their tops
        Support far = new Support(
                "far",
                SupportKind.POLE,
                Polyline.straight(new Point(9, 9, 0), new Point(9, 9, 2)),
                0.08,
                Material.GALVANISED_STEEL);
        Support line = new Support(
                "line",
                SupportKind.ROPE,
                Polyline.straight(new Point(5, 5, 2), new Point(9, 9, 2)),
                0.05,
                Material.FIBRE_ROPE);
        Resource tree = new Resource("tree-nest", ResourceKind.NEST, new Point(9, 9, 1.9), "far", 2);
        List<Resource> all = new ArrayList<>(resources());
        all.add(tree);
        Audit audit = audit(List.of(far, line), all);
        List<Finding> single = audit.findings().stream()
                .filter(finding -> finding.kind().equals("single-way"))
                .toList();
        assertEquals(
                List.of(
                        "off the ground, only one way leads any animal to food, nest and tree-nest, past line: one animal "
                                + "there can bar it"),
                single.stream().map(Finding::text).toList());
        assertEquals(1, single.get(0).figure().getAsDouble(), 0);
        assertEquals(Weight.CAUTION, single.get(0).weight());
        // the pole alone parts nothing
        assertEquals(List.of(), texts(audit(List.of(), resources()), "single-way"));
    }

    @Test
    void fewPlatformsAndFeedersAreNoted() {
        Audit audit = audit(List.of(), resources());
        assertEquals(
                List.of("0 platforms for 2 animals: common practice is one more than there are (no source)"),
                texts(audit, "few-platforms"));
        assertEquals(
                List.of("1 feeder for 2 animals: common practice is one for each (no source)"),
                texts(audit, "few-feeders"));
        assertFalse(audit.mustMend());
    }

    @Test
    void foodIsComparedWithWhatTheGroupSpends() {
        // (35/54.4)^0.304 = 0.8745 and (15/54.4)^0.304 = 0.6759, times 1600 kcal of 4184 J: 5854 and 4525 kJ
        assertEquals(
                List.of("food put out is 9 000 kJ a day, 87 % of the 10 379 kJ that the group spends"),
                texts(audit(List.of(), resources()), "food-total"));
    }
}
