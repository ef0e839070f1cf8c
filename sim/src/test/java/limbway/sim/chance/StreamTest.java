package limbway.sim.chance;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

class StreamTest {

    private static final int DRAWS = 100_000;

    private final Stream stream = new Chance(7, 1).stream("A", Purpose.PLACE);

    @Test
    void streamsDifferByEveryPartOfTheirMeaning() {
        assertNotEquals(
                stream.key(), new Chance(8, 1).stream("A", Purpose.PLACE).key());
        assertNotEquals(
                stream.key(), new Chance(7, 2).stream("A", Purpose.PLACE).key());
        assertNotEquals(
                stream.key(), new Chance(7, 1).stream("B", Purpose.PLACE).key());
        assertNotEquals(stream.key(), new Chance(7, 1).stream("A", Purpose.WAY).key());
        assertEquals(stream, new Chance(7, 1).stream("A", Purpose.PLACE));
    }

    @Test
    void uniformNumbersFillTheUnitIntervalEvenly() {
        int[] tenths = new int[10];
        for (int n = 0; n < DRAWS; n++) {
            tenths[(int) (10 * stream.uniform(n))]++;
        }
        // five standard errors of a binomial count with p = 0.1: sqrt(100000 * 0.09) = 95
        for (int count : tenths) {
            assertEquals(DRAWS / 10, count, 5 * 95);
        }
    }

    /** With Gumbel draws added, the largest of 0, 0.5, 1 is taken with probabilities exp(v)/sum: 0.1863, 0.3072, 0.5065. */
    @Test
    @Tag("derived")
    void theLargestOfWorthPlusGumbelIsALogitChoice() {
        double[] worth = {0, 0.5, 1};
        int[] taken = new int[3];
        for (int n = 0; n < DRAWS; n++) {
            int best = 0;
            double most = Double.NEGATIVE_INFINITY;
            for (int place = 0; place < 3; place++) {
                double total = worth[place] + stream.gumbel(n, Name.key("place " + place));
                if (total > most) {
                    most = total;
                    best = place;
                }
            }
            taken[best]++;
        }
        double[] expected = {0.18632, 0.30720, 0.50648};
        for (int place = 0; place < 3; place++) {
            // four standard errors of a share of 100000 draws are at most 0.0063; a wrong scale moves the shares by
            // more
            assertEquals(expected[place], (double) taken[place] / DRAWS, 0.0063);
        }
    }

    @Test
    void aPlaceKeepsItsDrawWhateverOtherPlacesThereAre() {
        double before = stream.gumbel(5, Name.key("oak"));
        assertTrue(stream.gumbel(5, Name.key("elm")) != before);
        assertEquals(before, stream.gumbel(5, Name.key("oak")));
    }

    @Test
    void theBoundOnANumberIsNeverBelowItAndMostlyClose() {
        Stream stream = new Chance(3, 1).stream("A", Purpose.PLACE);
        int close = 0;
        for (int decision = 0; decision < 100_000; decision++) {
            double over = stream.gumbelAtMost(decision, 7) - stream.gumbel(decision, 7);
            assertTrue(over >= 0, "decision " + decision);
            close += over < 0.01 ? 1 : 0;
        }
        // a step of 1/4096 moves the number by less than 0.01 but for the lowest and the highest three per cent
        assertTrue(close > 90_000, "close " + close);
        assertTrue(GumbelBound.above(1 - 0x1p-53) >= -StrictMath.log(-StrictMath.log(1 - 0x1p-53)));
    }
}
