package limbway.sim.habitat;

import java.time.Instant;
import java.time.LocalDate;
import java.time.MonthDay;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Collections;
import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.enclosure.Crown;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Foliage;
import limbway.model.enclosure.ResourceKind;
import limbway.model.enclosure.Shading;
import limbway.model.enclosure.Site;
import limbway.model.geometry.Point;
import limbway.model.heat.HeatSettings;
import limbway.model.heat.OperativeTemperature;
import limbway.model.light.Irradiance;
import limbway.model.study.Climate;
import limbway.model.weather.Conditions;
import limbway.model.weather.MonthlyWeather;
import limbway.model.weather.Weather;
import limbway.sim.Yard;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Tables of several days, over the beginning of summer time and the day on which a tree beside comes into leaf. */
class ManyDaysTest {

    /** Summer time begins on the 29th. */
    private static final LocalDate DATE = LocalDate.of(2026, 3, 24);

    private static final int DAYS = 9;
    private static final int SLOTS = 96;
    private static final int NOON = 48;
    private static final long DAY_MS = 86_400_000;

    private static final MonthlyWeather WARMING = new MonthlyWeather(
            List.of(10.0, 10.0, 24.0, 38.0, 38.0, 38.0, 38.0, 38.0, 38.0, 30.0, 20.0, 10.0),
            Collections.nCopies(12, 8.0),
            0.5,
            3);

    /** As many degrees as it is hours after midnight in UTC, without any light. */
    private static final Weather CLOCK = new Weather() {
        @Override
        public Conditions at(Site site, Instant moment) {
            return new Conditions(
                    moment.atOffset(ZoneOffset.UTC).toLocalTime().toSecondOfDay() / 3600.0, 1, Irradiance.NIGHT);
        }

        @Override
        public String origin() {
            return "a clock";
        }
    };

    private static Habitat yard(Weather weather, Shading shading) {
        Yard yard = new Yard()
                .at("nest", ResourceKind.NEST, 5, 10, 0, 1)
                .at("water", ResourceKind.WATER, 20, 10, 0, 1)
                .animal("A", "adult female", 1)
                .climate(new Climate(weather, 300));
        Enclosure tropics = yard.build().layout().enclosure();
        Enclosure north = new Enclosure(
                new Site(48, 11, ZoneId.of("Europe/Berlin")),
                tropics.ground(),
                tropics.supports(),
                tropics.platforms(),
                tropics.crowns(),
                tropics.resources());
        return yard.build(north.withShading(shading));
    }

    /** A tree south of the nest, in leaf from the 27th. */
    private static Shading tree() {
        Foliage foliage = new Foliage(5, Optional.of(new Foliage.Season(MonthDay.of(3, 27), MonthDay.of(10, 31))));
        return new Shading(List.of(), List.of(), List.of(new Crown("tree", "", new Point(5, 5, 0), 4, 1, 9, foliage)));
    }

    @Test
    void eachDayOfTheTableIsThatOfItsOwnDate() {
        Habitat habitat = yard(WARMING, tree());
        Warmth all = habitat.warmth(DATE, DAYS);
        assertEquals(DAYS * SLOTS, all.slots());
        for (int day = 0; day < DAYS; day++) {
            Warmth one = habitat.warmth(DATE.plusDays(day), 1);
            for (int start = 0; start < all.starts(); start++) {
                for (int slot = 0; slot < SLOTS; slot++) {
                    assertEquals(one.operativeC(start, slot), all.operativeC(start, day * SLOTS + slot));
                }
            }
        }
        Passages passages = habitat.passages(Yard.body("adult female")).get(0);
        int nest = passages.startAt(habitat.graph().useHolds(0)[0]);
        // the leaves take more than the spring brings in a day
        assertTrue(all.operativeC(nest, 3 * SLOTS + NOON) < all.operativeC(nest, 2 * SLOTS + NOON) - 1);
    }

    @Test
    @Tag("derived")
    void stepsAreThoseOfTheClockOnTheWall() {
        Warmth warmth = yard(CLOCK, Shading.NONE).warmth(DATE, DAYS);
        // the middle of the step from 12:00 on is 11:07:30 UTC by winter time, 10:07:30 by summer time
        assertEquals(felt(11.125), warmth.operativeC(0, 4 * SLOTS + NOON), 1e-5);
        assertEquals(felt(10.125), warmth.operativeC(0, 5 * SLOTS + NOON), 1e-5);
    }

    /** In the dark and in the open; the table keeps seven digits. */
    private static double felt(double airC) {
        Conditions dark = new Conditions(airC, 1, Irradiance.NIGHT);
        return new OperativeTemperature(HeatSettings.standard()).ofPlaceC(dark, 0, 1, 0);
    }

    @Test
    void theSunOnTheWayIsThatOfTheWeek() {
        Habitat habitat = yard(WARMING, Shading.NONE);
        var body = Yard.body("adult female");
        Passages passages = habitat.passages(body).get(0);
        int passage = passages.passage(passages.startAt(habitat.graph().useHolds(0)[0]), 1);
        SunlitWays all = sun(habitat, DATE, DAYS);
        double first = sun(habitat, DATE, 1).discomfortJ(passages, passage, false, DAY_MS / 2);
        double eighth = sun(habitat, DATE.plusDays(7), 1).discomfortJ(passages, passage, false, DAY_MS / 2);
        assertTrue(first > 0 && eighth > first, first + " J, a week later " + eighth + " J");
        assertEquals(first, all.discomfortJ(passages, passage, false, 6 * DAY_MS + DAY_MS / 2));
        assertEquals(eighth, all.discomfortJ(passages, passage, false, 7 * DAY_MS + DAY_MS / 2));
        assertEquals(0, all.discomfortJ(passages, passage, false, 7 * DAY_MS));
    }

    private static SunlitWays sun(Habitat habitat, LocalDate date, int days) {
        return habitat.sunlitWays(Yard.body("adult female"), date, days, airC -> Math.max(0, airC / 100))
                .get(0);
    }
}
