package limbway.reports.measure;

import java.util.List;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.study.Closure;
import limbway.model.study.Viewpoint;

import static org.junit.jupiter.api.Assertions.assertEquals;

@Tag("derived")
class SightAndClosureAuditTest {

    private static List<String> sight(Shown shown, Viewpoint... viewpoints) {
        return texts(new SightAudit(shown.habitat(List.of(viewpoints), List.of())).findings());
    }

    private static List<String> closures(Closure... closures) {
        return texts(new ClosureAudit(new Shown().habitat(List.of(), List.of(closures))).findings());
    }

    private static List<String> texts(List<Finding> findings) {
        return findings.stream()
                .map(finding -> finding.weight().word() + ": " + finding.text())
                .toList();
    }

    private static final String ROOM =
            "note: places to rest that visitors at terrace cannot see (den) have room for 1 of 2 "
                    + "animals: housing guidance asks for a retreat (National Research Council 1998), and room for all at once is common "
                    + "practice (no source)";

    @Test
    void aRoofInViewAndARetreatInTheOpenLeaveAChoiceBetweenTheTwo() {
        assertEquals(
                List.of(
                        "caution: every place to rest under cover (nest) is seen by visitors, who look in from terrace, and "
                                + "every one out of their sight (den) lies in the open: an animal must choose between cover "
                                + "and being out of sight",
                        ROOM),
                sight(new Shown().roof("awning", 5.5, 5), Shown.TERRACE));
    }

    @Test
    void aRoofOverTheRetreatEndsTheChoice() {
        assertEquals(List.of(ROOM), sight(new Shown().roof("awning", 5.5, 5).roof("hut", 1.5, 5), Shown.TERRACE));
    }

    @Test
    void placesThatAreAllSeenAndAllOpenAreNamed() {
        assertEquals(
                List.of(
                        "caution: every place to rest (nest, den) lies in the open and is seen by visitors from terrace, window",
                        "caution: places to rest that visitors at terrace, window cannot see have room for 0 of 2 animals: "
                                + "housing guidance asks for a retreat (National Research Council 1998), and room for all at "
                                + "once is common practice (no source)"),
                sight(new Shown(), Shown.TERRACE, Shown.WINDOW));
    }

    @Test
    void withoutVisitorsNothingIsSaid() {
        assertEquals(List.of(), sight(new Shown()));
    }

    @Test
    void aPlaceShutAtAllHoursMustBeMended() {
        assertEquals(
                List.of("mend: den is shut or cleaned at all hours, so no animal can ever use it"),
                closures(
                        new Closure("den", Shown.hours("06:00", "18:00"), true),
                        new Closure("den", Shown.hours("18:00", "06:00"), false)));
        assertEquals(List.of(), closures(new Closure("den", Shown.hours("06:00", "05:59"), true)));
    }

    /**
     * At 110° east the sun is highest 7 h 20 min before noon of universal time, 7 min later in March (equation of time), and
     * near the equator it sets 6 h and 3 min after that, with refraction and the half disc: at 10:50, to a minute or two.
     */
    @Test
    void nestsShutWhenTheSunSetsMustBeMended() {
        List<String> found = closures(new Closure("nest", Shown.hours("10:00", "12:00"), true));
        assertEquals(1, found.size());
        assertEquals(
                "mend: nest is shut when the sun sets (10:5",
                found.get(0).substring(0, "mend: nest is shut when the sun sets (10:5".length()));
        assertEquals(
                " on 21 March): nests for 0 of 2 animals are open then",
                found.get(0).substring(found.get(0).indexOf(" on ")));
        assertEquals(List.of(), closures(new Closure("nest", Shown.hours("02:00", "06:00"), true)));
    }
}
