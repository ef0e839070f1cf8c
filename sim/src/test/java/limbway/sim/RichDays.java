package limbway.sim;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import limbway.model.enclosure.OpenHours;
import limbway.model.energy.EnergySettings;
import limbway.model.geometry.Point;
import limbway.model.route.ChoiceSharpness;
import limbway.model.study.Animal;
import limbway.model.study.Attendance;
import limbway.model.study.BeddingRound;
import limbway.model.study.Closure;
import limbway.model.study.Feeding;
import limbway.model.study.Keeping;
import limbway.model.study.Variant;
import limbway.model.study.Viewpoint;
import limbway.sim.habitat.Habitat;

/** Days in which everything happens that can: bedding, cleaning, staff, visitors, followers, two groups. */
public final class RichDays {

    private RichDays() {}

    /** The same layout and feedings with a keepers' day and with followers; the fourth animal is of another group. */
    public static Habitat of(Habitat bare) {
        String first = bare.layout().enclosure().resources().get(0).id();
        String last = bare.layout()
                .enclosure()
                .resources()
                .get(bare.layout().enclosure().resources().size() - 1)
                .id();
        return with(
                bare,
                new Keeping(
                        bare.layout().feedings(),
                        List.of(new BeddingRound(first, LocalTime.of(14, 30), 1)),
                        List.of(closure(first, "09:10", "10:40"), closure(last, "13:00", "13:45")),
                        List.of(staff("keeper", 15, "07:30", "08:30")),
                        List.of(visitors("window", 2, "10:00", "15:00"))));
    }

    /** The same layout with a given keepers' day, and with followers. */
    public static Habitat with(Habitat bare, Keeping keeping) {
        List<Animal> animals = new ArrayList<>(bare.animals());
        int young = animals.size() - 1;
        animals.set(young, like(animals.get(young), Optional.of(animals.get(1).name()), ""));
        if (young > 3) {
            animals.set(3, like(animals.get(3), Optional.empty(), "neighbours"));
        }
        return new Habitat(
                new Variant("rich", "", bare.layout().enclosure(), keeping, Set.of("deck-2", "rope-1")),
                animals,
                Optional.empty(),
                EnergySettings.standard(),
                ChoiceSharpness.GROUP.standard());
    }

    private static Animal like(Animal animal, Optional<String> leader, String group) {
        return new Animal(animal.name(), animal.body(), animal.rank(), leader, group);
    }

    /** The feedings of a layout and one more. */
    public static List<Feeding> oneMore(List<Feeding> feedings, Feeding more) {
        List<Feeding> all = new ArrayList<>(feedings);
        all.add(more);
        return all;
    }

    /** A place is shut and cleaned. */
    public static Closure closure(String resource, String from, String to) {
        return new Closure(resource, hours(from, to), true);
    }

    /** Staff in the north of the yard. */
    public static Attendance staff(String id, double eastM, String from, String to) {
        return new Attendance(id, new Point(eastM, 19, 1), hours(from, to));
    }

    /** Visitors in the south of the yard. */
    public static Viewpoint visitors(String id, double eastM, String from, String to) {
        return new Viewpoint(id, new Point(eastM, 0.5, 1.6), hours(from, to));
    }

    private static OpenHours hours(String from, String to) {
        return new OpenHours(LocalTime.parse(from), LocalTime.parse(to));
    }
}
