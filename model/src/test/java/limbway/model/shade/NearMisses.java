package limbway.model.shade;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Platform;

/**
 * Question: how often does a look at a few moments of the year pass an enclosure that breaks the rule of two platforms?
 *
 * <p>Only near misses tell: yards that break it for at most 100 hours of the year. The truth is every day at 5 minutes.
 * Answer and command: {@code docs/validation.md}. Give latitude and number of yards.
 */
final class NearMisses {

    private static final int MOST_BREACH_MIN = 100 * 60;
    /** Yards in breach this long by the hour are set aside before they are looked at by five minutes [min]. */
    private static final int HOPELESS_BY_HOUR_MIN = 200 * 60;

    private NearMisses() {}

    /** Prints the table for one latitude. */
    public static void main(String[] args) {
        double latitudeDeg = Double.parseDouble(args[0]);
        int yards = Integer.parseInt(args[1]);
        List<ShadeYear> near = find(latitudeDeg, 1, yards, 2);
        System.out.printf(Locale.ROOT, "latitude %.1f: %d near misses of %d yards%n", latitudeDeg, near.size(), yards);
        for (SamplingScheme scheme : SamplingScheme.values()) {
            int passed = wronglyPassed(scheme, near);
            double[] wilson = wilson(passed, near.size());
            System.out.printf(
                    Locale.ROOT,
                    "| %s | %d | %.1f %% (%.1f to %.1f) |%n",
                    scheme.words(),
                    passed,
                    100.0 * passed / near.size(),
                    100 * wilson[0],
                    100 * wilson[1]);
        }
    }

    /** The near misses among yards with consecutive seeds, each looked at by 5 minutes. */
    static List<ShadeYear> find(double latitudeDeg, int firstSeed, int count, int threads) {
        List<ShadeYear> near = new ArrayList<>();
        for (int seed = firstSeed; seed < firstSeed + count; seed++) {
            Enclosure yard = RandomShadeYard.of(seed, latitudeDeg);
            if (audit(yard, 60, threads).breachMinutes() <= HOPELESS_BY_HOUR_MIN) {
                ShadeYear year = audit(yard, 5, threads);
                if (year.breachMinutes() > 0 && year.breachMinutes() <= MOST_BREACH_MIN) {
                    near.add(year);
                }
            }
        }
        return near;
    }

    static int wronglyPassed(SamplingScheme scheme, List<ShadeYear> near) {
        return (int) near.stream().filter(scheme::passes).count();
    }

    private static ShadeYear audit(Enclosure yard, int stepMin, int threads) {
        return ShadeAudit.of(
                        yard,
                        ShadeSettings.standard(),
                        ShadeRule.standard(),
                        ShadeCalendar.of(yard.site(), 2026, stepMin),
                        yard.platforms().stream().map(Platform::id).toList(),
                        threads,
                        ShadeProgress.NONE)
                .orElseThrow();
    }

    /** 95 % interval of a share (Wilson 1927). */
    static double[] wilson(int hits, int of) {
        double z = 1.959964;
        double share = (double) hits / of;
        double middle = share + z * z / (2 * of);
        double half = z * Math.sqrt(share * (1 - share) / of + z * z / (4.0 * of * of));
        double scale = 1 + z * z / of;
        return new double[] {Math.max(0, (middle - half) / scale), Math.min(1, (middle + half) / scale)};
    }
}
