package limbway.scenarios.entry;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Pattern;

import limbway.model.enclosure.Material;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.format.Node;
import limbway.scenarios.format.ScalarNode;
import limbway.scenarios.problem.Place;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/**
 * The keys of one entry, read one by one.
 *
 * <p>A value that is missing or wrong becomes a problem, and a stand-in is returned so that reading goes on. The stand-in
 * never leaves: {@link #build} makes the entry only if every value was sound.
 */
public final class Fields {

    /** Longest name of anything. */
    private static final int LONGEST_ID = 40;

    private static final Pattern ID = Pattern.compile("[\\p{L}\\p{N}][\\p{L}\\p{N}_-]*");

    private final MappingNode node;
    private final Form form;
    private final String what;
    private final Problems problems;
    private final Values values;
    private boolean sound = true;

    private Fields(MappingNode node, Form form, String what, Problems problems) {
        this.node = node;
        this.form = form;
        this.what = what;
        this.problems = problems;
        this.values = new Values(problems);
    }

    /**
     * Opens an entry: unknown and missing keys become problems at once.
     *
     * @param node the entry
     * @param form which keys it has
     * @param problems where mistakes go
     * @return its fields
     */
    public static Fields of(MappingNode node, Form form, Problems problems) {
        String nameKey = form.keys().contains("name") ? "name" : form.word();
        String name = node.find(nameKey)
                .filter(ScalarNode.class::isInstance)
                .map(scalar -> " " + scalar.shown())
                .orElse("");
        Fields fields = new Fields(node, form, form.word() + name, problems);
        fields.checkKeys();
        return fields;
    }

    private void checkKeys() {
        for (MappingNode.Entry entry : node.entries()) {
            String key = entry.key().text();
            if (!form.keys().contains(key)) {
                fault(Problem.at(entry.key().place(), "unknown key " + Wording.quote(key) + " in " + what)
                        .allowed(Wording.list(form.keys()))
                        .mend(problems.didYouMean(key, form.keys(), "take it out")));
            }
        }
        for (String key : form.required()) {
            if (node.find(key).isEmpty()) {
                fault(Problem.at(node.place(), what + " has no " + Wording.quote(key))
                        .mend("add the line or the pair " + key + ": " + form.example(key)));
            }
        }
    }

    /**
     * What the entry is called in messages.
     *
     * @return for example {@code pole "mast-1"}
     */
    public String what() {
        return what;
    }

    /**
     * Where the entry stands.
     *
     * @return place of its first key
     */
    public Place place() {
        return node.place();
    }

    /**
     * Adds a problem with this entry, so that it is not built.
     *
     * @param problem the mistake
     */
    public void fault(Problem problem) {
        sound = false;
        problems.add(problem);
    }

    /**
     * Makes the entry if nothing was wrong.
     *
     * @param maker makes it from the values that were read
     * @param <T> the entry
     * @return the entry, or empty if a problem was added
     */
    public <T> Optional<T> build(Supplier<T> maker) {
        return sound ? Optional.of(maker.get()) : Optional.empty();
    }

    /**
     * The node of a key.
     *
     * @param key the key
     * @return its value, or empty if it is not there
     */
    public Optional<Node> find(String key) {
        return node.find(key);
    }

    /**
     * The number of a quantity's own key.
     *
     * @param quantity what to read
     * @return the number, or a stand-in
     */
    public double number(Quantity quantity) {
        return number(quantity.key(), quantity).orElse(quantity.least());
    }

    /**
     * The number of a key that need not be there.
     *
     * @param key the key
     * @param quantity what to read
     * @return the number, or empty if it is not there or wrong
     */
    public OptionalDouble number(String key, Quantity quantity) {
        Optional<Node> value = find(key);
        return value.isEmpty()
                ? OptionalDouble.empty()
                : noted(values.number(value.get(), quantity, key + " of " + what));
    }

    /**
     * The share of a quantity's own key, as a part of one.
     *
     * @param quantity a plain number from 0 to 1
     * @return the share, or a stand-in
     */
    double share(Quantity quantity) {
        Optional<Node> value = find(quantity.key());
        return value.isEmpty()
                ? quantity.least()
                : noted(values.share(value.get(), quantity, quantity.key() + " of " + what))
                        .orElse(quantity.least());
    }

    /**
     * The whole number of a quantity's own key.
     *
     * @param quantity what to read
     * @param otherwise what holds if the key is not there
     * @return the number, or a stand-in
     */
    public int count(Quantity quantity, int otherwise) {
        Optional<Node> value = find(quantity.key());
        return value.isEmpty()
                ? otherwise
                : (int) noted(values.wholeNumber(value.get(), quantity, quantity.key() + " of " + what))
                        .orElse(quantity.least());
    }

    /**
     * The words of a key.
     *
     * @param key the key
     * @param allowed what they may be, for messages
     * @param otherwise what holds if the key is not there
     * @return the words, or a stand-in
     */
    public String words(String key, String allowed, String otherwise) {
        Optional<Node> value = find(key);
        if (value.isEmpty()) {
            return otherwise;
        }
        return noted(values.words(value.get(), key + " of " + what, allowed)).orElse(otherwise);
    }

