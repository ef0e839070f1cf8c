package limbway.scenarios.survey;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

import limbway.model.enclosure.Site;
import limbway.model.weather.Conditions;
import limbway.scenarios.problem.ProblemReport;
import limbway.scenarios.problem.Problems;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Weather files: what is read, and whole messages about what is not. */
class EpwFileTest {

    private static final List<String> SLIPS =
            List.of("", ",", "\n", "-", "9", "1e400", "NaN", " ", ".", "\"", "é", "0x1", "99999999999");

    private static String refusal(EpwText text) {
        Problems problems = new Problems();
        assertEquals(Optional.empty(), EpwFile.parse("w.epw", text.text(), problems));
        return ProblemReport.text(problems.inOrder("w.epw"));
    }

    @Test
    void aSoundFileIsReadHourByHour() {
        Problems problems = new Problems();
        EpwText text = EpwText.sound().with(9 + 24 + 12, 7, "31.5").with(9 + 24 + 12, 15, "0801");
        EpwFile file = EpwFile.parse("w.epw", text.text(), problems).orElseThrow();
        assertTrue(problems.isEmpty());
        assertEquals(1.5, file.header().latitudeDeg());
        assertEquals(110.5, file.header().longitudeDeg());
        assertEquals(8, file.header().zoneHours());
        assertEquals(20, file.header().elevationM());
        assertEquals("the hours of the weather file w.epw", file.weather().origin());
        // the middle of the thirteenth hour of the second day, from 12 to 13 o'clock
        Site site = new Site(1.5, 110.5, ZoneOffset.ofHours(8));
        Conditions found = file.weather().at(site, Instant.parse("2026-01-02T04:30:00Z"));
        assertEquals(31.5, found.airC());
        assertEquals(2.5, found.windMPerS());
        assertEquals(801, found.irradiance().beamWPerM2());
        // spread over the hour as the sine of the sun's height, which near noon changes by under 1 % within an hour
        assertEquals(250, found.irradiance().diffuseWPerM2(), 2.5);
        assertEquals(949, found.irradiance().globalWPerM2(), 9.5);
    }

