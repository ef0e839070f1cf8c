package limbway.sim.experiment;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;

import org.junit.jupiter.api.Test;

import limbway.model.parameter.Assumable;
import limbway.model.parameter.Parameter;
import limbway.model.parameter.Situation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Situations set numbers that there are, within their ranges, and are documented as they are. */
class SituationsTest {

    private static final Assumable ASSUMABLE =
            new Assumable(Assumptions.standard().parameters(), Situations.all());

    @Test
    void everyValueIsThatOfAParameterAndWithinItsRange() {
        for (Situation situation : Situations.all()) {
            situation.values().forEach((name, value) -> {
                Parameter parameter = ASSUMABLE.parameter(name).orElseThrow(() -> new AssertionError(name));
                assertTrue(value >= parameter.low() && value <= parameter.high(), situation.name() + ": " + name);
                assertNotEquals(parameter.value(), value, situation.name() + ": " + name + " is the default");
            });
        }
    }

    @Test
    void theyDifferAndTheModelTakesEach() {
        List<List<Parameter>> settled = Situations.all().stream()
                .map(situation ->
                        Assumptions.standard().with(situation.values()).parameters())
                .toList();
        assertEquals(Situations.all().size(), settled.stream().distinct().count());
        assertEquals(Assumptions.standard().parameters(), settled.get(0));
        assertEquals(
                Situations.all().size(),
                Situations.all().stream().map(Situation::name).distinct().count());
    }

    @Test
    void theDocumentationOfTheFormatListsExactlyThese() throws IOException {
        List<String> documented = Files.readString(Path.of("../docs/scenario-format.md"))
                .lines()
                .dropWhile(line -> !line.startsWith("| situation |"))
                .skip(2)
                .takeWhile(line -> line.startsWith("|"))
                .toList();
        assertEquals(Situations.all().stream().map(SituationsTest::row).toList(), documented);
    }

    private static String row(Situation situation) {
        Map<String, Double> values = new TreeMap<>(situation.values());
        String told = values.entrySet().stream()
                .map(entry -> "`" + entry.getKey() + "` " + entry.getValue())
                .collect(Collectors.joining(", "));
        return "| `" + situation.name() + "` | " + situation.meaning() + " | " + (told.isEmpty() ? "none" : told)
                + " |";
    }
}
