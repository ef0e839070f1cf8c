package limbway.scenarios.layout;

import java.util.List;
import java.util.Optional;

import limbway.scenarios.entry.Form;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.format.Node;
import limbway.scenarios.format.ScalarNode;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Finds out what kind an entry is: the kind is the key that holds its name. */
final class EntryKind {

    private EntryKind() {}

    /**
     * The kind of an entry among some, or empty if it has no key of any.
     *
     * <p>Where a key means several things, such as water to drink and water that stops, the kind that knows more of the
     * entry's other keys is meant; of equals the first.
     */
    static Optional<Form> of(MappingNode entry, List<Form> kinds) {
        List<String> keys = entry.keys();
        Form best = null;
        long mostKnown = -1;
        for (Form kind : kinds) {
            if (keys.contains(kind.word())) {
                long known = keys.stream().filter(kind.keys()::contains).count();
                if (known > mostKnown) {
                    best = kind;
                    mostKnown = known;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /** The same, with a problem for an entry of no kind. */
    static Optional<Form> require(MappingNode entry, List<Form> kinds, String listName, Problems problems) {
        Optional<Form> kind = of(entry, kinds);
        if (kind.isEmpty()) {
            List<String> words = kinds.stream().map(Form::word).distinct().toList();
            Optional<MappingNode.Entry> first = entry.entries().stream().findFirst();
            String key = first.map(e -> e.key().text()).orElse("");
            problems.add(Problem.at(entry.place(), "this entry of " + listName + " does not say what it is")
                    .found(first.isEmpty() ? "nothing" : Wording.list(entry.keys()))
                    .allowed("one of the keys " + Wording.list(words))
                    .mend(problems.didYouMean(key, words, "begin with such a key and a name")));
        }
        return kind;
    }

    /** The name that an entry gives itself under the key of its kind, or empty. */
    static Optional<String> nameOf(MappingNode entry, Form kind) {
        return entry.find(kind.word()).flatMap(EntryKind::word);
    }

    /** The words of a scalar, or empty for anything else. */
    static Optional<String> word(Node node) {
        return node instanceof ScalarNode scalar && !scalar.text().isBlank()
                ? Optional.of(scalar.text().strip())
                : Optional.empty();
    }
}
