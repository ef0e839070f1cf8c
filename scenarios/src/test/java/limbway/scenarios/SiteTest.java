package limbway.scenarios;

import java.util.List;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;

import limbway.model.enclosure.Horizon;
import limbway.model.enclosure.Horizon.Mark;
import limbway.model.enclosure.Site;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Where on Earth: elevation, horizon, and the slips that put an enclosure elsewhere. */
class SiteTest {

    private static final String SITE = "{latitude: 1.5, longitude: 110.5, time-zone: Asia/Kuching}";

    private static Reading at(String site) {
        return SmallYard.with(SITE, site);
    }

    private static Site site(String site) {
        return Examples.sound(at(site)).study().base().enclosure().site();
    }

    @Test
    void whoSaysNothingIsAtTheHeightOfTheSeaWithALevelHorizon() {
        assertEquals(0, site(SITE).elevationM());
        assertEquals(Horizon.LEVEL, site(SITE).horizon());
    }

    @Test
    void elevationAndHorizonAreRead() {
        Site site = site("{latitude: 47, longitude: 11, time-zone: Europe/Vienna, elevation: 720 m,"
                + " horizon: [[0, 14], [90.5, -1], [270, 9]]}");
        assertEquals(720, site.elevationM());
        assertEquals(
                List.of(new Mark(0, 14), new Mark(90.5, -1), new Mark(270, 9)),
                site.horizon().marks());
    }

    /** Real places where clocks and sun are far apart, or where the way round could be doubted; from memory. */
    @ParameterizedTest(name = "{3}")
    @CsvSource({
        "39.5, 76.0, Asia/Shanghai, Kashgar",
        "63.8, -171.7, America/Anchorage, Gambell",
        "43.4, -8.4, Europe/Madrid, A Coruna",
        "1.9, -157.4, Pacific/Kiritimati, Kiribati",
        "-50.3, -72.3, America/Argentina/Rio_Gallegos, El Calafate",
        "23.7, -15.9, Africa/El_Aaiun, Dakhla",
        "-13.8, -171.8, Pacific/Apia, Samoa",
        "64.1, -21.9, Atlantic/Reykjavik, Reykjavik",
        "40.4, 49.9, Asia/Baku, Baku",
        "51.5, -0.1, Europe/London, London"
    })
    void realPlacesAreReadWithoutARemark(double latitudeDeg, double longitudeDeg, String zone, String place) {
        Reading.Read read = Examples.sound(
                at("{latitude: " + latitudeDeg + ", longitude: " + longitudeDeg + ", time-zone: " + zone + "}"));
        assertEquals(List.of(), read.notes(), place);
    }

