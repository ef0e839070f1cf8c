package limbway.scenarios.format;

import java.util.Optional;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

import static org.junit.jupiter.api.Assertions.assertEquals;

/** Numbers as keepers write them. */
class NumberTextTest {

    @ParameterizedTest
    @CsvSource({
        "5.5, 5.5, ''",
        "5.5 m, 5.5, m",
        "5m, 5, m",
        "5 %, 5, %",
        "-3, -3, ''",
        "+.5, 0.5, ''",
        "1e3, 1000, ''",
        "8 °, 8, °",
        "007, 7, ''"
    })
    void digitsAndAUnitAreRead(String text, double value, String unit) {
        assertEquals(Optional.of(new NumberText(value, unit)), NumberText.of(text));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "NaN",
                ".nan",
                "Infinity",
                "1e400",
                "-1e999",
                "0x10",
                "1_000",
                "5,5",
                "5 5",
                "five",
                ".",
                "5 m m",
                "١"
            })
    void anythingElseIsNoNumber(String text) {
        assertEquals(Optional.empty(), NumberText.of(text));
    }

    @Test
    void aNumberOfAThousandDigitsIsNone() {
        assertEquals(Optional.empty(), NumberText.of("1".repeat(1000)));
    }
}
