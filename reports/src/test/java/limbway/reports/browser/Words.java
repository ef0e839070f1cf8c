package limbway.reports.browser;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import com.fasterxml.jackson.dataformat.yaml.YAMLMapper;

import limbway.model.parameter.Assumable;
import limbway.scenarios.Reading;
import limbway.scenarios.ScenarioReader;
import limbway.scenarios.entry.Form;
import limbway.sim.experiment.Assumptions;
import limbway.sim.experiment.Situations;

/** A scenario whose texts can be replaced by others, wherever its entries stand. */
record Words(ObjectNode root) {

    /** A key of one kind of entry. */
    record Field(Form form, String key) {
        @Override
        public String toString() {
            return form.name().toLowerCase(java.util.Locale.ROOT) + "." + key;
        }
    }

    /** One of the scenarios that lie beside this class. */
    static Words of(String resource) {
        try (InputStream in = Words.class.getResourceAsStream(resource)) {
            return new Words((ObjectNode) new YAMLMapper().readTree(in));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** How many entries of a kind there are. */
    int count(Form form) {
        return entries(form, root, "").size();
    }

    /** Whether the n-th entry of a kind says anything under a key. */
    boolean says(Field field, int n) {
        return entries(field.form(), root, "").get(n).has(field.key());
    }

    /** What the n-th entry of a kind says under a key. */
    String text(Field field, int n) {
        return entries(field.form(), root, "").get(n).path(field.key()).asText();
    }

    /** Whether the n-th entry of a kind has a list under a key. */
    boolean isList(Field field, int n) {
        return entries(field.form(), root, "").get(n).path(field.key()).isArray();
    }

    /** The same without one part of the whole. */
    Words without(String part) {
        return new Words(root.deepCopy().<ObjectNode>without(part));
    }

    /** The same with one value replaced; where other values name the old one, they name the new one. */
    Words with(Field field, int n, JsonNode value) {
        Words copy = new Words(root.deepCopy());
        ObjectNode entry = entries(field.form(), copy.root, "").get(n);
        JsonNode old = entry.path(field.key());
        entry.set(field.key(), value);
        if (old.isTextual() && value.isTextual()) {
            rename(copy.root, old.asText(), value.asText());
        }
        return copy;
    }

    Words with(Field field, int n, String value) {
        return with(field, n, TextNode.valueOf(value));
    }

    String yaml() {
        try {
            // JSON is YAML, and escapes what is not printable
            return new ObjectMapper().writerWithDefaultPrettyPrinter().writeValueAsString(root);
        } catch (JsonProcessingException e) {
            throw new UncheckedIOException(e);
        }
    }

    boolean isRead() {
        return read() instanceof Reading.Read;
    }

    private Reading read() {
        Assumable assumable = new Assumable(Assumptions.standard().parameters(), Situations.all());
        return ScenarioReader.read("words.yaml", yaml(), Path.of("."), assumable);
    }

    /** What the reader has against it; empty if it was read. */
    Optional<String> refusal() {
        return read() instanceof Reading.Refused refused ? Optional.of(refused.toString()) : Optional.empty();
    }

    /** An entry is of a kind if it has all keys that this kind must have and no others than it may have. */
    private static List<ObjectNode> entries(Form form, JsonNode node, String under) {
        List<ObjectNode> found = new ArrayList<>();
        if (node instanceof ObjectNode object) {
            List<String> keys = new ArrayList<>();
            object.fieldNames().forEachRemaining(keys::add);
            boolean fits = form.keys().containsAll(keys) && keys.containsAll(form.required());
            if (fits && (!form.required().isEmpty() || under.equals(form.word()))) {
                found.add(object);
            }
            keys.forEach(key -> found.addAll(entries(form, object.get(key), key)));
        } else if (node instanceof ArrayNode list) {
            list.forEach(item -> found.addAll(entries(form, item, under)));
        }
        return found;
    }

    private static void rename(JsonNode node, String old, String by) {
        if (node instanceof ObjectNode object) {
            List<String> keys = new ArrayList<>();
            object.fieldNames().forEachRemaining(keys::add);
            keys.forEach(key -> {
                rename(object.get(key), old, by);
                renamed(object.get(key), old, by).ifPresent(text -> object.set(key, text));
            });
        } else if (node instanceof ArrayNode list) {
            for (int i = 0; i < list.size(); i++) {
                rename(list.get(i), old, by);
                TextNode text = renamed(list.get(i), old, by).orElse(null);
                if (text != null) {
                    list.set(i, text);
                }
            }
        }
    }

    private static Optional<TextNode> renamed(JsonNode node, String old, String by) {
        if (!node.isTextual()) {
            return Optional.empty();
        }
        String text = node.asText();
        boolean named = text.equals(old) || text.startsWith(old + " ");
        return named ? Optional.of(TextNode.valueOf(by + text.substring(old.length()))) : Optional.empty();
    }
}
