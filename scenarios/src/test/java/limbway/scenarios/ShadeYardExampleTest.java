package limbway.scenarios;

import java.time.LocalDate;
import java.util.List;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Platform;
import limbway.model.shade.RoofAnswer;
import limbway.model.shade.RoofFamily;
import limbway.model.shade.RoofSearch;
import limbway.model.shade.ShadeAudit;
import limbway.model.shade.ShadeCalendar;
import limbway.model.shade.ShadeProgress;
import limbway.model.shade.ShadeRule;
import limbway.model.shade.ShadeSettings;
import limbway.model.shade.ShadeYear;
import limbway.model.study.Study;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** The yard that passes by the hour and breaks the rule of two platforms in between; its comments say what is tested here. */
@TestInstance(TestInstance.Lifecycle.PER_CLASS) // so that each year is audited once
class ShadeYardExampleTest {

    private final Study study = Examples.read("shade-yard.yaml").study();
    private final Enclosure drawn = study.base().enclosure();
    private final ShadeYear year = audit(drawn, 15);

    private static ShadeYear audit(Enclosure enclosure, int stepMin) {
        List<String> platforms =
                enclosure.platforms().stream().map(Platform::id).toList();
        return ShadeAudit.of(
                        enclosure,
                        ShadeSettings.standard(),
                        ShadeRule.standard(),
                        ShadeCalendar.of(enclosure.site(), 2026, stepMin),
                        platforms,
                        2,
                        ShadeProgress.NONE)
                .orElseThrow();
    }

    @Test
    void noFullHourOfTheYearShowsTheBreach() {
        for (int day = 0; day < year.calendar().days(); day++) {
            for (int slot = 0; slot < year.calendar().slots(); slot += 4) {
                assertFalse(year.isBreach(day, slot), year.calendar().date(day) + ", quarter of an hour " + slot);
            }
        }
    }

    /** The figures of the comments in the scenario: our own, not measured by anybody. */
    @Test
    @Tag("pinned")
    void quartersOfAnHourShowIt() {
        assertEquals(1995, year.breachMinutes());
        assertEquals(LocalDate.of(2026, 1, 6), year.firstBreach().orElseThrow().toLocalDate());
        for (int month = 0; month < 12; month++) {
            for (int hour = 0; hour < 24; hour++) {
                assertTrue(hour == 15 || year.breachMinutesByMonthAndHour()[month][hour] == 0, "hour " + hour);
            }
        }
    }

    @Test
    void theMendedLayoutKeepsTheRuleAtEveryFiveMinutes() {
        ShadeYear mended = audit(study.find("mended").orElseThrow().enclosure(), 5);
        assertEquals(0, mended.breachMinutes());
    }

    @Test
    void aRoofIsFoundThatEndsTheBreachToo() {
        RoofAnswer answer =
                RoofSearch.of(drawn, ShadeSettings.standard(), year, RoofFamily.standard(), 2, ShadeProgress.NONE);
        RoofAnswer.Found found = assertInstanceOf(RoofAnswer.Found.class, answer);
        assertEquals(0, audit(found.roof().addedTo(drawn), 15).breachMinutes());
        assertTrue(found.roof().screens().isEmpty());
    }
}
