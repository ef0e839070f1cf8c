package limbway.reports.handbook;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

import org.junit.jupiter.api.Test;

import limbway.model.parameter.Parameter;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** {@code docs/parameters.md} says what the code says; with {@code -Dlimbway.refresh-docs=true} it is written anew. */
class ParameterTableTest {

    private static final Path PAGE = Path.of("..", "docs", "parameters.md");

    @Test
    void thePageIsWhatTheCodeSays() throws IOException {
        if (Boolean.getBoolean("limbway.refresh-docs")) {
            Files.writeString(PAGE, ParameterTable.render());
        }
        assertEquals(
                ParameterTable.render(),
                Files.readString(PAGE),
                "docs/parameters.md differs from the code; refresh it with: mvn -B -ntp verify -pl reports -am"
                        + " -Dlimbway.refresh-docs=true -Dtest=ParameterTableTest -Dsurefire.failIfNoSpecifiedTests=false");
    }

    @Test
    void everyNameIsUsedOnce() {
        List<String> names =
                ParameterTable.parameters().stream().map(Parameter::name).toList();
        assertEquals(names.stream().distinct().toList(), names);
    }

    @Test
    void everyDefaultLiesInItsRange() {
        for (Parameter p : ParameterTable.parameters()) {
            assertTrue(p.low() <= p.value() && p.value() <= p.high(), p::toString);
        }
    }
}
