package limbway.reports.words;

import org.junit.jupiter.api.Test;

import limbway.model.shade.ShadeRule;
import limbway.reports.ShadedYear;

import static org.junit.jupiter.api.Assertions.assertEquals;

class ShadeTextTest {

    @Test
    void theRuleIsToldWithAllItsThresholds() {
        assertEquals(
                "whenever the sun stands more than 5° above the level, at least 2 platforms are in shade; a platform is in shade "
                        + "where 75 % or more of it gets at most 30 % of the direct sunlight",
                ShadeText.rule(ShadeRule.standard()));
    }

    @Test
    void aBrokenRuleSaysForHowLongAndHowBadlyAndWhen() {
        assertEquals(
                "broken: for 1 462 h of 2 920 h with sun (50 %) too few platforms are in shade, at worst only 1",
                ShadeText.verdict(ShadedYear.broken()));
        assertEquals(
                "first on 1 January, 12:00; the worst day is 24 March, with 6 h", ShadeText.when(ShadedYear.broken()));
    }

    @Test
    void aKeptRuleSaysHowManyThereAlwaysAre() {
        assertEquals(
                "kept: at every moment of 2 920 h with sun at least 1 platform is in shade",
                ShadeText.verdict(ShadedYear.kept()));
    }

    @Test
    void timesSayThatTheyAreStandardTime() {
        assertEquals(
                "Times are standard time of the site, UTC+08:00, without summer time; looked at every 30 min of every day of "
                        + "2026.",
                ShadeText.standardTime(ShadedYear.kept().calendar()));
    }

    @Test
    void stretchesOfTimeAreShort() {
        assertEquals("45 min", Hours.text(45));
        assertEquals("3 h", Hours.text(180));
        assertEquals("1 204 h 30 min", Hours.text(1204 * 60 + 30));
        assertEquals("75 min", Hours.brief(75));
        assertEquals("12 h", Hours.brief(735));
    }
}
