package limbway.reports.measure.criterion;

import java.time.Instant;
import java.time.LocalTime;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.body.Body;
import limbway.model.enclosure.Barrier;
import limbway.model.enclosure.BarrierKind;
import limbway.model.enclosure.Bounds;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.OpenHours;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.Site;
import limbway.model.energy.EnergySettings;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.light.Irradiance;
import limbway.model.route.ChoiceSharpness;
import limbway.model.route.Search;
import limbway.model.route.Way;
import limbway.model.shade.ShadeAudit;
import limbway.model.shade.ShadeCalendar;
import limbway.model.shade.ShadeRule;
import limbway.model.shade.ShadeSettings;
import limbway.model.study.Animal;
import limbway.model.study.Climate;
import limbway.model.study.Keeping;
import limbway.model.study.Variant;
import limbway.model.study.Viewpoint;
import limbway.model.weather.Conditions;
import limbway.model.weather.Weather;
import limbway.reports.Pole;
import limbway.sim.experiment.Outcome;
import limbway.sim.habitat.Habitat;
import limbway.sim.journal.Displacement;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Motive;
import limbway.sim.journal.Reserve;
import limbway.sim.journal.Stay;
import limbway.sim.journal.Trip;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Every criterion from a journal small enough to add up by hand. */
@Tag("derived")
class CriteriaTest {

    private static final long MIN_MS = 60_000;

    private final Criteria criteria = new Criteria();
    private final Habitat habitat = Pole.habitat();

    private OptionalDouble value(String name, Outcome one) {
        return criteria.find(name).orElseThrow().of(one);
    }

    private static Stay stay(Habitat where, int animal, int fromMin, int toMin, int resource, boolean waiting) {
        int hold = where.graph().useHolds(resource)[0];
        return new Stay(1, animal, fromMin * MIN_MS, toMin * MIN_MS, resource, hold, Motive.HUNGER, waiting, 0, 0);
    }

    private Journal journal(List<Trip> trips, List<Stay> stays, List<Displacement> displacements) {
        return new Journal(
                1,
                trips,
                stays,
                List.of(
                        new Reserve(0, 0, 9_000_000, 1_000_000, 3_000_000, 500_000, 0),
                        new Reserve(1, 0, 2_000_000, 2_000_000, 3_000_000, 500_000, 0)),
                List.of(),
                displacements);
    }

    private Outcome outcome(int days, List<Trip> trips, List<Stay> stays) {
        return Pole.outcome(habitat, days, journal(trips, stays, List.of()));
    }

    /** The way from the water up the pole to the food. */
    private Trip climb() {
        Search.Reached ways = (Search.Reached)
                habitat.routes(Pole.female()).find(habitat.graph().useHolds(Pole.WATER)[0], Pole.FOOD);
        return new Trip(1, 0, 0, Pole.WATER, Pole.FOOD, Motive.HUNGER, ways, ways.cheapest());
    }

    @Test
    void namesAreUniqueAndEveryCriterionIsTold() {
        HashSet<String> names = new HashSet<>();
        for (DesignCriterion criterion : criteria.all()) {
            assertTrue(names.add(criterion.name()));
            assertTrue(criterion.name().matches("[a-z]+(_[a-z]+)*"), criterion.name());
            assertTrue(!criterion.words().isEmpty() && !criterion.unit().isEmpty());
            assertTrue(!criterion.isShare() || criterion.unit().equals("1"));
        }
        assertEquals(Optional.empty(), criteria.find("height"));
        assertEquals(Criteria.OFF_GROUND, criteria.all().get(0).name());
    }

