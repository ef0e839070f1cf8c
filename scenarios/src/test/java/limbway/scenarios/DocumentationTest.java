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
import org.junit.jupiter.api.io.TempDir;

import limbway.model.enclosure.Material;
import limbway.model.parameter.Assumable;
import limbway.scenarios.entry.Form;
import limbway.scenarios.entry.Quantity;
import limbway.scenarios.problem.Wording;
import limbway.scenarios.survey.Coefficient;
import limbway.scenarios.survey.EpwText;

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
                .replace("supports:\n", """
                        panels:
                          - {mesh: side, from: [0, 0], to: [30, 0], top: 2}
                        barriers:
                          - {wall: hut, outline: [[26, 16], [29, 16], [29, 19], [26, 19]], top: 2}
                        hot-wires:
                          - {strand: hot, line: [[26, 16, 2.2], [29, 16, 2.2]]}
                        doors:
                          - {door: way-in, in: hut, from: [26, 16], to: [27, 16], open: always}
                        covers:
                          - {sail: awning, over: deck-1, size: [2, 2], rise: 2, transmittance: 0.2}
                        neighbours:
                          - {building: barn, outline: [[-9, 0], [-4, 0], [-4, 9]], top: 6}
                        bodies:
                          - {body: own, like: juvenile}
                        visitors:
                          - {viewpoint: bench, at: [-1, 1, 1.2], from: "09:00", to: "17:00"}
                        supports:
                        """)
                .replace(
                        "  - {platform",
                        "  - {beam: bar-1, from: [1, 1, 2], to: [3, 1, 2], diameter: 0.08, material: timber}\n  - {platform");
        Matcher entry = Pattern.compile("`\\{([a-z]+): ([^,]+)(, .*?)\\}`").matcher(text);
        int tried = 0;
        while (entry.find()) {
            String kind = entry.group(1);
            String list = listOf(kind, entry.group(3));
            if (!list.isEmpty()) {
                boolean fed = list.equals("keepers") || list.equals("animals");
                String name = fed ? entry.group(2) : "example";
                String line = "  - {" + kind + ": " + name + entry.group(3) + "}\n";
                Examples.sound(SmallYard.read(stage.replace(list + ":\n", list + ":\n" + line)));
                tried++;
            }
        }
        assertTrue(tried >= 40, tried + " examples");
    }

    @Test
    void theExamplesOfHeightsAreUnderstood() {
        Matcher heights = Pattern.compile("`(heights: \\{.*?\\})`").matcher(text);
        int tried = 0;
        while (heights.find()) {
            String sloping = SmallYard.TEXT
                    .replace("obstacles:", heights.group(1) + "\n  obstacles:")
                    .replace("at: [28, 10, 0]", "at: [28, 10]");
            Examples.sound(SmallYard.read(sloping));
            tried++;
        }
        assertEquals(2, tried);
    }

    @Test
    void theExamplesOfSitesAreUnderstood() {
        Matcher sites = Pattern.compile("`(site: \\{.*?\\})`").matcher(text);
        String site = SmallYard.TEXT.lines().skip(1).findFirst().orElseThrow();
        int tried = 0;
        while (sites.find()) {
            Examples.sound(SmallYard.with(site, sites.group(1)));
            tried++;
        }
        assertEquals(3, tried);
    }

    @Test
    void theExamplesOfWeatherAreUnderstood(@TempDir Path folder) throws IOException {
        Files.writeString(folder.resolve("ridge.epw"), EpwText.sound().text());
        Matcher weather = Pattern.compile("`(weather: \\{.*?\\})`").matcher(text);
        int tried = 0;
        while (weather.find()) {
            Reading reading = ScenarioReader.read(
                    "yard.yaml", SmallYard.TEXT + weather.group(1) + "\n", folder, Assumable.nothing());
            assertTrue(Examples.sound(reading).study().weather().isPresent());
            tried++;
        }
        assertEquals(2, tried);
    }

    private static String listOf(String kind, String rest) {
        return switch (kind) {
            case "pole", "beam", "rope", "trunk", "platform", "branch", "ladder", "hammock" -> "supports";
            case "mesh", "net" -> "panels";
            case "wall", "glass" -> "barriers";
            case "strand", "planting" -> "hot-wires";
            case "door" -> "doors";
            case "roof", "sail" -> "covers";
            case "building", "tree" -> "neighbours";
            case "water" -> rest.contains("outline") ? "barriers" : "resources";
            case "food", "shade", "nest", "retreat" -> "resources";
            case "body" -> rest.contains("count") ? "animals" : "bodies";
            case "name" -> "animals";
            case "feed", "bed", "close", "clean", "staff" -> "keepers";
            case "viewpoint" -> "visitors";
            default -> "";
        };
    }
}
