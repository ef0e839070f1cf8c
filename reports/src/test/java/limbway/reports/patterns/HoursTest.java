package limbway.reports.patterns;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.time.LocalTime;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

import limbway.model.light.Daylight;
import limbway.sim.experiment.statistics.Interval;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** The shape of a day: it comes from needs, from the keepers' hours and from the sun. */
class HoursTest {

    private static final LocalDate JUNE = LocalDate.of(2026, 6, 21);
    private static final LocalDate DECEMBER = LocalDate.of(2026, 12, 21);
    private static final Run SUMMER = Run.of("patterns/13-seasons").on(JUNE);

    /** Wild orangutans, second-hand after Rijksen: two peaks of feeding, hours of rest between them. */
    @Test
    void thereIsMoreFeedingInTheMorningThanAtMiddayAndMoreRestAtMidday() {
        Lives lives = Lives.usual();
        assertAboveZero(feeding(7, 10).minus(feeding(11, 14)).of(lives));
        assertAboveZero(resting(11, 14).minus(resting(7, 10)).of(lives));
    }

    /** At 48 degrees north the bed follows the sunset, and nothing else moves it so far. */
    @Test
    void theBedIsReachedLaterInJuneThanInDecemberByAsMuchAsTheSunSetsLater(@TempDir Path folder) throws IOException {
        Path seasons = Path.of("..", "scenarios", "examples", "patterns", "13-seasons.yaml");
        Path north = folder.resolve("north.yaml");
        String text = Files.readString(seasons);
        String moved = text.replace("latitude: 39.8", "latitude: 48");
        assertTrue(!moved.equals(text), "latitude replaced");
        Files.writeString(north, moved);
        Lives lives = Lives.in(folder);
        Run summer = Run.of("north").on(JUNE).lasting(1, 12);
        Run winter = summer.on(DECEMBER);
        double laterH =
                mean(Sleep.startHour(summer).minus(Sleep.startHour(winter)).of(lives));
        var site = lives.study("north").base().enclosure().site();
        double sunsetLaterH = hours(Daylight.of(site, JUNE).sunset())
                - hours(Daylight.of(site, DECEMBER).sunset());
        assertTrue(sunsetLaterH > 4, "hours between the sunsets: " + sunsetLaterH);
        // an animal may be in its bed up to half an hour early, as its last stay ends
        assertEquals(sunsetLaterH, laterH, 0.5);
    }

    private static Measurement feeding(double fromHour, double toHour) {
        return Shares.share(SUMMER, piece -> piece.isBetween(fromHour, toHour), Shares.feeding());
    }

    private static Measurement resting(double fromHour, double toHour) {
        return Shares.share(SUMMER, piece -> piece.isBetween(fromHour, toHour), Shares.resting());
    }

    private static double hours(LocalTime time) {
        return time.toSecondOfDay() / 3600.0;
    }

    private static double mean(List<Double> values) {
        return Interval.of(values).orElseThrow().mean();
    }

    private static void assertAboveZero(List<Double> values) {
        Interval found = Interval.of(values).orElseThrow();
        assertTrue(found.lo().orElseThrow() > 0, found::toString);
    }
}
