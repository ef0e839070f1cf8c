package limbway.scenarios;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import limbway.model.enclosure.Enclosure;
import limbway.model.study.Variant;
import limbway.scenarios.entry.Fields;
import limbway.scenarios.entry.Form;
import limbway.scenarios.entry.Section;
import limbway.scenarios.entry.Values;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.format.Node;
import limbway.scenarios.layout.Additions;
import limbway.scenarios.layout.Layout;
import limbway.scenarios.layout.LayoutReader;
import limbway.scenarios.layout.Sheet;
import limbway.scenarios.layout.SheetChanges;
import limbway.scenarios.problem.Place;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Reads the entries under {@code variants}. */
final class VariantReader {

    /** Name of the layout without changes. */
    static final String BASE_NAME = "as drawn";

    /** Names that mean something else. */
    private static final List<String> TAKEN = List.of(BASE_NAME, "all");

    /** What a spreadsheet takes for the begin of a formula. */
    private static final String FORMULA_STARTS = "=+-@";

    private static final int MOST_VARIANTS = 50;

    /** All layouts together may hold so many supports. */
    private static final int MOST_SUPPORTS_IN_ALL = 100_000;

    private final LayoutReader reader;
    private final Sheet base;
    private final Enclosure drawn;
    private final Problems problems;
    private final Map<String, Place> names = new LinkedHashMap<>();
    private final Map<String, Changed> sheets = new LinkedHashMap<>();

    /** The entries of a variant, and the names that it removed. */
    record Changed(Sheet sheet, Set<String> gone) {}

    VariantReader(LayoutReader reader, Sheet base, Enclosure drawn, Problems problems) {
        this.reader = reader;
        this.base = base;
        this.drawn = drawn;
        this.problems = problems;
    }

    List<Variant> read(Node node) {
        List<MappingNode> entries = new Values(problems).mappings(node, "variants");
        int supports = (entries.size() + 1) * base.in(Section.SUPPORTS).size();
        if (LayoutReader.isTooLarge(base)) {
            return List.of();
        }
        if (entries.size() > MOST_VARIANTS || supports > MOST_SUPPORTS_IN_ALL) {
            problems.add(Problem.at(node.place(), "there are too many variants")
                    .found(entries.size() + " variants of "
                            + base.in(Section.SUPPORTS).size() + " supports")
                    .allowed("at most " + MOST_VARIANTS + ", and at most " + MOST_SUPPORTS_IN_ALL
                            + " supports in all layouts together"));
            return List.of();
        }
        List<Variant> variants = new ArrayList<>();
        entries.forEach(entry -> read(entry).ifPresent(variants::add));
        return variants;
    }

    /** The entries of each variant that was read, by its name. */
    Map<String, Changed> sheets() {
        return sheets;
    }

    private Optional<Variant> read(MappingNode entry) {
        Fields fields = Fields.of(entry, Form.VARIANT, problems);
        String name = fields.words("name", "what to call it", "?");
        Place place = fields.find("name").orElse(entry).place();
        Place earlier = names.putIfAbsent(name, place);
        if (earlier != null && !name.equals("?")) {
            fields.fault(Problem.at(place, "two variants are called " + Wording.quote(name))
                    .found("the first is at " + earlier)
                    .mend("give each a name of its own"));
        }
        if (TAKEN.contains(name)) {
            fields.fault(Problem.at(place, "a variant cannot be called " + Wording.quote(name))
                    .mend("this name means something else: take another"));
        }
        if (!name.isEmpty() && FORMULA_STARTS.indexOf(name.charAt(0)) >= 0) {
            fields.fault(Problem.at(place, "the name of a variant begins like a formula")
                    .found(Wording.quote(name))
                    .mend("begin it with a letter or a digit: spreadsheets would compute it"));
        }
        String note = fields.words("note", "what it is meant to show", "");
        Optional<Node> changes = fields.find("changes");
        if (changes.isEmpty()) {
            return Optional.empty();
        }
        Problems own = new Problems();
        SheetChanges applied = new SheetChanges(base, own);
        Sheet sheet = applied.apply(changes.get());
        Layout layout = reader.read(sheet, applied.gone(), own);
        problems.addThoseOnlyIn(own, name);
        sheets.put(name, new Changed(sheet, applied.gone()));
        return fields.build(() ->
                new Variant(name, note, layout.enclosure(), layout.keeping(), Additions.to(drawn, layout.enclosure())));
    }
}
