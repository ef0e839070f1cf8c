package limbway.model.shade;

import java.util.List;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** A few yards of the experiment in {@code docs/validation.md}: who looks more often passes fewer yards in breach. */
class NearMissesTest {

    private final List<ShadeYear> near = NearMisses.find(1.5, 1, 12, 2);

    private int passed(SamplingScheme scheme) {
        return NearMisses.wronglyPassed(scheme, near);
    }

    @Test
    void moreMomentsPassFewerYardsInBreach() {
        assertFalse(near.isEmpty());
        assertTrue(passed(SamplingScheme.MARCH_HOURLY) > passed(SamplingScheme.DAILY_FIFTEEN));
        List<List<SamplingScheme>> rising = List.of(
                List.of(
                        SamplingScheme.MARCH_HOURLY,
                        SamplingScheme.FOUR_DAYS_HOURLY,
                        SamplingScheme.MONTHLY_HOURLY,
                        SamplingScheme.MONTHLY_FIVE),
                List.of(
                        SamplingScheme.MONTHLY_HOURLY,
                        SamplingScheme.DAILY_HOURLY,
                        SamplingScheme.DAILY_THIRTY,
                        SamplingScheme.DAILY_FIFTEEN));
        for (List<SamplingScheme> chain : rising) {
            for (int i = 1; i < chain.size(); i++) {
                assertTrue(
                        passed(chain.get(i)) <= passed(chain.get(i - 1)),
                        chain.get(i).words());
            }
        }
    }

    /** Wilson's interval for 1 of 10, worked by hand: centre (0.1 + 0.19207) / 1.38415, half width 0.19326. */
    @Test
    @Tag("derived")
    void theIntervalIsWilsons() {
        double[] interval = NearMisses.wilson(1, 10);
        // Four decimals of a hand calculation.
        assertEquals(0.0179, interval[0], 5e-4);
        assertEquals(0.4042, interval[1], 5e-4);
    }
}
