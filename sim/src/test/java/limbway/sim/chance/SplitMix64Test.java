package limbway.sim.chance;

import java.util.SplittableRandom;

import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;

import static org.junit.jupiter.api.Assertions.assertEquals;

/** SplitMix64 read by counter against java.util.SplittableRandom, which implements it in sequence. */
class SplitMix64Test {

    @Test
    @Tag("pinned")
    void theFirstNumbersAreThoseOfSplittableRandom() {
        assertEquals(0xe220a8397b1dcdafL, SplitMix64.at(0, 0));
        assertEquals(0x6e789e6aa1b965f4L, SplitMix64.at(0, 1));
        assertEquals(6457827717110365317L, SplitMix64.at(1234567, 0));
        assertEquals(3203168211198807973L, SplitMix64.at(1234567, 1));
    }

    @Test
    void everyPlaceOfTheStreamCanBeReadWithoutTheOnesBefore() {
        SplittableRandom sequence = new SplittableRandom(-99);
        for (int n = 0; n < 1000; n++) {
            assertEquals(sequence.nextLong(), SplitMix64.at(-99, n));
        }
    }

    /** FNV-1a of the one byte 0x61 is af63dc4c8601ec8c (draft-eastlake-fnv); the upper byte of 'a' is 0: once more times 100000001b3. */
    @Test
    @Tag("derived")
    void aNameHasTheSameNumberEverywhere() {
        assertEquals(0x89be207b544f1e4L, Name.key("a"));
        assertEquals(0xcbf29ce484222325L, Name.key(""));
    }
}
