package limbway.scenarios.format;

import java.io.IOException;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonToken;
import com.fasterxml.jackson.dataformat.yaml.YAMLFactory;
import com.fasterxml.jackson.dataformat.yaml.YAMLParser;
import org.yaml.snakeyaml.LoaderOptions;

import limbway.scenarios.problem.Place;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Reads YAML into a tree whose every word knows its place. */
public final class YamlTree {

    /** Deepest nesting that is read; the format itself needs seven. */
    private static final int MAX_DEPTH = 20;

    /** Thrown to leave a tree that cannot be read on; never leaves this class. */
    private static final class Stop extends Exception {
        final transient Problem problem;

        Stop(Problem problem) {
            super(problem.headline());
            this.problem = problem;
        }
    }

    private final String file;
    private final String text;
    private final Problems problems;
    private final YAMLParser parser;
    private boolean sound = true;

    private YamlTree(String file, String text, YAMLParser parser, Problems problems) {
        this.file = file;
        this.text = text;
        this.parser = parser;
        this.problems = problems;
    }

    /**
     * Reads one document.
     *
     * @param file name for messages
     * @param text printable text, see {@link SourceText}
     * @param problems where mistakes go
     * @return its root, or empty if it is no YAML or uses what a scenario may not use
     */
    public static Optional<Node> parse(String file, String text, Problems problems) {
        LoaderOptions options = new LoaderOptions();
        options.setCodePointLimit(SourceText.MAX_BYTES + 1);
        YAMLFactory factory = YAMLFactory.builder().loaderOptions(options).build();
        try (YAMLParser parser = factory.createParser(text)) {
            YamlTree tree = new YamlTree(file, text, parser, problems);
            Optional<Node> root = tree.document();
            return tree.sound ? root : Optional.empty();
        } catch (Stop stop) {
            problems.add(stop.problem);
        } catch (IOException e) {
            problems.add(SyntaxTrouble.of(Place.startOf(file), text, e));
        }
        return Optional.empty();
    }

    private Optional<Node> document() throws Stop {
        JsonToken first = next();
        if (first == null) {
            throw new Stop(Problem.at(Place.startOf(file), "this scenario is empty")
                    .mend("start with a line such as: title: River yard"));
        }
        Node root = node(first, 0);
        if (next() != null) {
            throw new Stop(Problem.at(here(), "a second document begins here")
                    .allowed("one scenario in a file")
                    .mend("move it into a file of its own, or take out the line with three dashes"));
        }
        return Optional.of(root);
    }

    private Node node(JsonToken token, int depth) throws Stop {
        Place place = here();
        if (depth > MAX_DEPTH) {
            throw new Stop(
                    Problem.at(place, "lists within lists go too deep").allowed("at most " + MAX_DEPTH + " levels"));
        }
        refuseAnchorsAndTags(place);
        return switch (token) {
            case START_OBJECT -> mapping(place, depth);
            case START_ARRAY -> list(place, depth);
            case VALUE_NULL -> new ScalarNode(place, "");
            default -> new ScalarNode(place, scalarText());
        };
    }

    private MappingNode mapping(Place place, int depth) throws Stop {
        Map<String, Place> seen = new LinkedHashMap<>();
        List<MappingNode.Entry> entries = new ArrayList<>();
        while (next() == JsonToken.FIELD_NAME) {
            Place keyPlace = here();
            refuseAnchorsAndTags(keyPlace);
            String key = scalarText();
            Node value = node(next(), depth + 1);
            Place earlier = seen.putIfAbsent(key, keyPlace);
            if (earlier == null) {
                entries.add(new MappingNode.Entry(new ScalarNode(keyPlace, key), value));
            } else {
                problems.add(Problem.at(keyPlace, "key " + Wording.quote(key) + " is written twice")
                        .found("the first is at " + earlier)
                        .mend("take one of them out"));
            }
        }
        return new MappingNode(place, entries);
    }

    private ListNode list(Place place, int depth) throws Stop {
        List<Node> items = new ArrayList<>();
        for (JsonToken token = next(); token != JsonToken.END_ARRAY; token = next()) {
            items.add(node(token, depth + 1));
        }
        return new ListNode(place, items);
    }

    private void refuseAnchorsAndTags(Place place) throws Stop {
        try {
            if (parser.isCurrentAlias() || parser.getObjectId() != null) {
                refuse(place, "anchors and aliases (words that begin with & or *) are not read");
            } else if (parser.getTypeId() != null) {
                refuse(place, "tags (words that begin with !) are not read");
            }
        } catch (IOException e) {
            throw new Stop(SyntaxTrouble.of(place, text, e));
        }
    }

    private void refuse(Place place, String headline) {
        sound = false;
        problems.add(Problem.at(place, headline).mend("write the words out, or put them in quotation marks"));
    }

    private String scalarText() throws Stop {
        try {
            return parser.currentToken() == JsonToken.FIELD_NAME ? parser.currentName() : parser.getText();
        } catch (IOException e) {
            throw new Stop(SyntaxTrouble.of(here(), text, e));
        }
    }

    /* The parser may fail on odd bytes with exceptions that its interface does not name, hence the wide catch. */
    private JsonToken next() throws Stop {
        try {
            return parser.nextToken();
        } catch (IOException | RuntimeException e) {
            throw new Stop(SyntaxTrouble.of(here(), text, e));
        }
    }

    private Place here() {
        JsonLocation at = parser.currentTokenLocation();
        return new Place(file, Math.max(1, at.getLineNr()), Math.max(1, at.getColumnNr()));
    }
}
