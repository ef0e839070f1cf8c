package limbway.model.shade;

import java.time.ZoneOffset;
import java.util.List;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Platform;

import static org.junit.jupiter.api.Assertions.assertEquals;

class BruteForceTest {

    private static final ShadeCalendar HOURLY = new ShadeCalendar(2026, 60, ZoneOffset.ofHours(8));

    private static ShadeYear audit(Enclosure yard, int threads) {
        List<String> names = yard.platforms().stream().map(Platform::id).toList();
        return ShadeAudit.of(
                        yard,
                        ShadeSettings.standard(),
                        ShadeRule.standard(),
                        HOURLY,
                        names,
                        threads,
                        ShadeProgress.NONE)
                .orElseThrow();
    }

    @ParameterizedTest
    @ValueSource(longs = {1, 2, 3})
    void theAuditFindsWhatAskingEveryCasterFinds(long seed) {
        Enclosure yard = CrowdedYard.of(10, 300, seed);
        ShadeYear year = audit(yard, 2);
        BruteForce every = new BruteForce(yard, ShadeRule.standard(), HOURLY);
        for (int day = 0; day < 365; day += 13) {
            int[] counts = every.shadedCounts(day);
            for (int slot = 0; slot < counts.length; slot++) {
                assertEquals(counts[slot] >= 0, year.isSunUp(day, slot));
                if (counts[slot] >= 0) {
                    assertEquals(counts[slot], year.shadedCount(day, slot), "day " + day + ", slot " + slot);
                }
            }
        }
    }

    @Test
    void threadsDoNotChangeTheYear() {
        Enclosure yard = CrowdedYard.of(6, 100, 4);
        ShadeYear one = audit(yard, 1);
        ShadeYear three = audit(yard, 3);
        for (int day = 0; day < 365; day++) {
            for (int slot = 0; slot < 24; slot++) {
                assertEquals(one.isSunUp(day, slot), three.isSunUp(day, slot));
                for (int p = 0; p < 6; p++) {
                    assertEquals(one.isShaded(p, day, slot), three.isShaded(p, day, slot));
                }
            }
        }
    }
}
