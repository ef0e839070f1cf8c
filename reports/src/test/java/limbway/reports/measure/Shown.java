package limbway.reports.measure;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;

import limbway.model.enclosure.Barrier;
import limbway.model.enclosure.BarrierKind;
import limbway.model.enclosure.Bounds;
import limbway.model.enclosure.Cover;
import limbway.model.enclosure.CoverKind;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.OpenHours;
import limbway.model.enclosure.Resource;
import limbway.model.enclosure.ResourceKind;
import limbway.model.enclosure.Shading;
import limbway.model.geometry.Facet;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.study.Animal;
import limbway.model.study.Closure;
import limbway.model.study.Keeping;
import limbway.model.study.Variant;
import limbway.model.study.Viewpoint;
import limbway.reports.Pole;
import limbway.sim.habitat.Habitat;

/** The pole of {@link Pole} with a retreat behind a wall in the west, and visitors in the east and in the north-west. */
final class Shown {

    static final int DEN = 3;

    static final Viewpoint TERRACE = new Viewpoint("terrace", new Point(9.5, 5, 1.6), hours("10:00", "14:00"));

    /** It looks past the northern end of the wall on both sides of it. */
    static final Viewpoint WINDOW = new Viewpoint("window", new Point(2, 9, 1.6), hours("12:00", "16:00"));

    private final List<Cover> roofs = new ArrayList<>();

    static OpenHours hours(String from, String to) {
        return new OpenHours(LocalTime.parse(from), LocalTime.parse(to));
    }

    /** A roof of three metres by three over a place, two metres up. */
    Shown roof(String id, double x, double y) {
        roofs.add(new Cover(
                id,
                CoverKind.ROOF,
                new Facet(List.of(
                        new Point(x - 1.5, y - 1.5, 2),
                        new Point(x + 1.5, y - 1.5, 2),
                        new Point(x + 1.5, y + 1.5, 2),
                        new Point(x - 1.5, y + 1.5, 2))),
                0));
        return this;
    }

    Habitat habitat(List<Viewpoint> viewpoints, List<Closure> closures) {
        Variant pole = Pole.layout("as drawn");
        List<Resource> resources = new ArrayList<>(pole.enclosure().resources());
        resources.add(new Resource("den", ResourceKind.RETREAT, new Point(2, 5, 0), "", 1));
        Enclosure old = pole.enclosure();
        Enclosure plain =
                new Enclosure(old.site(), old.ground(), old.supports(), old.platforms(), old.crowns(), resources);
        Barrier wall = new Barrier("wall", BarrierKind.WALL, Outline.rectangle(3, 3, 3.2, 7), 0, 3);
        Enclosure walled = plain.withBounds(new Bounds(List.of(wall), List.of(), List.of()))
                .withShading(new Shading(roofs, List.of(), List.of()));
        Keeping keeping = new Keeping(pole.feedings(), List.of(), closures, List.of(), viewpoints);
        return Pole.habitat(
                new Variant("shown", "", walled, keeping, Set.of()),
                List.of(new Animal("Ibu", Pole.female(), 1), new Animal("Anak", Pole.juvenile(), 2)));
    }
}
