package limbway.reports.replay;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Base64;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import org.junit.jupiter.api.Test;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

class BundleTest {

    private static final Path RESOURCES = Path.of("src/main/resources/limbway/reports/replay");
    private static final Pattern IMPORT =
            Pattern.compile("(?:\\bfrom|^import|[;\\s]import)\\s*['\"]([^'\"\\n]+)['\"]", Pattern.MULTILINE);

    private static Map<String, String> scripts() throws IOException {
        String markup = Bundle.markup();
        String map = markup.substring(markup.indexOf('{'), markup.indexOf("</script>"));
        Map<String, String> scripts = new TreeMap<>();
        JsonNode imports = new ObjectMapper().readTree(map).get("imports");
        for (Map.Entry<String, JsonNode> entry : imports.properties()) {
            String[] parts = entry.getValue().asText().split(",", 2);
            assertEquals("data:text/javascript;base64", parts[0]);
            scripts.put(entry.getKey(), new String(Base64.getDecoder().decode(parts[1]), StandardCharsets.UTF_8));
        }
        return scripts;
    }

    /** A data: URL has no neighbours and no server: whatever is imported must have a name in the map. */
    @Test
    void everyImportOfEveryScriptHasANameInTheMap() throws IOException {
        Map<String, String> scripts = scripts();
        int imports = 0;
        for (Map.Entry<String, String> script : scripts.entrySet()) {
            // comments of a library may show how it is imported
            Matcher name = IMPORT.matcher(script.getValue().replaceAll("(?s)/\\*.*?\\*/", ""));
            while (name.find()) {
                assertTrue(scripts.containsKey(name.group(1)), script.getKey() + " imports " + name.group(1));
                imports++;
            }
        }
        assertTrue(imports >= 3, "imports = " + imports);
        assertTrue(scripts.containsKey("limbway/replay"));
    }

    @Test
    void theListNamesEveryScriptThatLiesBesideItOnce() throws IOException {
        List<String> listed = Files.readAllLines(RESOURCES.resolve("modules.txt"));
        List<String> found = new ArrayList<>();
        try (Stream<Path> files = Files.list(RESOURCES)) {
            files.map(file -> file.getFileName().toString())
                    .filter(name -> name.endsWith(".js"))
                    .forEach(name -> found.add(name.substring(0, name.length() - 3)));
        }
        assertEquals(new TreeSet<>(found), new TreeSet<>(listed));
        assertEquals(found.size(), listed.size());
    }

    @Test
    void theLicenceOfTheLibraryIsCarriedWithIt() throws IOException {
        assertTrue(scripts().get("three").contains("Permission is hereby granted, free of charge"));
    }

    @Test
    void theMarkupIsTheSameAtEveryCall() {
        assertEquals(Bundle.markup(), Bundle.markup());
    }
}
