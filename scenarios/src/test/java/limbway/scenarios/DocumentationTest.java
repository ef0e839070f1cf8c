package limbway.scenarios;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;

import limbway.model.enclosure.Material;
import limbway.scenarios.entry.Form;
import limbway.scenarios.entry.Quantity;
import limbway.scenarios.problem.Wording;
import limbway.scenarios.survey.Coefficient;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** What the documentation of the format says is what the reader does. */
class DocumentationTest {

    private static String text;

    @BeforeAll
    static void readTheDocumentation() throws IOException {
        text = Files.readString(Path.of("../docs/scenario-format.md"));
    }

    @Test
    void theWholeScenarioInItIsSound() {
        Matcher block =
                Pattern.compile("```yaml\n(title:.*?)```", Pattern.DOTALL).matcher(text);
        assertTrue(block.find());
        Reading.Read read = Examples.sound(SmallYard.read(block.group(1)));
        assertEquals("River yard, as built", read.study().title());
        assertEquals(2, read.study().layouts().size());
    }

    @Test
    void everyKeyIsInIt() {
        List<String> missing = new ArrayList<>();
        for (Form form : Form.values()) {
            for (String key : form.keys()) {
                if (!text.contains("`" + key + "`") && !text.contains("{" + key + ":")) {
                    missing.add(form.word() + ": " + key);
                }
            }
        }
        assertEquals(List.of(), missing);
    }

    @Test
    void everyRangeIsInIt() {
        List<String> missing = new ArrayList<>();
        for (Quantity quantity : Quantity.values()) {
            if (!text.contains(quantity.range())) {
                missing.add(quantity + ": " + quantity.range());
            }
        }
        assertEquals(List.of(), missing);
    }

    @Test
    void everyMaterialAndCoefficientIsInIt() {
        for (Material material : Material.values()) {
            assertTrue(text.contains("`" + material.word() + "`"), material.word());
        }
        for (Coefficient coefficient : Coefficient.values()) {
            String range = Wording.number(coefficient.usual().low()) + " to "
                    + Wording.number(coefficient.usual().high());
            String row = "\\| `" + coefficient.key() + "` \\| (-?[\\d.]+) \\| " + Pattern.quote(range) + ".*";
            Matcher matcher = Pattern.compile(row).matcher(text);
            assertTrue(matcher.find(), row);
            assertEquals(coefficient.usual().value(), Double.parseDouble(matcher.group(1)));
        }
    }

    /** Each example of an entry is put where such entries belong, under a name of its own, and must be understood. */
    @Test
    void theExamplesOfEntriesAreUnderstood() {
        String stage = SmallYard.TEXT
                .replace("08:00", "05:00")
                .replace(
                        "  - {platform",
                        "  - {beam: bar-1, from: [1, 1, 2], to: [3, 1, 2], diameter: 0.08, material: timber}\n  - {platform");
        Matcher entry = Pattern.compile("`\\{([a-z]+): ([^,]+)(, .*?)\\}`").matcher(text);
        int tried = 0;
        while (entry.find()) {
            String kind = entry.group(1);
            String list = listOf(kind);
            if (!list.isEmpty()) {
                String name = list.equals("supports") || list.equals("resources") ? "example" : entry.group(2);
                String line = "  - {" + kind + ": " + name + entry.group(3) + "}\n";
                Examples.sound(SmallYard.read(stage.replace(list + ":\n", list + ":\n" + line)));
                tried++;
            }
        }
        assertTrue(tried >= 15, tried + " examples");
    }

    private static String listOf(String kind) {
        return switch (kind) {
            case "pole", "beam", "rope", "trunk", "platform" -> "supports";
            case "food", "water", "shade", "nest", "retreat" -> "resources";
            case "name", "body" -> "animals";
            case "feed" -> "keepers";
            default -> "";
        };
    }
}