    @Test
    void clocksFartherFromTheSunThanOnInhabitedLandAreWorthARemark() {
        Reading.Read read = Examples.sound(at("{latitude: 39, longitude: 65, time-zone: Asia/Shanghai}"));
        assertEquals(1, read.notes().size());
        assertTrue(read.notes().get(0).startsWith("The clocks of time zone Asia/Shanghai are 3.7 hours from the sun"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource({"slips", "marks"})
    void eachMistakeIsToldInOneMessage(String site, String message) {
        assertEquals(message + "\n1 problem\n", Examples.refusal(at(site)));
    }

    static Stream<Arguments> slips() {
        return Stream.of(
                Arguments.of("{latitude: 110.5, longitude: 1.5, time-zone: Asia/Kuching}", """
                        yard.yaml:2:18: latitude and longitude are swapped
                          found    latitude 110.5, longitude 1.5
                          allowed  latitude -90 degrees to 90 degrees, longitude -180 degrees to 180 degrees
                          mend     swap them: latitude: 1.5, longitude: 110.5
                        """),
                Arguments.of("{latitude: 11.6, longitude: 48.1, time-zone: Europe/Berlin}", """
                        yard.yaml:2:18: latitude and longitude seem to be swapped: time zone Europe/Berlin fits only the other way round
                          found    latitude 11.6, longitude 48.1
                          mend     swap them: latitude: 48.1, longitude: 11.6
                        """),
                Arguments.of("{latitude: -74, longitude: 40.7, time-zone: America/New_York}", """
                        yard.yaml:2:18: latitude and longitude seem to be swapped: time zone America/New_York fits only the other way round
                          found    latitude -74, longitude 40.7
                          mend     swap them: latitude: 40.7, longitude: -74
                        """),
                Arguments.of("{latitude: 200, longitude: 1.5, time-zone: Asia/Kuching}", """
                        yard.yaml:2:18: latitude of site is outside what is plausible
                          found    200 degrees
                          allowed  -90 degrees to 90 degrees
                          mend     correct the number
                        """),
                Arguments.of("{latitude: 1.5, longitude: -110.5, time-zone: Asia/Kuching}", """
                        yard.yaml:2:53: time zone Asia/Kuching does not fit longitude -110.5
                          found    clocks 8.6 hours from the sun
                          allowed  up to 4 hours; the farthest on inhabited land are about 3, in the west of China
                          mend     did you mean longitude 110.5? (west is negative)
                        """),
                Arguments.of("{latitude: 1.5, longitude: 110.5, time-zone: Etc/GMT+8}", """
                        yard.yaml:2:52: time zone Etc/GMT+8 does not fit longitude 110.5
                          found    clocks 8.6 hours from the sun
                          allowed  up to 4 hours; the farthest on inhabited land are about 3, in the west of China
                          mend     the signs of these names are turned round: Etc/GMT-8 is eight hours ahead of UTC
                        """),
                Arguments.of("{latitude: 1.5, longitude: 110.5, time-zone: Europe/Berlin}", """
                        yard.yaml:2:52: time zone Europe/Berlin does not fit longitude 110.5
                          found    clocks 6.4 hours from the sun
                          allowed  up to 4 hours; the farthest on inhabited land are about 3, in the west of China
                          mend     correct the longitude or the time zone, or write UTC if the clocks are meant to show it
                        """),
                Arguments.of("{latitude: 1.5, longitude: 110.5, time-zone: Asia/Kuchin}", """
                        yard.yaml:2:52: unknown time zone "Asia/Kuchin"
                          allowed  a name of the IANA time zone list, for example Asia/Kuching
                          mend     did you mean "Asia/Kuching"?
                        """),
                Arguments.of("{latitude: 40.7, longitude: -74, time-zone: EST}", """
                        yard.yaml:2:51: unknown time zone "EST"
                          allowed  a name of the IANA time zone list, for example Asia/Kuching
                          mend     write a name such as America/New_York, not an abbreviation
                        """),
                Arguments.of("{latitude: 1.5, longitude: 110.5, time-zone: Asia/Kuching, elevation: 9000}", """
                        yard.yaml:2:77: elevation of site is outside what is plausible
                          found    9000 m
                          allowed  -450 m to 6000 m
                          mend     did you mean 2743.2? (9000 ft)
                        """),
                Arguments.of("{latitude: 1.5, longitude: 110.5, time-zone: Asia/Kuching, elevation: 90000}", """
                        yard.yaml:2:77: elevation of site is outside what is plausible
                          found    90000 m
                          allowed  -450 m to 6000 m
                          mend     write the height above the sea in metres
                        """),
                Arguments.of("{latitude: 1.5, longitude: 110.5, time-zone: Asia/Kuching, elevation: 12 km}", """
                        yard.yaml:2:77: elevation of site is in another unit
                          found    "12 km"
                          allowed  -450 m to 6000 m
                        """),
                Arguments.of("{latitude: 1.5, longitude: 110.5, time-zone: Asia/Kuching, elevation: 2400 ft}", """
                        yard.yaml:2:77: elevation of site is in another unit
                          found    "2400 ft"
                          allowed  -450 m to 6000 m
                          mend     write 731.52
                        """));
    }

    static Stream<Arguments> marks() {
        String site = "{latitude: 1.5, longitude: 110.5, time-zone: Asia/Kuching, horizon: ";
        return Stream.of(
                Arguments.of(site + "[[0, 5], [180, 3], [90, 4]]}", """
                        yard.yaml:2:94: mark of the horizon at 90 degrees comes after 180 degrees
                          mend     put the marks into the order of the compass: north, east, south, west
                        """),
                Arguments.of(site + "[[0, 5], [90, 3], [90, 4]]}", """
                        yard.yaml:2:93: mark of the horizon at 90 degrees is written twice
                          mend     give each direction one height
                        """),
                Arguments.of(site + "[[0, 5], [180, 3], [360, 5]]}", """
                        yard.yaml:2:94: mark of the horizon at 360 degrees is north once more
                          mend     write north once, as 0 at the beginning: the horizon closes by itself
                        """),
                Arguments.of(site + "[[0, 5], [380, 3]]}", """
                        yard.yaml:2:85: a mark of the horizon is outside what is plausible
                          found    380 degrees
                          allowed  0 degrees to 360 degrees
                          mend     count from 0 in the north over 90 in the east up to 360: did you mean 20?
                        """),
                Arguments.of(site + "[[-90, 3]]}", """
                        yard.yaml:2:77: a mark of the horizon is outside what is plausible
                          found    -90 degrees
                          allowed  0 degrees to 360 degrees
                          mend     count from 0 in the north over 90 in the east up to 360: did you mean 270?
                        """),
                Arguments.of(site + "[[3700, 3]]}", """
                        yard.yaml:2:77: a mark of the horizon is outside what is plausible
                          found    3700 degrees
                          allowed  0 degrees to 360 degrees
                          mend     count from 0 in the north over 90 in the east up to 360
                        """),
                Arguments.of(site + "[[0, 95]]}", """
                        yard.yaml:2:80: a mark of the horizon is outside what is plausible
                          found    95 degrees
                          allowed  -10 degrees to 80 degrees
                          mend     write how high the land stands above the level, which is 0; straight overhead would be 90
                        """),
                Arguments.of(site + "[[0], [90, 5]]}", """
                        yard.yaml:2:76: a mark of the horizon is not a list of 2 numbers
                          found    a list of 1
                          allowed  [azimuth, altitude] in degrees, azimuth 0 in the north and 90 in the east
                          mend     add 1 number
                        """),
                Arguments.of(site + "5}", """
                        yard.yaml:2:75: the horizon is not a list of marks
                          found    "5"
                          allowed  1 to 200 marks, for example [[0, 2], [90, 12], [180, 5]]
                          mend     write them between [ and ], with commas between
                        """),
                Arguments.of(site + "[]}", """
                        yard.yaml:2:75: the horizon is not a list of marks
                          found    an empty list
                          allowed  1 to 200 marks, for example [[0, 2], [90, 12], [180, 5]]
                          mend     add 1 mark
                        """));
    }
}