    @Test
    void sharesOfTravel() {
        Outcome one =
                outcome(1, List.of(Pole.trip(0, 8, 30, 10, 100, 20), Pole.trip(1, 9, 10, 10, 100, 80)), List.of());
        assertEquals(20.0 / 40, value("offground_distance", one).orElseThrow(), 1e-12);
        // seconds of such a trip are its metres
        assertEquals(20.0 / 40, value("offground_time", one).orElseThrow(), 1e-12);
        assertEquals(100.0 / 200, value("offground_energy", one).orElseThrow(), 1e-12);
        // 20 m of two animals
        assertEquals(10, value("offground_m", one).orElseThrow(), 1e-12);
        assertTrue(value("offground_distance", outcome(1, List.of(), List.of())).isEmpty());
        assertEquals(0, value("offground_m", outcome(1, List.of(), List.of())).orElseThrow());
    }

    /** The pole is two metres high; two animals and two days share the climb. */
    @Test
    void heightClimbed() {
        Way up = climb().way();
        assertEquals(2, up.offGroundM(), 0.01);
        assertEquals(
                up.offGroundM() / 4,
                value("climbed_m", outcome(2, List.of(climb()), List.of())).orElseThrow(),
                1e-9);
    }

    /** One hour at the top of the pole, three on the ground. */
    @Test
    void timeElevated() {
        Outcome one = outcome(
                1,
                List.of(),
                List.of(stay(habitat, 0, 0, 60, Pole.FOOD, false), stay(habitat, 0, 60, 240, Pole.WATER, false)));
        assertEquals(0.25, value("time_elevated", one).orElseThrow(), 1e-12);
        assertTrue(criteria.find("time_elevated").orElseThrow().words().contains("1 m"));
    }

    @Test
    void energyOfTheMeanAndOfTheWorstAnimal() {
        Outcome one = outcome(2, List.of(), List.of());
        // 4,500 and −3,500 kJ in two days
        assertEquals(250, value("energy_balance_kj", one).orElseThrow(), 1e-9);
        assertEquals(-1750, value("energy_balance_worst_kj", one).orElseThrow(), 1e-9);
        // 3,000 kJ of two animals in two days
        assertEquals(750, value("travel_kj", one).orElseThrow(), 1e-9);
    }

    @Test
    void waitingAndDisplacementsCountAtFoodOnly() {
        Displacement food = new Displacement(1, 0, Pole.FOOD, 0, 1, Motive.HUNGER);
        Displacement water = new Displacement(1, 0, Pole.WATER, 0, 1, Motive.THIRST);
        Outcome one = Pole.outcome(
                habitat,
                2,
                journal(
                        List.of(),
                        List.of(
                                stay(habitat, 0, 0, 12, Pole.FOOD, true),
                                stay(habitat, 1, 0, 100, Pole.FOOD, false),
                                stay(habitat, 1, 100, 130, Pole.WATER, true)),
                        List.of(food, water, food, food)));
        assertEquals(3, value("waiting_at_food_min", one).orElseThrow(), 1e-12);
        assertEquals(1.5, value("displacements_at_food", one).orElseThrow(), 1e-12);
    }

    /**
     * One animal that sits on the ground sees all its expectation in that zone unmet elsewhere: with g the ground's share of
     * the room, both differences are 1 − g, so that the index is (1 − g) / (1 − least).
     */
    @Test
    void spreadAndElectivityOfTheGroundAlone() {
        Habitat alone = Pole.habitat(Pole.layout("x"), List.of(new Animal("Ibu", Pole.female(), 1)));
        LayoutFacts facts = new LayoutFacts();
        double[] room = facts.zonesM3(alone, Pole.female());
        double whole = ZoneChecks.sum(room);
        double least = Double.POSITIVE_INFINITY;
        for (double zone : room) {
            least = zone > 0 ? Math.min(least, zone) : least;
        }
        Outcome ground = Pole.outcome(
                alone, 1, journal(List.of(), List.of(stay(alone, 0, 0, 60, Pole.WATER, false)), List.of()));
        Outcome aloft =
                Pole.outcome(alone, 1, journal(List.of(), List.of(stay(alone, 0, 0, 60, Pole.FOOD, false)), List.of()));
        assertTrue(room[0] > 0.5 * whole);
        assertEquals(
                (whole - room[0]) / (whole - least),
                value("spread_index", ground).orElseThrow(),
                1e-12);
        assertEquals(-1, value("electivity_off_ground", ground).orElseThrow(), 1e-12);
        assertEquals(1.0 / 3, value("electivity_off_ground", aloft).orElseThrow(), 1e-12);
        assertTrue(value("spread_index", aloft).orElseThrow()
                > value("spread_index", ground).orElseThrow());
    }

