package limbway.reports.measure;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

import org.junit.jupiter.api.Test;

import limbway.model.body.LocomotorMode;
import limbway.model.enclosure.Bearing;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Material;
import limbway.model.enclosure.Resource;
import limbway.model.enclosure.ResourceKind;
import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportKind;
import limbway.model.geometry.Point;
import limbway.model.geometry.Polyline;
import limbway.model.route.Search;
import limbway.model.route.Way;
import limbway.model.study.Animal;
import limbway.model.study.Variant;
import limbway.reports.Pole;
import limbway.sim.habitat.Habitat;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Motive;
import limbway.sim.journal.Trip;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

class WhereaboutsTest {

    private static Support pole(String id, double x, boolean sways) {
        return new Support(
                id,
                SupportKind.POLE,
                Polyline.straight(new Point(x, 5, 0), new Point(x, 5, 6)),
                0.08,
                0.08,
                Material.TIMBER,
                new Bearing(OptionalDouble.of(150), OptionalDouble.empty(), sways));
    }

    /** A sway takes the swings that it needs, not its length by a speed; the parts must still last as long as the trip. */
    @Test
    void theStretchesOfATripLastAsLongAsTheTripAlsoWhereAPoleIsSwayed() {
        Enclosure plain = Pole.layout("x").enclosure();
        Enclosure two = new Enclosure(
                plain.site(),
                plain.ground(),
                List.of(pole("near", 3, true), pole("far", 6.08, false)),
                List.of(),
                List.of(),
                List.of(
                        new Resource("nest", ResourceKind.NEST, new Point(3, 5, 6), "near", 1),
                        new Resource("food", ResourceKind.FOOD, new Point(6.08, 5, 6), "far", 1)));
        Habitat habitat = Pole.habitat(
                new Variant("two poles", "", two, List.of()), List.of(new Animal("Ibu", Pole.female(), 1)));
        Search.Reached ways = (Search.Reached)
                habitat.routes(Pole.female()).find(habitat.graph().useHolds(0)[0], 1);
        Way way = ways.offGround().orElseThrow();
        assertTrue(way.energy().part(LocomotorMode.SWAY) > 0);
        Trip trip = new Trip(1, 0, 0, 0, 1, Motive.HUNGER, ways, way);
        List<Double> seconds = new ArrayList<>();
        Whereabouts.visit(
                habitat,
                new Journal(1, List.of(trip), List.of(), List.of(), List.of()),
                (lasting, from, to) -> seconds.add(lasting));
        double together = seconds.stream().mapToDouble(Double::doubleValue).sum();
        // the same numbers added in the same order
        assertEquals(way.seconds(), together, 1e-9);
    }
}
