package limbway.sim.chance;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import limbway.model.route.ChoiceSharpness;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

/**
 * Choice among costs 10, 12 and 15 with sharpness 1/2: shares proportional to exp(-5), exp(-6) and exp(-7.5). The largest
 * of a worth plus a Gumbel draw is a logit choice (Luce and Suppes 1965; Yellott 1977, doi
 * 10.1016/0022-2496(77)90026-8, from memory).
 */
class LogitTest {

    private static final int DRAWS = 200_000;
    private static final double[] COST = {10, 12, 15};
    private static final double[] SHARES = {0.68967, 0.25372, 0.05661};

    private static int[] taken(double theta) {
        Stream stream = new Chance(21, 1).stream("A", Purpose.PLACE);
        long[] keys = {Name.key("hatch"), Name.key("tray"), Name.key("log")};
        int[] taken = new int[COST.length];
        for (int n = 0; n < DRAWS; n++) {
            int best = 0;
            double most = Double.NEGATIVE_INFINITY;
            for (int place = 0; place < COST.length; place++) {
                double total = -theta * COST[place] + stream.gumbel(n, keys[place]);
                if (total > most) {
                    most = total;
                    best = place;
                }
            }
            taken[best]++;
        }
        return taken;
    }

    /** Each share within four standard errors of a binomial share; of 200,000 draws at most 0.0041. */
    private static boolean agrees(int[] taken) {
        boolean all = true;
        for (int place = 0; place < COST.length; place++) {
            double error = StrictMath.sqrt(SHARES[place] * (1 - SHARES[place]) / DRAWS);
            all &= Math.abs((double) taken[place] / DRAWS - SHARES[place]) < 4 * error;
        }
        return all;
    }

    @Test
    @Tag("derived")
    void placesAreTakenInTheSharesOfTheLogit() {
        assertTrue(agrees(taken(0.5)));
        assertFalse(agrees(taken(0.52)), "a sharpness wrong by 4 % must be found");
    }

    /** Of two ways the same: 0.68967 / (0.68967 + 0.25372). Sharpness counts relative cost: 5 times 2/10 is 1/2 times 2. */
    @Test
    @Tag("derived")
    void twoWaysAreTakenInTheSameShares() {
        assertEquals(
                SHARES[0] / (SHARES[0] + SHARES[1]),
                new ChoiceSharpness(0.5 * COST[0]).shareOfFirst(10_000, 12_000),
                1e-5);
        assertEquals(
                SHARES[0] / (SHARES[0] + SHARES[2]),
                new ChoiceSharpness(0.5 * COST[0]).shareOfFirst(10_000, 15_000),
                1e-5);
    }
}
