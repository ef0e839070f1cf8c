package limbway.reports.patterns;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

import org.junit.jupiter.api.Test;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Keeps the tables of patterns in {@code docs/validation.md} the same as what is computed; runs are the same to the last digit. */
class PatternTableTest {

    private static final Path PAGE = Path.of("..", "docs", "validation.md");
    private static final String REFRESH =
            "docs/validation.md differs from what is computed; refresh it with: mvn -B -ntp verify"
                    + " -pl reports -am -Dlimbway.refresh-docs=true -Dtest=PatternTableTest -Dsurefire.failIfNoSpecifiedTests=false";

    @Test
    void thePageIsWhatIsComputed() throws IOException {
        Lives lives = Lives.usual();
        PatternTable table = new PatternTable(lives);
        check("calibration", table.render(CalibrationPatterns.all()));
        check("corroboration", table.render(CorroborationPatterns.all()));
        check("budgets", new BudgetTable(lives).render());
    }

    @Test
    void oddPatternsMayBeFittedAndEvenOnesNot() {
        assertTrue(CalibrationPatterns.all().stream().allMatch(Pattern::mayBeFitted));
        assertTrue(CorroborationPatterns.all().stream().noneMatch(Pattern::mayBeFitted));
        assertEquals(
                18,
                CalibrationPatterns.all().size() + CorroborationPatterns.all().size());
    }

    private static void check(String name, String computed) throws IOException {
        if (Boolean.getBoolean("limbway.refresh-docs")) {
            Files.writeString(PAGE, MarkedText.replaced(Files.readString(PAGE), name, computed));
        }
        assertEquals(computed, MarkedText.between(Files.readString(PAGE), name), REFRESH);
    }
}
