package limbway.scenarios;

import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

import limbway.model.parameter.Assumable;
import limbway.model.weather.HourlyWeather;
import limbway.model.weather.MonthlyWeather;
import limbway.scenarios.format.SourceText;
import limbway.scenarios.survey.EpwText;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** The entry weather: means of months, or a file beside the scenario. */
class WeatherTest {

    private static final String MONTHLY = "weather: {monthly-max: [30, 30, 31, 32, 32, 32, 32, 32, 31, 31, 31, 30],"
            + " monthly-min: [23, 23, 23, 24, 24, 24, 23, 23, 23, 23, 23, 23], wind: 1.2, turbidity: 4}";

    @TempDir
    private Path folder;

    private Reading reading(String weather) {
        return ScenarioReader.read("yard.yaml", SmallYard.TEXT + weather + "\n", folder, Assumable.nothing());
    }

    private Reading epw(EpwText text) {
        try {
            Files.writeString(folder.resolve("w.epw"), text.text());
        } catch (IOException e) {
            throw new java.io.UncheckedIOException(e);
        }
        return reading("weather: {epw: w.epw}");
    }

    @Test
    void aScenarioNeedNotSayWhatTheWeatherIsLike() {
        assertEquals(Optional.empty(), Examples.sound(reading("")).study().weather());
    }

    @Test
    void meansOfMonthsAreReadAsTheyStand() {
        Reading.Read read = Examples.sound(reading(MONTHLY));
        assertEquals(
                Optional.of(new MonthlyWeather(
                        List.of(30.0, 30.0, 31.0, 32.0, 32.0, 32.0, 32.0, 32.0, 31.0, 31.0, 31.0, 30.0),
                        List.of(23.0, 23.0, 23.0, 24.0, 24.0, 24.0, 23.0, 23.0, 23.0, 23.0, 23.0, 23.0),
                        1.2,
                        4)),
                read.study().weather());
        assertEquals(List.of(), read.notes());
    }

    @Test
    void whatIsAssumedOfWindAndHazeIsSaid() {
        Reading.Read read = Examples.sound(reading(MONTHLY.replace(", wind: 1.2, turbidity: 4", "")));
        MonthlyWeather weather =
                assertInstanceOf(MonthlyWeather.class, read.study().weather().orElseThrow());
        assertEquals(0, weather.windMPerS());
        assertEquals(3, weather.linkeTurbidity());
        assertEquals(
                List.of(
                        "The weather does not say how strong the wind is: still air is assumed, in which it is hottest.",
                        "The weather does not say how hazy the air is: a turbidity of 3 is assumed."),
                read.notes());
    }

    @Test
    void aFileBesideTheScenarioIsReadAndBelongsToWhatTheDigestCovers() {
        Reading.Read read = Examples.sound(epw(EpwText.sound()));
        HourlyWeather weather =
                assertInstanceOf(HourlyWeather.class, read.study().weather().orElseThrow());
        assertEquals("the hours of the weather file w.epw", weather.origin());
        assertEquals(List.of(), read.notes());
        Reading.Read other = Examples.sound(epw(EpwText.sound().with(100, 7, "25.0")));
        assertNotEquals(read.sha256Hex(), other.sha256Hex());
    }

    @Test
    void aStationSomeWayOffOrHigherUpIsWorthARemark() {
        Reading.Read read = Examples.sound(
                epw(EpwText.sound().with(1, 7, "1.9").with(1, 9, "7.5").with(1, 10, "640")));
        assertEquals(
                List.of(
                        "The weather was recorded about 44 km from the site.",
                        "The weather was recorded 640 m higher than the site, where the air is warmer.",
                        "The clocks of the weather file are UTC+7.5, those of the site UTC+8 without summer time; each hour"
                                + " is taken as the file means it."),
                read.notes());
    }

    @ParameterizedTest(name = "{0} -> {1}")
    @MethodSource("monthly")
    void eachMistakeInMonthsIsToldInOneMessage(String piece, String by, String message) {
        String text = MONTHLY.replace(piece, by);
        assertNotEquals(MONTHLY, text);
        assertEquals(message + "\n1 problem\n", Examples.refusal(reading(text)));
    }

