package limbway.reports.browser;

import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import org.junit.jupiter.api.Test;

import limbway.reports.browser.Words.Field;
import limbway.scenarios.entry.Form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

/** Which texts of a scenario may hold what: every key of every kind of entry that the reader knows is tried. */
class FreeTextTest {

    private static final Words EVERYTHING = Words.of("everything.yaml");

    /** A survey and its parts are read from a table; none of their keys is shown. */
    private static final Set<Form> OF_TABLES = Set.of(Form.SURVEY, Form.COLUMNS, Form.ALLOMETRY);

    @Test
    void theScenarioHasAnEntryOfEveryKind() {
        assertEquals("", EVERYTHING.refusal().orElse(""));
        for (Form form : Form.values()) {
            assertTrue(OF_TABLES.contains(form) || EVERYTHING.count(form) > 0, form + " stands not in everything.yaml");
        }
    }

    /**
     * A key that is new in the reader and takes any text turns up here; then small.yaml needs it too. Names of other things take
     * letters of any script and nothing else.
     */
    @Test
    void onlyTheseTextsMayHoldMarkup() {
        List<Field> words = taking(allKeys(), Hostile.RIGHT_TO_LEFT_WORD);
        assertTrue(
                names(words).containsAll(List.of("pole.pole", "food.food", "body.body", "viewpoint.viewpoint")),
                words.toString());
        assertEquals(new TreeSet<>(names(HostileYard.FREE)), new TreeSet<>(names(taking(words, Hostile.MARKUP))));
    }

    @Test
    void thePagesThatAreAttackedHoldEveryTextThatMayHoldMarkup() {
        Words small = Words.of("small.yaml");
        for (Field field : HostileYard.FREE) {
            assertTrue(
                    (small.count(field.form()) > 0 && small.says(field, 0)) || small.says(field, 1), field.toString());
        }
    }

    @Test
    void noKeyIsTakenThatTheReaderDoesNotKnow() {
        for (Form form : Form.values()) {
            if (!OF_TABLES.contains(form)) {
                assertFalse(
                        scenario(form)
                                .with(new Field(form, Hostile.MARKUP), 0, "x")
                                .isRead(),
                        form.name());
            }
        }
    }

    private static Set<String> names(List<Field> fields) {
        return fields.stream().map(Field::toString).collect(Collectors.toSet());
    }

    private static List<Field> allKeys() {
        List<Field> fields = new ArrayList<>();
        for (Form form : Form.values()) {
            form.keys().stream()
                    .filter(key -> !OF_TABLES.contains(form))
                    .forEach(key -> fields.add(new Field(form, key)));
        }
        return fields;
    }

    /** Those that take a text, alone or as the only one in a list. */
    private static List<Field> taking(List<Field> fields, String text) {
        return fields.stream()
                .filter(field -> {
                    Words scenario = scenario(field.form());
                    return scenario.with(field, 0, text).isRead()
                            || (scenario.isList(field, 0)
                                    && scenario.with(
                                                    field,
                                                    0,
                                                    JsonNodeFactory.instance
                                                            .arrayNode()
                                                            .add(text))
                                            .isRead());
                })
                .toList();
    }

    /** Without other layouts where the kind does not stand in them: they take time to read. */
    private static Words scenario(Form form) {
        Words base = EVERYTHING.without("sweep").without("variants");
        return base.count(form) > 0
                ? base
                : EVERYTHING.without("sweep").count(form) > 0 ? EVERYTHING.without("sweep") : EVERYTHING;
    }
}