    @Test
    void lineEndsOfOtherSystemsAndEmptyLinesAtTheEndDoNotMatter() {
        Problems problems = new Problems();
        String text = EpwText.sound().text().replace("\n", "\r\n") + "\r\n\r\n";
        assertTrue(EpwFile.parse("w.epw", text, problems).isPresent());
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource({"headers", "calendars", "fields", "units"})
    void eachMistakeIsToldInOneMessage(UnaryOperator<EpwText> slip, String message) {
        assertEquals(message + "\n1 problem\n", refusal(slip.apply(EpwText.sound())));
    }

    private static Arguments of(UnaryOperator<EpwText> slip, String message) {
        return Arguments.of(slip, message);
    }

    static Stream<Arguments> headers() {
        return Stream.of(
                of(text -> text.without(2, 2), """
                        w.epw:2:1: this is not the header of a weather file (EPW)
                          found    "TYPICAL/EXTREME PERIODS,0"
                          allowed  line 2 begins with DESIGN CONDITIONS
                          mend     check that this is the file you meant, and that no line of its header is missing
                        """),
                of(text -> text.without(3, 8768), """
                        w.epw:3:1: this is not the header of a weather file (EPW)
                          found    ""
                          allowed  line 3 begins with TYPICAL/EXTREME PERIODS
                          mend     check that this is the file you meant, and that no line of its header is missing
                        """),
                of(text -> text.with(1, 7, "1,5"), """
                        w.epw:1:1: the line LOCATION does not have its 10 fields
                          found    11 fields
                          allowed  LOCATION, city, region, country, source, station, latitude, longitude, time zone, elevation
                          mend     write a point before decimals, and names without commas
                        """),
                of(text -> text.with(1, 2, "Made-up, by the river"), """
                        w.epw:1:1: the line LOCATION does not have its 10 fields
                          found    11 fields
                          allowed  LOCATION, city, region, country, source, station, latitude, longitude, time zone, elevation
                          mend     write a point before decimals, and names without commas
                        """),
                of(text -> text.with(1, 8, "east"), """
                        w.epw:1:42: longitude of the weather file cannot be read
                          found    "east"
                          allowed  a number from -180 to 180
                          mend     write the number alone, with a point before decimals
                        """),
                of(text -> text.with(1, 7, "110.5"), """
                        w.epw:1:38: latitude of the weather file cannot be read
                          found    "110.5"
                          allowed  a number from -90 to 90
                          mend     write the number alone, with a point before decimals
                        """),
                of(text -> text.with(8, 3, "4"), """
                        w.epw:8:16: this weather file is not hourly
                          found    4 records per hour
                          allowed  1 record per hour, because the model counts sun and heat by the hour
                          mend     take the means of each hour, or the hourly file of the same station
                        """),
                of(text -> text.with(8, 2, "2"), """
                        w.epw:8:14: this weather file is not one whole year
                          found    2 data periods
                          allowed  1 data period, from the 1st of January to the 31st of December
                          mend     take a file of one year
                        """),
                of(text -> text.with(1, 9, "0"), """
                        w.epw:20:47: the sun shines at night in this weather file
                          found    2873 hours with more than 20 Wh/m² while the sun is down
                          allowed  at most 20 such hours
                          mend     correct latitude, longitude or time zone in the line LOCATION, or shift the hours: they are those of UTC+0, without summer time
                        """));
    }

    static Stream<Arguments> calendars() {
        return Stream.of(
                of(text -> text.without(8000, 8768), """
                        w.epw:7999:1: the weather ends before the year does
                          found    7991 hours
                          allowed  8760 hours
                          mend     take the whole file
                        """),
                of(text -> text.without(9, 8768), """
                        w.epw:8:1: this weather file holds no hours
                          allowed  8760 lines after the header
                          mend     take the whole file
                        """),
                of(text -> text.insert(8769, text.line(8768)), """
                        w.epw:8769:1: the weather goes on after a year
                          found    8761 hours
                          allowed  8760 hours
                          mend     take the lines after the 31st of December out
                        """),
                of(text -> text.without(100, 100), """
                        w.epw:100:6: this line is not the next hour of the year
                          found    month, day and hour "1,4,21"
                          allowed  1,4,20
                          mend     look for lines that are missing or twice before this one
                        """),
                of(text -> text.insert(100, text.line(99)), """
                        w.epw:100:6: this line is not the next hour of the year
                          found    month, day and hour "1,4,19"
                          allowed  1,4,20
                          mend     look for lines that are missing or twice before this one
                        """),
                of(text -> text.insert(9 + 59 * 24, "2024,2,29,1" + text.line(9).substring(10)), """
                        w.epw:1425:6: this line is not the next hour of the year
                          found    month, day and hour "2,29,1"
                          allowed  3,1,1
                          mend     take the 24 lines of the 29th of February out: a year has 365 days here
                        """),
                of(text -> text.insert(9, "2023,1,1,0" + text.line(9).substring(10)), """
                        w.epw:9:6: this line is not the next hour of the year
                          found    month, day and hour "1,1,0"
                          allowed  1,1,1
                          mend     count the hours of a day from 1 to 24: hour 1 lasts from 0 to 1 o'clock
                        """));
    }

    static Stream<Arguments> fields() {
        return Stream.of(
                of(text -> text.with(50, 35, "0,0"), """
                        w.epw:50:1: this line does not have the fields of an hour
                          found    36 fields
                          allowed  35 fields, with commas between
                          mend     look for a comma too many, and write points before decimals
                        """),
                of(
                        text -> text.insert(
                                50, text.line(50).substring(0, text.line(50).lastIndexOf(','))),
                        """
                        w.epw:50:1: this line does not have the fields of an hour
                          found    34 fields
                          allowed  35 fields, with commas between
                          mend     look for a comma that is missing, or take the file again: the line may be cut short
                        """),
                of(text -> text.insert(50, text.line(50).replace(',', ';')), """
                        w.epw:50:1: this line does not have the fields of an hour
                          found    semicolons between the fields
                          allowed  35 fields, with commas between
                          mend     write points before decimals, then a comma for each semicolon; or save the file again with commas
                        """),
                of(text -> text.with(50, 7, "warm"), """
                        w.epw:50:19: dry bulb temperature is not a number
                          found    "warm"
                          allowed  -70 °C to 60 °C
                          mend     write the number alone, with a point before decimals; fill a gap from a station near by
                        """),
                of(text -> text.with(50, 22, "3 m/s"), """
                        w.epw:50:70: wind speed is not a number
                          found    "3 m/s"
                          allowed  0 m/s to 40 m/s
                          mend     write the number alone, with a point before decimals; fill a gap from a station near by
                        """),
                of(text -> text.with(50, 7, "99.90"), """
                        w.epw:50:19: dry bulb temperature is missing in 1 of 8760 hours
                          found    nothing, or the code for nothing, in line 50
                          allowed  a value in every hour: gaps are not filled silently
                          mend     fill the gaps from a station near by and say so under COMMENTS 1, or take another file
                        """),
                of(
                        text -> {
                            for (int line = 60; line < 120; line += line % 4 == 0 ? 3 : 1) {
                                text.with(line, 16, line % 2 == 0 ? "9999" : "");
                            }
                            return text;
                        },
                        """
                        w.epw:60:50: diffuse horizontal radiation is missing in 30 of 8760 hours
                          found    nothing, or the code for nothing, in lines 60, 63 to 64, 67 to 68, 71 to 72, 75 to 76, 79 to 80, 83 to 84, 87 to 88, 91 to 92, 95 to 96, 99 to 100, 103 to 104 and 4 more
                          allowed  a value in every hour: gaps are not filled silently
                          mend     fill the gaps from a station near by and say so under COMMENTS 1, or take another file
                        """),
                of(text -> text.withAll(22, wind -> 999), """
                        w.epw:9:64: wind speed is missing in 8760 of 8760 hours
                          found    nothing, or the code for nothing, in lines 9 to 8768
                          allowed  a value in every hour: gaps are not filled silently
                          mend     fill the gaps from a station near by and say so under COMMENTS 1, or take another file
                        """),
                of(text -> text.with(50, 7, "65.0"), """
                        w.epw:50:19: dry bulb temperature is outside what is plausible
                          found    65 °C
                          allowed  -70 °C to 60 °C
                          mend     correct the number
                        """),
                of(text -> text.with(50, 14, "-1"), """
                        w.epw:50:47: global horizontal radiation is outside what is plausible
                          found    -1 Wh/m²
                          allowed  0 Wh/m² to 1500 Wh/m²
                          mend     correct the number
                        """),
                of(text -> text.with(50, 15, "1500"), """
                        w.epw:50:51: direct normal radiation is outside what is plausible
                          found    1500 Wh/m²
                          allowed  0 Wh/m² to 1410 Wh/m²
                          mend     correct the number
                        """));
    }

    static Stream<Arguments> units() {
        return Stream.of(
                of(text -> text.withAll(7, airC -> airC * 1.8 + 32), """
                        w.epw:9:18: the dry bulb temperature of the whole file is in another unit, it seems
                          found    75.2 °C to 89.6 °C, 82.4 °C in the mean
                          allowed  up to 36 °C in the mean
                          mend     these look like degrees Fahrenheit: take 32 from each and divide by 1.8
                        """),
                of(text -> text.withAll(7, airC -> airC + 273.15), """
                        w.epw:9:18: the dry bulb temperature of the whole file is in another unit, it seems
                          found    297.15 °C to 305.15 °C, 301.2 °C in the mean
                          allowed  -70 °C to 60 °C
                          mend     these look like kelvins: take 273.15 from each
                        """),
                of(text -> text.withAll(7, airC -> airC * 1.8), """
                        w.epw:9:18: the dry bulb temperature of the whole file is in another unit, it seems
                          found    43.2 °C to 57.6 °C, 50.4 °C in the mean
                          allowed  up to 36 °C in the mean
                          mend     these look like degrees Fahrenheit: take 32 from each and divide by 1.8
                        """),
                of(text -> text.withAll(22, wind -> wind * 3.6 * 2), """
                        w.epw:9:64: the wind speed of the whole file is in another unit, it seems
                          found    10.8 m/s to 18 m/s, 13.1 m/s in the mean
                          allowed  up to 9 m/s in the mean
                          mend     if these are km/h, divide them by 3.6
                        """),
                of(text -> text.withAll(14, wh -> wh * 3.6), """
                        w.epw:9:46: the global horizontal radiation of the whole file is in another unit, it seems
                          found    0 Wh/m² to 3416.4 Wh/m², 1086.6 Wh/m² in the mean
                          allowed  0 Wh/m² to 1500 Wh/m²
                          mend     these look like kJ/m²: divide each by 3.6
                        """),
                of(text -> text.withAll(14, wh -> wh * 3600), """
                        w.epw:9:46: the global horizontal radiation of the whole file is in another unit, it seems
                          found    0 Wh/m² to 3416400 Wh/m², 1086600 Wh/m² in the mean
                          allowed  0 Wh/m² to 1500 Wh/m²
                          mend     write watt-hours for each square metre
                        """),
                of(text -> text.withAll(14, wh -> wh * 0.36), """
                        w.epw:9:46: the global horizontal radiation of the whole file is in another unit, it seems
                          found    0 Wh/m² to 341.64 Wh/m², 108.7 Wh/m² in the mean
                          allowed  more than 450 Wh/m² in the brightest hour
                          mend     if these are J/cm², divide each by 0.36
                        """),
                of(text -> text.withAll(14, wh -> wh / 1000), """
                        w.epw:9:46: the global horizontal radiation of the whole file is in another unit, it seems
                          found    0 Wh/m² to 0.95 Wh/m², 0.3 Wh/m² in the mean
                          allowed  more than 450 Wh/m² in the brightest hour
                          mend     these look like kWh/m² or MJ/m²: write Wh/m²
                        """),
                of(text -> text.withAll(14, wh -> 0), """
                        w.epw:9:46: the global horizontal radiation of the whole file is in another unit, it seems
                          found    0 Wh/m² to 0 Wh/m², 0 Wh/m² in the mean
                          allowed  more than 450 Wh/m² in the brightest hour
                          mend     take a file that holds sunlight
                        """));
    }

    @Test
    void aFileWithSemicolonsThroughoutIsOneMistake() {
        Problems problems = new Problems();
        String text = EpwText.sound().text().replace(',', ';');
        assertEquals(Optional.empty(), EpwFile.parse("w.epw", text, problems));
        assertEquals("""
                w.epw:1:1: the line LOCATION does not have its 10 fields
                  found    semicolons between the fields
                  allowed  LOCATION, city, region, country, source, station, latitude, longitude, time zone, elevation
                  mend     write points before decimals, then a comma for each semicolon; or save the file again with commas

                1 problem
                """, ProblemReport.text(problems.inOrder("w.epw")));
    }

    @Test
    void manyMistakesOfOneKindAreCounted() {
        String told = refusal(EpwText.sound().withAll(1, year -> year).withAll(16, wh -> -1));
        assertTrue(told.endsWith("8760 problems\n"), told);
        assertTrue(
                told.contains("and 8755 more like: diffuse horizontal radiation is outside what is plausible"), told);
    }

    /** Slips of the pen anywhere in a file: it is read or refused, and nothing is thrown. */
    @Test
    void aFileWithSlipsIsReadOrRefused() {
        String sound = EpwText.sound().text();
        int refused = 0;
        for (int seed = 1; seed <= 60; seed++) {
            SplittableRandom random = new SplittableRandom(seed);
            StringBuilder text = new StringBuilder(sound);
            for (int n = random.nextInt(3); n >= 0; n--) {
                // half of the slips fall into the header, which is short
                int at = random.nextInt(random.nextBoolean() ? 400 : text.length());
                String slip = SLIPS.get(random.nextInt(SLIPS.size()));
                text.replace(at, Math.min(text.length(), at + random.nextInt(3)), slip);
            }
            Problems problems = new Problems();
            Optional<EpwFile> file = EpwFile.parse("w.epw", text.toString(), problems);
            assertEquals(file.isPresent(), problems.isEmpty(), "seed " + seed);
            refused += file.isPresent() ? 0 : 1;
        }
        // both outcomes must occur, or the slips test nothing
        assertTrue(refused > 15 && refused < 55, refused + " refused");
    }
}
