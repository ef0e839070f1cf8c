package limbway.model.weather;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.Arrays;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import limbway.model.enclosure.Site;
import limbway.model.light.ClearSky;
import limbway.model.light.Irradiance;
import limbway.model.light.SunPosition;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

class HourlyWeatherTest {

    private static final ZoneOffset STANDARD = ZoneOffset.ofHours(1);
    private static final Site MIDDLE = new Site(48, 11, ZoneId.of("Europe/Berlin"));
    private static final int JUNE_21 = 171 * 24;

    private final double[] air = new double[HourlyWeather.HOURS];
    private final double[] beam = new double[HourlyWeather.HOURS];
    private final double[] diffuse = new double[HourlyWeather.HOURS];
    private final double[] global = new double[HourlyWeather.HOURS];
    private final double[] wind = new double[HourlyWeather.HOURS];

    private HourlyWeather weather() {
        return new HourlyWeather("made up", STANDARD, air, beam, diffuse, global, wind);
    }

    private static Instant at(String standardTime) {
        return LocalDateTime.parse(standardTime).toInstant(STANDARD);
    }

    @Test
    @Tag("derived")
    void airAndWindRunStraightBetweenTheMiddlesOfHours() {
        air[JUNE_21 + 13] = 20;
        air[JUNE_21 + 14] = 24;
        wind[JUNE_21 + 13] = 1;
        HourlyWeather weather = weather();
        assertEquals(20, weather.at(MIDDLE, at("2026-06-21T13:30")).airC(), 1e-9);
        // a quarter of the way from 13:30 to 14:30
        assertEquals(21, weather.at(MIDDLE, at("2026-06-21T13:45")).airC(), 1e-9);
        assertEquals(0.75, weather.at(MIDDLE, at("2026-06-21T13:45")).windMPerS(), 1e-9);
    }

    @Test
    @Tag("derived")
    void theYearCloses() {
        air[0] = 4;
        air[HourlyWeather.HOURS - 1] = 8;
        assertEquals(6, weather().at(MIDDLE, at("2027-01-01T00:00")).airC(), 1e-9);
        assertEquals(7, weather().at(MIDDLE, at("2026-12-31T23:45")).airC(), 1e-9);
    }

    @Test
    @Tag("derived")
    void theExtraDayRepeatsTheDayBefore() {
        for (int h = 0; h < HourlyWeather.HOURS; h++) {
            int day = h / 24;
            air[h] = day * 0.1;
        }
        HourlyWeather weather = weather();
        double february28 = weather.at(MIDDLE, at("2024-02-28T12:00")).airC();
        assertEquals(5.8, february28, 1e-9);
        assertEquals(february28, weather.at(MIDDLE, at("2024-02-29T12:00")).airC());
        assertEquals(5.9, weather.at(MIDDLE, at("2024-03-01T12:00")).airC(), 1e-9);
        assertEquals(5.9, weather.at(MIDDLE, at("2026-03-01T12:00")).airC(), 1e-9);
    }

    /** Whatever the shape within the hour, the light of an hour is the light of an hour. */
    @ParameterizedTest
    @Tag("derived")
    @CsvSource({"4, 50", "5, 200", "12, 800", "18, 300", "19, 100"})
    void keepsTheSumOfEachHour(int hour, double mean) {
        beam[JUNE_21 + hour] = mean;
        diffuse[JUNE_21 + hour] = mean / 2;
        global[JUNE_21 + hour] = mean / 3;
        HourlyWeather weather = weather();
        double beamSum = 0;
        double diffuseSum = 0;
        double globalSum = 0;
        int samples = 3600;
        for (int s = 0; s < samples; s++) {
            Instant moment =
                    at("2026-06-21T00:00:00").plus(Duration.ofHours(hour)).plusMillis(s * 1000L + 500);
            Irradiance light = weather.at(MIDDLE, moment).irradiance();
            beamSum += light.beamWPerM2();
            diffuseSum += light.diffuseWPerM2();
            globalSum += light.globalWPerM2();
        }
        // in the hour of sunrise the closed form misses parallax and the sun's own course by a second or two: 0.1 %
        assertEquals(mean, beamSum / samples, 0.001 * mean);
        assertEquals(mean / 2, diffuseSum / samples, 0.001 * mean);
        assertEquals(mean / 3, globalSum / samples, 0.001 * mean);
    }

