package limbway.reports;

import java.time.LocalDate;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;

import limbway.model.body.Body;
import limbway.model.body.BodyCatalogue;
import limbway.model.body.LocomotorMode;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Ground;
import limbway.model.enclosure.Material;
import limbway.model.enclosure.Resource;
import limbway.model.enclosure.ResourceKind;
import limbway.model.enclosure.Site;
import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportKind;
import limbway.model.energy.EnergyByPart;
import limbway.model.energy.EnergySettings;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.geometry.Polyline;
import limbway.model.route.ChoiceSharpness;
import limbway.model.route.Search;
import limbway.model.route.Way;
import limbway.model.study.Animal;
import limbway.model.study.Feeding;
import limbway.model.study.Variant;
import limbway.sim.experiment.Outcome;
import limbway.sim.experiment.RunSettings;
import limbway.sim.habitat.Habitat;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Motive;
import limbway.sim.journal.Reserve;
import limbway.sim.journal.Trip;

/** One pole of 2 m with food at its top, a nest at its foot and water on the ground 3 m away; two animals. */
public final class Pole {

    public static final int FOOD = 0;
    public static final int NEST = 1;
    public static final int WATER = 2;

    private Pole() {}

    public static Body female() {
        return BodyCatalogue.standard().find("adult female").orElseThrow();
    }

    public static Body juvenile() {
        return BodyCatalogue.standard().find("juvenile").orElseThrow();
    }

    public static Variant layout(String name) {
        Support pole = new Support(
                "pole",
                SupportKind.POLE,
                Polyline.straight(new Point(5, 5, 0), new Point(5, 5, 2)),
                0.08,
                Material.TIMBER);
        return new Variant(
                name,
                "",
                new Enclosure(
                        new Site(1, 110, ZoneOffset.UTC),
                        new Ground(Outline.rectangle(0, 0, 10, 10), "grass", List.of()),
                        List.of(pole),
                        List.of(),
                        List.of(),
                        List.of(
                                new Resource("food", ResourceKind.FOOD, new Point(5, 5, 2), "pole", 2),
                                new Resource("nest", ResourceKind.NEST, new Point(5, 5, 0), "pole", 2),
                                new Resource("water", ResourceKind.WATER, new Point(8, 5, 0), "", 2))),
                List.of(new Feeding("food", LocalTime.of(8, 0), 9000)));
    }

    public static Habitat habitat(Variant layout, List<Animal> animals) {
        return new Habitat(
                layout, animals, Optional.empty(), EnergySettings.standard(), ChoiceSharpness.GROUP.standard());
    }

    public static Habitat habitat() {
        return habitat(layout("as drawn"), List.of(new Animal("Ibu", female(), 1), new Animal("Anak", juvenile(), 2)));
    }

    public static Outcome outcome(Habitat habitat, int days, Journal... journals) {
        RunSettings settings = new RunSettings(1, journals.length, days, LocalDate.of(2026, 3, 21), 1, 0);
        return new Outcome(habitat, settings, List.of(journals), true);
    }

    public static Journal journal(int replication, Trip... trips) {
        return new Journal(
                replication,
                List.of(trips),
                List.of(),
                List.of(new Reserve(0, 0, 5000, 1000, 3000, 500, 500), new Reserve(1, 0, 5000, 1000, 3000, 500, 500)),
                List.of());
    }

    /** A trip whose way is nothing but figures: for shares nothing else counts. */
    public static Trip trip(int animal, int hour, double metres, double offGroundM, long joules, long offGroundJ) {
        long[] milliJ = new long[LocomotorMode.values().length];
        milliJ[0] = 1000 * joules;
        Way way = new Way(
                List.of(0),
                List.of(),
                EnergyByPart.of(milliJ),
                1000 * offGroundJ,
                metres,
                offGroundM,
                metres,
                offGroundM);
        Search.Reached ways = new Search.Reached(way, Optional.empty(), Optional.of(way), 0);
        return new Trip(1, animal, hour * 3_600_000L, FOOD, WATER, Motive.THIRST, ways, way);
    }
}