    /**
     * The words of a key, with their place.
     *
     * @param key a key that must be there
     * @param allowed what they may be, for messages
     * @return the words, or a stand-in
     */
    public ScalarNode placedWords(String key, String allowed) {
        Place place = find(key).map(Node::place).orElse(node.place());
        return new ScalarNode(place, words(key, allowed, "?"));
    }

    /**
     * One of several words.
     *
     * @param key the key
     * @param known the words
     * @param otherwise what holds if the key is not there
     * @return one of the words
     */
    public String oneOf(String key, List<String> known, String otherwise) {
        Optional<String> word = read(key, value -> values.words(value, key + " of " + what, Wording.list(known)));
        if (word.isEmpty()) {
            return otherwise;
        }
        String lower = word.get().toLowerCase(Locale.ROOT);
        Optional<String> found =
                known.stream().filter(one -> one.equalsIgnoreCase(lower)).findFirst();
        if (found.isEmpty()) {
            fault(Problem.at(
                            find(key).orElse(node).place(),
                            "unknown " + key + " " + Wording.quote(word.get()) + " of " + what)
                    .allowed(Wording.list(known))
                    .mend(problems.didYouMean(lower, known, "take one of the words above")));
            return otherwise;
        }
        return found.get();
    }

    /**
     * Yes or no.
     *
     * @param key the key
     * @return the answer, or empty if it is not there or wrong
     */
    public Optional<Boolean> yesNo(String key) {
        String word = oneOf(key, List.of("true", "false", "yes", "no"), "");
        return word.isEmpty() ? Optional.empty() : Optional.of(word.matches("true|yes"));
    }

    /**
     * Which one of several keys is there, where one of them must be, and one only.
     *
     * @param ways the keys
     * @param whatToSay what they say, for the message, for example {@code where it is}
     * @param allowed what is allowed, for the message
     * @return the key, or empty after a problem
     */
    public Optional<String> oneWay(List<String> ways, String whatToSay, String allowed) {
        List<String> used = ways.stream().filter(key -> find(key).isPresent()).toList();
        if (used.size() != 1) {
            fault(Problem.at(place(), what + " must say in one way " + whatToSay)
                    .found(used.isEmpty() ? "none" : Wording.list(used))
                    .allowed(allowed));
            return Optional.empty();
        }
        return Optional.of(used.get(0));
    }

    /**
     * Refuses keys that mean nothing beside another.
     *
     * @param keys the keys
     * @param where beside what, for the message, for example {@code where the corners are given}
     */
    public void refuse(List<String> keys, String where) {
        for (String key : keys) {
            find(key)
                    .ifPresent(value -> fault(Problem.at(value.place(), key + " of " + what + " is not needed " + where)
                            .mend("take it out")));
        }
    }

    /**
     * Requires a key that is needed beside another.
     *
     * @param key the key
     * @param example what to write after it
     */
    public void require(String key, String example) {
        if (find(key).isEmpty()) {
            fault(Problem.at(place(), what + " has no " + Wording.quote(key)).mend("add " + key + ": " + example));
        }
    }

    /**
     * The material of a support.
     *
     * @param otherwise what holds if the key is not there
     * @return the material, or a stand-in
     */
    public Material material(Material otherwise) {
        List<Material> all = List.of(Material.values());
        String word = oneOf("material", all.stream().map(Material::word).toList(), otherwise.word());
        return all.stream().filter(m -> m.word().equals(word)).findFirst().orElse(otherwise);
    }

    /**
     * The name of the entry, from the key that says its kind.
     *
     * @return the name, or a stand-in
     */
    public String id() {
        Optional<String> id =
                read(form.word(), value -> values.words(value, "name of " + form.word(), "a name of its own"));
        if (id.isPresent() && !isId(id.get())) {
            fault(Problem.at(find(form.word()).orElse(node).place(), "this name cannot be used")
                    .found(Wording.quote(id.get()))
                    .allowed("letters, digits, - and _, at most " + LONGEST_ID + " of them, no spaces"));
        }
        return id.orElse("?");
    }

    /**
     * Whether something may be named so.
     *
     * @param text the name
     * @return true for letters, digits, - and _ in any order that starts with a letter or digit
     */
    public static boolean isId(String text) {
        return text.length() <= LONGEST_ID && ID.matcher(text).matches();
    }

    /**
     * Reads a value with a reader that reports its own problems.
     *
     * @param key the key
     * @param reader gives empty after a problem
     * @param <T> what is read
     * @return the value; empty if it is not there or wrong
     */
    public <T> Optional<T> read(String key, Function<Node, Optional<T>> reader) {
        Optional<Node> value = find(key);
        return value.isEmpty() ? Optional.empty() : noted(reader.apply(value.get()));
    }

    private <T> Optional<T> noted(Optional<T> value) {
        sound &= value.isPresent();
        return value;
    }

    private OptionalDouble noted(OptionalDouble value) {
        sound &= value.isPresent();
        return value;
    }
}
