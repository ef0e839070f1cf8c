package limbway.scenarios.problem;

import java.util.List;
import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

import static org.junit.jupiter.api.Assertions.assertEquals;

/** Guesses help where they are near and stay away where they are not. */
class SpellingTest {

    private static final List<String> KEYS = List.of("height", "diameter", "material", "at", "lean");

    @ParameterizedTest
    @CsvSource({
        "heigth, height",
        "hieght, height",
        "Height, height",
        "diametre, diameter",
        "matreial, material",
        "laen, lean"
    })
    void slipsAreRecognised(String written, String meant) {
        assertEquals(Optional.of(meant), Spelling.nearest(written, KEYS));
    }

    @ParameterizedTest
    @CsvSource({"colour", "x", "to", "weight-of-it"})
    void otherWordsAreNot(String written) {
        assertEquals(Optional.empty(), Spelling.nearest(written, KEYS));
    }

    @ParameterizedTest
    @CsvSource({"abc, abc, 0", "abc, acb, 1", "abc, ab, 1", "abc, xabc, 1", "kitten, sitting, 3", "'', abc, 3"})
    void theDistanceCountsSlips(String one, String other, int slips) {
        assertEquals(slips, Spelling.distance(one, other));
        assertEquals(slips, Spelling.distance(other, one));
    }

    @Test
    void theEarlierOfTwoEquallyNearIsTaken() {
        assertEquals(Optional.of("mast-1"), Spelling.nearest("mast-3", List.of("mast-1", "mast-2")));
    }
}