    /** Sleep says nothing of preference. */
    @Test
    void nightsAreLeftOutOfTheIndices() {
        Stay night = new Stay(
                1, 0, 0, 600 * MIN_MS, Pole.NEST, habitat.graph().useHolds(Pole.NEST)[0], Motive.NIGHT, false, 0, 0);
        assertTrue(value("spread_index", outcome(1, List.of(), List.of(night))).isEmpty());
        assertTrue(value("electivity_off_ground", outcome(1, List.of(), List.of(night)))
                .isEmpty());
    }

    /**
     * A rectangle of 10 m by 10 m is within reach r up to height r. Who only sits on the water's place in the open, 2 m from
     * the edge, uses a part of a ball: above the ground half a ball with radius r if r is below 2 m.
     */
    @Test
    void roomUsedIsThatAroundWhereTheyWere() {
        Habitat alone = Pole.habitat(Pole.layout("x"), List.of(new Animal("Ibu", Pole.female(), 1)));
        double reachM = Pole.female().gapReachM();
        assertTrue(reachM < 2);
        double usable = new LayoutFacts().room(alone, Pole.female()).m3();
        Outcome sitting = Pole.outcome(
                alone, 1, journal(List.of(), List.of(stay(alone, 0, 0, 60, Pole.WATER, false)), List.of()));
        double half = 2.0 / 3 * Math.PI * reachM * reachM * reachM;
        // the half ball is sampled by few of the columns: 2 %, a tenth of what a trip up the pole adds
        assertEquals(half / usable, value("usable_volume_used", sitting).orElseThrow(), 0.02 * half / usable);
        Outcome climbing = Pole.outcome(
                alone, 1, journal(List.of(climb()), List.of(stay(alone, 0, 0, 60, Pole.WATER, false)), List.of()));
        assertTrue(value("usable_volume_used", climbing).orElseThrow() > 1.2 * half / usable);
        assertTrue(value("usable_volume_used", climbing).orElseThrow() < 1);
    }

    @Test
    void whereNothingIsKnownOfWeatherAndVisitorsThereIsNoValue() {
        Outcome one = outcome(1, List.of(), List.of(stay(habitat, 0, 0, 60, Pole.FOOD, false)));
        assertTrue(value("hours_in_heat", one).isEmpty());
        assertTrue(value("visible_share", one).isEmpty());
    }

    private static Enclosure with(Enclosure old, List<Platform> platforms) {
        return new Enclosure(old.site(), old.ground(), old.supports(), platforms, old.crowns(), old.resources());
    }

    /** Without platforms the rule is broken whenever the sun stands above 5°: at the equator on an equinox, 12 h less 40 min. */
    @Test
    void shadeInBreachOnTheDaysOfTheRun() {
        Outcome one = outcome(1, List.of(), List.of());
        // 11 h 20 min, known to a step of a quarter of an hour at either end
        assertEquals(680, value("shade_breach_min", one).orElseThrow(), 15);
    }