    static Stream<Arguments> monthly() {
        return Stream.of(
                Arguments.of("monthly-max: [30, ", "monthly-max: [", """
                        yard.yaml:20:24: monthly-max of weather is not a list of 12 numbers
                          found    a list of 11
                          allowed  twelve temperatures in °C, January first
                          mend     add 1 number
                        """),
                Arguments.of("monthly-max: [30, ", "monthly-max: [30, 30, 31, ", """
                        yard.yaml:20:24: monthly-max of weather is not a list of 12 numbers
                          found    a list of 14
                          allowed  twelve temperatures in °C, January first
                          mend     take out 2 numbers
                        """),
                Arguments.of(
                        " monthly-min: [23, 23, 23, 24, 24, 24, 23, 23, 23, 23, 23, 23],", " monthly-min: 23,", """
                        yard.yaml:20:87: monthly-min of weather is not a list of 12 numbers
                          found    "23"
                          allowed  twelve temperatures in °C, January first
                          mend     write them between [ and ], with commas between
                        """),
                Arguments.of("monthly-max: [30, ", "monthly-max: [86, ", """
                        yard.yaml:20:25: monthly-max of weather is outside what is plausible
                          found    86 °C
                          allowed  -60 °C to 55 °C
                          mend     did you mean 30? (86 °F)
                        """),
                Arguments.of("monthly-max: [30, ", "monthly-max: [86 °F, ", """
                        yard.yaml:20:25: monthly-max of weather is in another unit
                          found    "86 °F"
                          allowed  -60 °C to 55 °C
                          mend     write 30
                        """),
                Arguments.of("monthly-max: [30, ", "monthly-max: [303.15 K, ", """
                        yard.yaml:20:25: monthly-max of weather is in another unit
                          found    "303.15 K"
                          allowed  -60 °C to 55 °C
                          mend     write 30
                        """),
                Arguments.of("monthly-max: [30, ", "monthly-max: [22, ", """
                        yard.yaml:20:88: the coldest of a day is not below its warmest in month 1
                          found    23 °C in monthly-min, 22 °C in monthly-max
                          mend     correct one of them, or swap the two lists
                        """),
                Arguments.of("wind: 1.2", "wind: 40", """
                        yard.yaml:20:143: wind of weather is outside what is plausible
                          found    40 m/s
                          allowed  0 m/s to 20 m/s
                          mend     correct the number
                        """),
                Arguments.of("wind: 1.2", "wind: 4 km/h", """
                        yard.yaml:20:143: wind of weather is in another unit
                          found    "4 km/h"
                          allowed  0 m/s to 20 m/s
                          mend     write 1.1111
                        """),
                Arguments.of("turbidity: 4", "turbidity: 40", """
                        yard.yaml:20:159: turbidity of weather is outside what is plausible
                          found    40
                          allowed  1 to 10
                          mend     correct the number
                        """),
                Arguments.of("turbidity: 4", "haze: 4", """
                        yard.yaml:20:148: unknown key "haze" in weather
                          allowed  epw, monthly-max, monthly-min, wind, turbidity, sunlit-ways
                          mend     take it out
                        """),
                Arguments.of("weather: {", "weather: {epw: w.epw, ", """
                        yard.yaml:20:10: weather must say in one way what it is like
                          found    epw, monthly-max
                          allowed  one of: epw, monthly-max (with monthly-min)
                        """),
                Arguments.of(" monthly-min: [23, 23, 23, 24, 24, 24, 23, 23, 23, 23, 23, 23],", "", """
                        yard.yaml:20:10: weather has no "monthly-min"
                          mend     add monthly-min: [...], twelve temperatures, January first
                        """));
    }

    @Test
    void monthsOfTheOtherHalfOfTheEarthAreRefused() {
        String text = SmallYard.TEXT.replace(
                        "{latitude: 1.5, longitude: 110.5, time-zone: Asia/Kuching}",
                        "{latitude: 48.1, longitude: 11.6, time-zone: Europe/Berlin}")
                + "weather: {monthly-max: [25, 25, 22, 18, 14, 11, 10, 12, 14, 17, 20, 23],"
                + " monthly-min: [15, 15, 12, 8, 4, 1, 0, 2, 4, 7, 10, 13], wind: 1, turbidity: 3}\n";
        assertEquals("""
                yard.yaml:20:24: these months are those of the other half of the Earth
                  found    January 25 °C, July 10 °C, latitude 48.1
                  mend     begin with January, or correct the latitude: south is negative

                1 problem
                """, Examples.refusal(ScenarioReader.read("yard.yaml", text, folder, Assumable.nothing())));
    }

