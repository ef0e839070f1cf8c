package limbway.scenarios;

import java.time.LocalTime;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import org.junit.jupiter.api.Test;

import limbway.model.enclosure.OpenHours;
import limbway.model.enclosure.Resource;
import limbway.model.geometry.Point;
import limbway.model.parameter.Parameter;
import limbway.model.study.Animal;
import limbway.model.study.Attendance;
import limbway.model.study.BeddingRound;
import limbway.model.study.Closure;
import limbway.model.study.Feeding;
import limbway.model.study.FeedingMethod;
import limbway.model.study.Keeping;
import limbway.model.study.Study;
import limbway.model.study.Variant;
import limbway.model.study.Viewpoint;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** What people do in and around a layout is read as it is written. */
class KeepingTest {

    private static final Reading.Read READ = Examples.read("visitors-yard.yaml");

    private static Study study() {
        return READ.study();
    }

    private static OpenHours hours(String from, String to) {
        return new OpenHours(LocalTime.parse(from), LocalTime.parse(to));
    }

    @Test
    void feedingsSayHowFoodIsGiven() {
        List<Feeding> feedings = study().base().keeping().feedings();
        assertEquals(
                List.of(
                        new Feeding("hatch", LocalTime.of(8, 30), 7000),
                        new Feeding("rack", LocalTime.of(10, 0), 3000, FeedingMethod.BROWSE, 0),
                        new Feeding("board", LocalTime.of(11, 0), 1200, FeedingMethod.PUZZLE, 3),
                        new Feeding("hatch", LocalTime.of(12, 0), 2000, FeedingMethod.SCATTERED, 0)),
                feedings.subList(0, 4));
    }

    @Test
    void aPuzzleWithoutItsWorkTakesTheUsualOneAndSaysSo() {
        Reading.Read read = Examples.sound(SmallYard.with("energy-kj: 2400", "energy-kj: 2400, given: puzzle"));
        Feeding feeding = read.study().base().feedings().get(0);
        assertEquals(2, feeding.handlingMin());
        assertEquals(
                List.of("keepers.handling"),
                read.parameters().stream().map(Parameter::name).toList());
        assertTrue(READ.parameters().stream().noneMatch(p -> p.name().equals("keepers.handling")));
    }

    @Test
    void beddingCleaningClosingStaffAndVisitorsAreRead() {
        Keeping keeping = study().base().keeping();
        assertEquals(
                List.of(
                        new BeddingRound("nest-1", LocalTime.of(15, 30), 1),
                        new BeddingRound("nest-3", LocalTime.of(15, 30), 0.6)),
                keeping.bedding());
        assertEquals(
                List.of(
                        new Closure("nest-1", hours("09:00", "09:30"), true),
                        new Closure("nest-3", hours("09:30", "10:00"), true),
                        new Closure("porch", hours("11:30", "13:00"), false)),
                keeping.closures());
        assertEquals(
                List.of(new Attendance("keepers-door", new Point(0, 8, 0), hours("07:30", "16:30"))), keeping.staff());
        assertEquals(
                List.of(
                        new Viewpoint("gallery", new Point(12, -2, 1.6), hours("10:00", "17:00")),
                        new Viewpoint("window", new Point(25, 8, 1.4), hours("09:00", "18:00"))),
                keeping.viewpoints());
    }

    @Test
    void staffOnASlopeStandOnIt() {
        String sloping = SmallYard.TEXT
                .replace(
                        "obstacles:",
                        "heights: {points: [[0, 0, 0], [30, 0, 3], [30, 20, 3], [0, 20, 0]]}\n  obstacles:")
                .replace("at: [28, 10, 0]", "at: [28, 10]")
                .replace("keepers:\n", "keepers:\n  - {staff: door, at: [20, 1], from: \"08:00\", to: \"24:00\"}\n");
        Attendance staff = Examples.sound(SmallYard.read(sloping))
                .study()
                .base()
                .keeping()
                .staff()
                .get(0);
        assertEquals(2, staff.at().zM(), 1e-9); // 3 m on 30 m, of which 20 m
        assertEquals(hours("08:00", "00:00"), staff.hours());
    }

    @Test
    void theWholeDayIsFromMidnightToMidnight() {
        Reading reading = SmallYard.with(
                "keepers:\n", "keepers:\n  - {staff: door, at: [2, 1], from: \"00:00\", to: \"24:00\"}\n");
        assertEquals(
                hours("00:00", "00:00"),
                Examples.sound(reading).study().base().keeping().staff().get(0).hours());
    }

    @Test
    void beddingIsAShareOrPerCent() {
        List<Resource> resources = study().base().enclosure().resources();
        assertEquals(
                List.of(0.0, 0.0, 0.0, 0.0, 0.2, 0.3, 0.0, 0.0, 0.5),
                resources.stream().map(Resource::bedding).toList());
    }

    @Test
    void aVariantChangesWhatKeepersDoAndLeavesTheVisitors() {
        Variant quiet = study().find("quiet side").orElseThrow();
        assertEquals(
                List.of(
                        new BeddingRound("nest-4", LocalTime.of(15, 0), 1),
                        new BeddingRound("nest-3", LocalTime.of(15, 30), 0.6)),
                quiet.keeping().bedding());
        assertEquals(
                List.of("nest-3", "porch"),
                quiet.keeping().closures().stream().map(Closure::resource).toList());
        assertEquals(hours("07:30", "10:00"), quiet.keeping().staff().get(0).hours());
        assertEquals(1, quiet.keeping().staff().size());
        assertEquals(study().base().keeping().viewpoints(), quiet.keeping().viewpoints());
        assertEquals(study().base().feedings(), quiet.feedings());
        assertEquals(Set.of("nest-4", "porch"), quiet.added());
    }

    @Test
    void animalsSayWhomTheyFollowAndWhereTheyBelong() {
        List<Animal> animals = study().animals();
        assertEquals(
                List.of(Optional.empty(), Optional.of("Senja"), Optional.empty(), Optional.of("Rimba")),
                animals.stream().map(Animal::follows).toList());
        assertEquals(
                List.of("gallery", "gallery", "forest", "forest"),
                animals.stream().map(Animal::group).toList());
        assertEquals(List.of(1, 4, 2, 3), animals.stream().map(Animal::rank).toList());
    }

    @Test
    void severalAnimalsOfOneEntryFollowTheSame() {
        Reading.Read read = Examples.sound(SmallYard.with(
                "  - {name: A, body: adult female}\n",
                "  - {name: A, body: adult female}\n  - {name: young, body: juvenile, count: 2, follows: A}\n"));
        assertEquals(
                List.of(Optional.empty(), Optional.of("A"), Optional.of("A")),
                read.study().animals().stream().map(Animal::follows).toList());
    }
}