    @Test
    void aDayIsTheSameAsInTheWholeYear() {
        Enclosure yard = Pole.layout("x").enclosure();
        Enclosure decks = with(
                yard,
                List.of(
                        new Platform("low", Outline.rectangle(3, 3, 5, 5), 1),
                        new Platform("mid", Outline.rectangle(3, 3, 6, 6), 2.5),
                        new Platform("high", Outline.rectangle(2, 2, 7, 7), 4)));
        ShadeCalendar calendar = ShadeCalendar.of(decks.site(), 2026, 60);
        var year = ShadeAudit.of(
                        decks,
                        ShadeSettings.standard(),
                        ShadeRule.standard(),
                        calendar,
                        List.of("low", "mid", "high"),
                        1,
                        (done, all) -> true)
                .orElseThrow();
        List<Integer> days = new ArrayList<>();
        for (int day = 0; day < 365; day += 40) {
            int alone = ShadeAudit.breachMinutes(decks, ShadeRule.standard(), calendar, day);
            assertEquals(year.breachMinutes(day), alone);
            days.add(alone);
        }
        assertTrue(days.stream().anyMatch(minutes -> minutes > 0));
    }

    /** Air of 45 °C from 12 to 14 o'clock, of 20 °C else; no wind, no sun. */
    private static final Weather HOT_NOON = new Weather() {
        @Override
        public Conditions at(Site site, Instant moment) {
            int hour = moment.atZone(ZoneOffset.UTC).getHour();
            return new Conditions(hour >= 12 && hour < 14 ? 45 : 20, 0, Irradiance.NIGHT);
        }

        @Override
        public String origin() {
            return "invented";
        }
    };

    /** One of two animals stays through both hot hours, the other through the second alone. */
    @Test
    void hoursInHeat() {
        Habitat hot = new Habitat(
                Pole.layout("hot"),
                habitat.animals(),
                Optional.of(new Climate(HOT_NOON, 0)),
                EnergySettings.standard(),
                ChoiceSharpness.GROUP.standard());
        List<Stay> stays =
                List.of(stay(hot, 0, 0, 24 * 60, Pole.FOOD, false), stay(hot, 1, 13 * 60, 24 * 60, Pole.WATER, false));
        assertEquals(
                1.5,
                value("hours_in_heat", Pole.outcome(hot, 1, journal(List.of(), stays, List.of())))
                        .orElseThrow(),
                1e-12);
    }

    /** Behind a wall of one metre the water is hidden from a terrace; the top of the pole is not. */
    @Test
    void shareSeen() {
        Enclosure old = Pole.layout("x").enclosure();
        Barrier wall = new Barrier("wall", BarrierKind.WALL, Outline.rectangle(8.5, 4, 8.7, 6), 0, 1);
        Viewpoint terrace = new Viewpoint(
                "terrace", new Point(9.5, 5, 1.6), new OpenHours(LocalTime.of(10, 0), LocalTime.of(14, 0)));
        Habitat shown = Pole.habitat(
                new Variant(
                        "shown",
                        "",
                        old.withBounds(new Bounds(List.of(wall), List.of(), List.of())),
                        new Keeping(Pole.layout("x").feedings(), List.of(), List.of(), List.of(), List.of(terrace)),
                        Set.of()),
                habitat.animals());
        List<Stay> stays =
                List.of(stay(shown, 0, 0, 24 * 60, Pole.WATER, false), stay(shown, 1, 0, 24 * 60, Pole.FOOD, false));
        assertEquals(
                0.5,
                value("visible_share", Pole.outcome(shown, 1, journal(List.of(), stays, List.of())))
                        .orElseThrow(),
                1e-12);
    }

    /** Where masses are drawn anew each world has bodies of its own; their rooms must not pile up. */
    @Test
    void roomsOfBodiesLongGoneAreForgotten() {
        LayoutFacts facts = new LayoutFacts();
        for (int i = 0; i < LayoutFacts.MOST_BODIES + 5; i++) {
            Body body = Pole.female().timesMass(1 + i / 1000.0);
            Habitat world = Pole.habitat(Pole.layout("x"), List.of(new Animal("Ibu", body, 1)));
            double[] first = facts.zonesM3(world, body);
            assertArrayEquals(first, facts.zonesM3(world, body));
            assertEquals(Math.min(i + 1, LayoutFacts.MOST_BODIES), facts.bodiesKept());
        }
    }
}