    @Test
    void clocksOfTheFileThatDoNotGoWithThoseOfTheSiteAreRefusedUnlessTheSiteRunsByUtc() throws IOException {
        Files.writeString(folder.resolve("w.epw"), EpwText.sound().text());
        String text = SmallYard.TEXT + "weather: {epw: w.epw}\n";
        String kolkata = text.replace("Asia/Kuching", "Asia/Kolkata");
        assertEquals(
                """
                FOLDER/w.epw:1:48: the clocks of the weather file do not go with those of the site
                  found    UTC+8
                  allowed  within 1 hour of Asia/Kolkata, UTC+5.5
                  mend     correct the time zone of one of them; the file counts hours without summer time

                1 problem
                """,
                Examples.refusal(ScenarioReader.read("yard.yaml", kolkata, folder, Assumable.nothing()))
                        .replace(folder.toString(), "FOLDER"));
        Reading.Read utc = Examples.sound(
                ScenarioReader.read("yard.yaml", text.replace("Asia/Kuching", "UTC"), folder, Assumable.nothing()));
        assertEquals(2, utc.notes().size());
    }

    @Test
    void aFileWithSeveralRecordsAnHourIsToldAsSuchThoughItIsLarge() throws IOException {
        String text = EpwText.sound().with(8, 3, "4").text();
        String hours = text.substring(text.indexOf("2023,"));
        Files.writeString(folder.resolve("w.epw"), text + hours.repeat(4));
        assertTrue(Files.size(folder.resolve("w.epw")) > SourceText.MAX_BYTES);
        assertEquals("""
                FOLDER/w.epw:8:16: this weather file is not hourly
                  found    4 records per hour
                  allowed  1 record per hour, because the model counts sun and heat by the hour
                  mend     take the means of each hour, or the hourly file of the same station

                1 problem
                """, Examples.refusal(reading("weather: {epw: w.epw}")).replace(folder.toString(), "FOLDER"));
    }

    @Test
    void aGiantFileIsRefused() throws IOException {
        try (RandomAccessFile file =
                new RandomAccessFile(folder.resolve("w.epw").toFile(), "rw")) {
            file.setLength(SourceText.MAX_WEATHER_BYTES + 1);
        }
        assertEquals("""
                FOLDER/w.epw:1:1: this file is too large
                  found    33554433 bytes
                  allowed  at most 33554432 bytes (32 MiB)
                  mend     check that this is the file you meant, and take out what is not needed

                1 problem
                """, Examples.refusal(reading("weather: {epw: w.epw}")).replace(folder.toString(), "FOLDER"));
    }

    @Test
    void aMissingFileIsTold() {
        assertEquals("""
                yard.yaml:20:16: there is no such file
                  found    FOLDER/v.epw
                  mend     check the name and the folder

                1 problem
                """, Examples.refusal(reading("weather: {epw: v.epw}")).replace(folder.toString(), "FOLDER"));
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("places")
    void eachMistakeOfPlaceIsToldInOneMessage(UnaryOperator<EpwText> slip, String message) {
        assertEquals(
                message + "\n1 problem\n",
                Examples.refusal(epw(slip.apply(EpwText.sound()))).replace(folder.toString(), "FOLDER"));
    }

    private static Arguments of(UnaryOperator<EpwText> slip, String message) {
        return Arguments.of(slip, message);
    }

    static Stream<Arguments> places() {
        return Stream.of(
                of(text -> text.with(1, 7, "3.0"), """
                        FOLDER/w.epw:1:38: this weather was recorded somewhere else
                          found    latitude 3, longitude 110.5
                          allowed  within 1 degree of the site, latitude 1.5, longitude 110.5
                          mend     take the file of a nearer station, or correct the site
                        """),
                of(text -> text.with(1, 7, "-1.5"), """
                        FOLDER/w.epw:1:38: this weather was recorded somewhere else
                          found    latitude -1.5, longitude 110.5
                          allowed  within 1 degree of the site, latitude 1.5, longitude 110.5
                          mend     correct the sign of latitude or longitude, here or in the site: south and west are negative
                        """),
                of(text -> text.with(1, 9, "6.5"), """
                        FOLDER/w.epw:27:47: the sun shines at night in this weather file
                          found    365 hours with more than 20 Wh/m² while the sun is down
                          allowed  at most 20 such hours
                          mend     correct latitude, longitude or time zone in the line LOCATION, or shift the hours: they are those of UTC+6.5, without summer time
                        """),
                of(text -> text.with(1, 9, ""), """
                        FOLDER/w.epw:1:48: time zone of the weather file cannot be read
                          found    ""
                          allowed  a number from -14 to 14
                          mend     write the number alone, with a point before decimals
                        """),
                of(text -> text.with(50, 7, "99.9"), """
                        FOLDER/w.epw:50:19: dry bulb temperature is missing in 1 of 8760 hours
                          found    nothing, or the code for nothing, in line 50
                          allowed  a value in every hour: gaps are not filled silently
                          mend     fill the gaps from a station near by and say so under COMMENTS 1, or take another file
                        """));
    }
}
