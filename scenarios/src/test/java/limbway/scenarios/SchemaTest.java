package limbway.scenarios;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.stream.StreamSupport;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.Error;
import com.networknt.schema.InputFormat;
import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

import limbway.model.body.BodyCatalogue;
import limbway.model.enclosure.Material;
import limbway.scenarios.entry.Form;
import limbway.scenarios.entry.Quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** The schema that editors use and the reader accept the same keys, ranges and words. */
class SchemaTest {

    private static final JsonNode JSON = json();
    private static final Schema SCHEMA = SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12)
            .getSchema(JSON);

    private static JsonNode json() {
        try (InputStream stream = ScenarioReader.class.getResourceAsStream("scenario.schema.json")) {
            return new ObjectMapper().readTree(stream);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    private static List<Error> errors(String yaml) {
        return SCHEMA.validate(yaml, InputFormat.YAML);
    }

    @Test
    void everyExampleIsValid() {
        for (String example : Examples.ALL) {
            assertEquals(List.of(), errors(Examples.text(example)), example);
        }
    }

    @Test
    void theSmallScenariosAreValid() {
        assertEquals(List.of(), errors(SmallShade.TEXT));
        assertEquals(List.of(), errors(SmallYard.TEXT));
        assertEquals(List.of(), errors(SmallCage.TEXT));
    }

    /** One list from the reader's forms, one from the schema, entry by entry. */
    @Test
    void readerAndSchemaKnowTheSameKeys() {
        Map<String, TreeSet<String>> ofReader = new TreeMap<>();
        Map<String, TreeSet<String>> ofSchema = new TreeMap<>();
        for (Form form : Form.values()) {
            JsonNode definition = form == Form.SCENARIO ? JSON : JSON.at("/$defs/" + definition(form));
            ofReader.put(definition(form), new TreeSet<>(form.keys()));
            ofReader.put(definition(form) + " must have", new TreeSet<>(form.required()));
            ofSchema.put(definition(form), new TreeSet<>(keysOf(definition.path("properties"))));
            ofSchema.put(definition(form) + " must have", new TreeSet<>(textsOf(definition.path("required"))));
        }
        assertEquals(ofReader, ofSchema);
    }

    @Test
    void everyObjectOfTheSchemaBelongsToAFormOfTheReader() {
        List<String> objects = new ArrayList<>();
        JSON.path("$defs").properties().forEach(definition -> {
            if (definition.getValue().path("type").asText().equals("object")) {
                objects.add(definition.getKey());
            }
        });
        List<String> forms = new ArrayList<>();
        for (Form form : Form.values()) {
            if (form != Form.SCENARIO) {
                forms.add(definition(form));
            }
        }
        assertEquals(new TreeSet<>(forms), new TreeSet<>(objects));
    }

    @ParameterizedTest
    @EnumSource(Quantity.class)
    void readerAndSchemaKnowTheSameRanges(Quantity quantity) {
        String name =
                "/$defs/quantity-" + quantity.name().toLowerCase(Locale.ROOT).replace('_', '-');
        JsonNode definition = JSON.at(name);
        assertTrue(definition.isObject(), name);
        if (quantity.unit().equals("%")) {
            return; // a percentage is text, which JSON Schema gives no range
        }
        JsonNode number = definition.has("anyOf") ? definition.at("/anyOf/0") : definition;
        assertEquals(quantity.least(), number.path("minimum").asDouble());
        assertEquals(quantity.most(), number.path("maximum").asDouble());
        assertTrue(definition.path("description").asText().length() > 5);
    }

    @Test
    void readerAndSchemaKnowTheSameWords() {
        List<String> materials = new ArrayList<>();
        for (Material material : Material.values()) {
            materials.add(material.word());
        }
        assertEquals(materials, textsOf(JSON.at("/$defs/material/enum")));
        assertEquals(BodyCatalogue.standard().names(), textsOf(JSON.at("/$defs/catalogue-body/enum")));
    }

    @Test
    void everyKeyIsDescribed() {
        for (Form form : Form.values()) {
            JsonNode definition = form == Form.SCENARIO ? JSON : JSON.at("/$defs/" + definition(form));
            assertFalse(definition.path("description").asText().isEmpty(), form.word());
            definition.path("properties").properties().forEach(property -> {
                String reference = property.getValue().path("$ref").asText().replace("#", "");
                JsonNode target = reference.isEmpty() ? property.getValue() : JSON.at(reference);
                assertTrue(
                        property.getValue().has("description") || target.has("description"),
                        form.word() + ": " + property.getKey());
            });
        }
    }

    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "title: Small yard | titel: Small yard",
                "latitude: 1.5 | latitude: 91",
                "diameter: 0.05 | diameter: 50 mm",
                "diameter: 0.05 | diameter: 90",
                "sag: 5 % | sag: 5",
                "pole: mast-1 | pol: mast-1",
                "at: [6, 5] | at: [6]",
                "material: timber | material: galvanized steel",
                "size: [2.0, 1.5] | size: 2.0",
                "portions: 4 at once | portions: many",
                "on: deck-1 | on: somewhere on deck-1",
                "on: deck-1 | on: 'deck-1, at: [1, 1, 1]'",
                "body: adult female | body: adult femal",
                "body: adult female | 'body: adult female, follows: []'",
                "at: 08:00 | at: 25:00",
                "energy-kj: 2400 | energy-kj: none",
                "energy-kj: 2400 | energy: 2400",
                "name: high | name: as drawn",
                "{move: hatch | {moved: hatch"
            })
    void mistakesOfStructureAreFoundByBoth(String piece, String by) {
        isFoundByBoth(SmallYard.TEXT, piece, by);
    }

    private static void isFoundByBoth(String sound, String piece, String by) {
        String text = sound.replace(piece, by);
        assertFalse(text.equals(sound), piece);
        assertFalse(errors(text).isEmpty(), "the schema accepts " + by);
        assertInstanceOf(Reading.Refused.class, SmallYard.read(text), "the reader accepts " + by);
    }

    /** Two forms may share a word, as water to drink and water that stops; each has a definition of its own. */
    private static String definition(Form form) {
        return form.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "length: 10.6 m | length: long",
                "length: 10.6 m | 'length: 10.6 m, sag: 5 %'",
                "stiffness: 9000 N/m | stiffness: 9 kN/m",
                "bears: 120 | bears: 120000",
                "top: 4} | tops: 4}",
                "top: 4} | 'top: 4, height: 4}'",
                "opening: 0.04 | opening: 0.6",
                "'height: 4.5, ' | ''",
                "'line: [[0, 10], [20, 10]]' | 'line: [[0, 10]]'",
                "depth: 1.2 | depth: -1",
                "'[20, 9.8, 2.8]' | '[20, 9.8]'",
                "clearance: 0.3 | clearance: 30",
                "', open: never' | ''",
                "open: never | open: sometimes",
                "open: never | open: '08:00'",
                "like: flanged male | like: flanged males",
                "like: flanged male | leap: 0",
                "gap-reach: 1.6 | gap-reach: 16",
                "changes: [] | 'changes: [{alter: side, open: []}]'",
                "changes: [] | 'changes: [{add: {mesh: m, from: [1, 1], to: [2, 2]}}]'"
            })
    void mistakesOfStructureInACageAreFoundByBoth(String piece, String by) {
        isFoundByBoth(SmallCage.TEXT, piece, by);
    }

    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "', transmittance: 20 %' | ''",
                "transmittance: 20 % | transmittance: 20",
                "transmittance: 20 % | transmittance: 120 %",
                "rise: 2.2 | 'rise: 2.2, transmittance: 0.3'",
                "rise: 2.2 | height: 2.2",
                "', rise: 2.2' | ''",
                "'shift: [0.5, -0.5]' | shift: 0.5",
                "height: 3.5 | 'height: 3.5, size: [2, 2]'",
                "'leaves: {from: \"04-15\", to: \"10-31\"}' | leaves: summer",
                "to: \"10-31\" | to: October",
                "'crown-radius: 2, crown-base: 2, ' | ''",
                "leaf-area-index: 5 | leaf-area-index: 50",
                "top: 150 | top: 1500",
                "', crown-base: 3}' | '}'",
                "changes: [] | 'changes: [{alter: oak, leaves: {from: \"04-15\"}}]'",
                "changes: [] | 'changes: [{add: {sail: s, over: deck, size: [1, 1], rise: 1}}]'"
            })
    void mistakesOfStructureInShadeAreFoundByBoth(String piece, String by) {
        isFoundByBoth(SmallShade.TEXT, piece, by);
    }

    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "monthly-max: [30, | monthly-max: [",
                "monthly-max: [30, | monthly-max: [86,",
                "wind: 1.2 | wind: 40",
                "wind: 1.2 | wind: 4 km/h",
                "turbidity: 4 | haze: 4",
                "weather: { | 'weather: {epw: w.epw, '",
                "elevation: 20 | elevation: 12 km",
                "horizon: [[0, 2]] | horizon: [[0, 95]]",
                "horizon: [[0, 2]] | horizon: [0, 2]"
            })
    void mistakesOfStructureInSiteAndWeatherAreFoundByBoth(String piece, String by) {
        String sound = SmallYard.TEXT.replace("Kuching}", "Kuching, elevation: 20, horizon: [[0, 2]]}") + """
                weather: {monthly-max: [30, 30, 31, 32, 32, 32, 32, 32, 31, 31, 31, 30], \
                monthly-min: [23, 23, 23, 24, 24, 24, 23, 23, 23, 23, 23, 23], wind: 1.2, turbidity: 4}
                """;
        assertEquals(List.of(), errors(sound));
        isFoundByBoth(sound, piece, by);
    }

    @ParameterizedTest(name = "{0} -> {1}")
    @CsvSource(
            delimiter = '|',
            value = {
                "bedding: 20 % | bedding: 120 %",
                "bedding: 0.5} | bedding: 1.5}",
                "'portions: 1}' | 'portions: 1, bedding: 1}'",
                "given: browse | given: thrown",
                "given: puzzle, | ",
                "handling-min: 3 | handling-min: 3 h",
                "'\"15:30\", bedding: 1}' | '\"15:30\"}'",
                "'to: \"09:30\"}' | 'to: \"25:00\"}'",
                "'clean: nest-1, from' | 'clean: nest-1, at'",
                "'at: [0, 8], from: \"07:30\", to: \"16:30\"' | 'at: [0], from: \"07:30\", to: \"16:30\"'",
                "'[12, -2, 1.6]' | '[12, -2]'",
                "viewpoint: gallery | viewpoint: the gallery",
                "situation: moved in lately | situation: []",
                "worth.bedding: 0.2 | worth.bedding: [0.2]",
                "'{stop: nest-1}' | '{stop: nest-1, at: \"08:00\"}'"
            })
    void mistakesOfStructureInAVisitorsYardAreFoundByBoth(String piece, String by) {
        String sound = Examples.text("visitors-yard.yaml");
        String text = sound.replace(piece, by == null ? "" : by);
        assertFalse(text.equals(sound), piece);
        assertFalse(errors(text).isEmpty(), "the schema accepts " + by);
        assertInstanceOf(
                Reading.Refused.class,
                ScenarioReader.read("yard.yaml", text, Examples.FOLDER, Examples.ASSUMABLE),
                "the reader accepts " + by);
    }

    private static List<String> keysOf(JsonNode object) {
        List<String> keys = new ArrayList<>();
        object.fieldNames().forEachRemaining(keys::add);
        return keys;
    }

    private static List<String> textsOf(JsonNode array) {
        return StreamSupport.stream(array.spliterator(), false)
                .map(JsonNode::asText)
                .toList();
    }
}
