package limbway.scenarios.survey;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import java.util.function.UnaryOperator;
import java.util.stream.Stream;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

import limbway.model.enclosure.Site;
import limbway.model.light.SunPosition;
import limbway.scenarios.problem.ProblemReport;
import limbway.scenarios.problem.Problems;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Weather files whose light contradicts itself or the sun, and whole messages about them. */
class EpwLightTest {

    private static String refusal(EpwText text) {
        Problems problems = new Problems();
        assertEquals(Optional.empty(), EpwFile.parse("w.epw", text.text(), problems));
        return ProblemReport.text(problems.inOrder("w.epw"));
    }

    @ParameterizedTest(name = "{index}")
    @MethodSource("light")
    void eachMistakeIsToldInOneMessage(UnaryOperator<EpwText> slip, String message) {
        assertEquals(message + "\n1 problem\n", refusal(slip.apply(EpwText.sound())));
    }

    private static Arguments of(UnaryOperator<EpwText> slip, String message) {
        return Arguments.of(slip, message);
    }

    static Stream<Arguments> light() {
        return Stream.of(
                of(text -> text.withAll(15, wh -> 0).withAll(16, wh -> 0), """
                        w.epw:16:46: the columns of light in this weather file do not agree
                          found    over the year 2633 kWh/m² of global radiation, but 0 kWh/m² of direct and diffuse together
                          allowed  global = direct times the sine of the sun's height, plus diffuse; the two sums within 15 % of each other
                          mend     look at fields 14 (global horizontal radiation), 15 (direct normal radiation) and 16 (diffuse horizontal radiation): correct the column that is wrong, or take another file
                        """),
                of(text -> text.withMonth(7, 15, "0"), """
                        w.epw:4360:46: the columns of light in this weather file do not agree
                          found    in July 224 kWh/m² of global radiation, but 59 kWh/m² of direct and diffuse together
                          allowed  global = direct times the sine of the sun's height, plus diffuse; the two sums within 30 % of each other
                          mend     look at fields 14 (global horizontal radiation), 15 (direct normal radiation) and 16 (diffuse horizontal radiation): correct the column that is wrong, or take another file
                        """),
                of(text -> text.swapped(15, 16), """
                        w.epw:16:46: two columns of light in this weather file are swapped, it seems
                          found    hours that are off by 36 % in the mean as written, by 4 % with fields 15 and 16 swapped
                          allowed  global = direct times the sine of the sun's height, plus diffuse
                          mend     swap fields 15 and 16: 15 (direct normal radiation), 16 (diffuse horizontal radiation)
                        """),
                of(text -> text.swapped(14, 15), """
                        w.epw:16:46: two columns of light in this weather file are swapped, it seems
                          found    hours that are off by 51 % in the mean as written, by 4 % with fields 14 and 15 swapped
                          allowed  global = direct times the sine of the sun's height, plus diffuse
                          mend     swap fields 14 and 15: 14 (global horizontal radiation), 15 (direct normal radiation)
                        """),
                of(text -> text.withAll(15, wh -> 0).withAll(16, wh -> 0).copied(14, 16), """
                        w.epw:9:48: the sun never shines brightly in this weather file
                          found    up to 0 Wh/m² of direct normal radiation
                          allowed  more than 200 Wh/m² in the brightest hour
                          mend     take a file that tells direct from diffuse light, in fields 15 and 16
                        """),
                of(text -> text.copied(14, 15).withAll(15, wh -> wh * 700 / 950), """
                        w.epw:16:50: the direct radiation of this weather file is that on a level surface, it seems
                          found    hours that are off by 18 % in the mean as written, by 0 % if direct and diffuse are simply added
                          allowed  global = direct times the sine of the sun's height, plus diffuse
                          mend     divide each value of field 15 by the sine of the sun's height, or take a file with direct normal radiation
                        """),
                of(text -> text.with(1, 9, "9.0"), """
                        w.epw:1:48: the light of this weather file is that of another hour, it seems
                          found    global, direct and diffuse light that agree best with the sun about 1.2 hours later
                          allowed  within 0.75 hours of the middle of each hour
                          mend     if the hours are those of UTC+8, write that time zone; otherwise move fields 14, 15 and 16 to the line after each
                        """));
    }

    /** Light of a town in the north, with clouds on two of three afternoons, recorded some hours late. */
    private static EpwText northern(double hoursLate) {
        EpwText text = EpwText.sound().with(1, 7, "52.5").with(1, 8, "13.4").with(1, 9, "1.0");
        Site site = new Site(52.5, 13.4, ZoneOffset.ofHours(1));
        Instant first = Instant.parse("2022-12-31T23:30:00Z").minusSeconds(Math.round(3600 * hoursLate));
        for (int i = 0; i < 8760; i++) {
            double sine = SunPosition.at(site, first.plusSeconds(3600L * i))
                    .direction()
                    .zM();
            long diffuse = sine > 0.1 ? Math.round(60 + 100 * sine) : 0;
            long direct = sine > 0.1 && (i % 72 < 36 || i % 24 < 13) ? Math.round(850 * Math.exp(-0.12 / sine)) : 0;
            text.with(9 + i, 14, Long.toString(Math.round(direct * Math.max(0, sine)) + diffuse))
                    .with(9 + i, 15, Long.toString(direct))
                    .with(9 + i, 16, Long.toString(diffuse));
        }
        return text;
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.5, 0, 0.5})
    void cloudyAfternoonsAndReadingsHalfAnHourOffAreNoMistake(double hoursLate) {
        Problems problems = new Problems();
        assertTrue(EpwFile.parse("w.epw", northern(hoursLate).text(), problems).isPresent());
    }

    @Test
    void lightThatIsAnHourLateOrEarlyIsRefusedThoughNoneShinesAtNight() {
        assertEquals("""
                w.epw:1:48: the light of this weather file is that of another hour, it seems
                  found    global, direct and diffuse light that agree best with the sun about 1.2 hours earlier
                  allowed  within 0.75 hours of the middle of each hour
                  mend     if the hours are those of UTC+2, write that time zone; otherwise move fields 14, 15 and 16 to the line before each

                1 problem
                """, refusal(northern(1)));
        assertEquals("""
                w.epw:1:48: the light of this weather file is that of another hour, it seems
                  found    global, direct and diffuse light that agree best with the sun about 1.0 hours later
                  allowed  within 0.75 hours of the middle of each hour
                  mend     if the hours are those of UTC+0, write that time zone; otherwise move fields 14, 15 and 16 to the line after each

                1 problem
                """, refusal(northern(-1)));
    }
}