    @Test
    @Tag("derived")
    void neverShinesWhileTheSunIsDownNorHeapsUpAnHour() {
        Arrays.fill(beam, 100);
        Arrays.fill(diffuse, 100);
        Arrays.fill(global, 100);
        HourlyWeather weather = weather();
        for (int minute = 0; minute < 365 * 1440; minute += 13) {
            Instant moment = at("2026-01-01T00:00").plus(Duration.ofMinutes(minute));
            Irradiance light = weather.at(MIDDLE, moment).irradiance();
            boolean up = SunPosition.at(MIDDLE, moment).altitudeDeg() > 0;
            assertEquals(up, light.beamWPerM2() > 0);
            assertTrue(light.beamWPerM2() <= 400 && light.diffuseWPerM2() <= 400 && light.globalWPerM2() <= 400);
        }
    }

    /** Hours made from a clear sky give that sky back. */
    @Test
    @Tag("derived")
    void comesCloseToTheSkyFromWhichItsHoursWereMade() {
        ClearSky sky = new ClearSky(3);
        int samples = 12;
        for (int h = 0; h < HourlyWeather.HOURS; h++) {
            for (int i = 0; i < samples; i++) {
                Instant moment =
                        at("2026-01-01T00:00").plus(Duration.ofHours(h)).plusSeconds(i * 300L + 150);
                Irradiance light = sky.at(MIDDLE, moment);
                beam[h] += light.beamWPerM2() / samples;
                diffuse[h] += light.diffuseWPerM2() / samples;
                global[h] += light.globalWPerM2() / samples;
            }
        }
        HourlyWeather weather = weather();
        for (int minute = 3; minute < 365 * 1440; minute += 37) {
            Instant moment = at("2026-01-01T00:00").plus(Duration.ofMinutes(minute));
            if (SunPosition.at(MIDDLE, moment).altitudeDeg() > 20) {
                Irradiance expected = sky.at(MIDDLE, moment);
                Irradiance found = weather.at(MIDDLE, moment).irradiance();
                // half an hour from the middle of an hour the beam of a low sun has moved on by up to 120 W/m2: the
                // price of steps
                assertEquals(expected.beamWPerM2(), found.beamWPerM2(), 130);
                assertEquals(expected.diffuseWPerM2(), found.diffuseWPerM2(), 30);
                assertEquals(expected.globalWPerM2(), found.globalWPerM2(), 30);
            }
        }
    }

    @Test
    void saysWhereItComesFrom() {
        assertEquals("made up", weather().origin());
    }

    @Test
    void laterChangesOfTheArraysDoNotReachIt() {
        HourlyWeather weather = weather();
        Arrays.fill(air, 30);
        assertEquals(0, weather.at(MIDDLE, at("2026-06-21T13:30")).airC());
    }

    @Test
    void refusesShortSeriesAndMissingValues() {
        double[] few = new double[8784];
        var tooLong = assertThrows(
                IllegalArgumentException.class,
                () -> new HourlyWeather("made up", STANDARD, few, beam, diffuse, global, wind));
        assertEquals("hourly weather: airC has 8784 values, allowed 8760", tooLong.getMessage());
        beam[17] = 9999;
        var missing = assertThrows(IllegalArgumentException.class, this::weather);
        assertEquals("hourly weather: beamWPerM2[17] = 9999.0, allowed 0.0 to 1500.0", missing.getMessage());
        beam[17] = Double.NaN;
        assertThrows(IllegalArgumentException.class, this::weather);
        var nameless = assertThrows(
                IllegalArgumentException.class,
                () -> new HourlyWeather(" ", STANDARD, air, diffuse, diffuse, global, wind));
        assertEquals("hourly weather: origin is empty, allowed a phrase", nameless.getMessage());
    }
}
