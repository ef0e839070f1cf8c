package limbway.reports.command;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import limbway.model.study.Study;
import limbway.model.study.Variant;

/** Which layouts of a scenario are compared. */
final class ComparedLayouts {

    private ComparedLayouts() {}

    /** All of the file, or those that are named, in the order of the file. */
    static List<Variant> of(Study study, List<String> wanted) throws Refusal {
        List<String> known = study.layouts().stream().map(Variant::name).toList();
        if (wanted == null) {
            if (known.size() < 2) {
                throw Refusal.of(
                        "there is nothing to compare with",
                        "one layout, " + known.get(0),
                        "two or more",
                        "describe another one under variants in the scenario");
            }
            return study.layouts();
        }
        Set<String> names = named(study, wanted);
        if (names.size() < 2) {
            throw Refusal.of(
                    "there is nothing to compare with",
                    "one layout, " + String.join(", ", names),
                    "two or more",
                    "name another one with --variants, divided by a comma");
        }
        return study.layouts().stream()
                .filter(layout -> names.contains(layout.name()))
                .toList();
    }

    /** The names in a list that may be divided by commas, each of them the name of a layout. */
    static Set<String> named(Study study, List<String> wanted) throws Refusal {
        List<String> known = study.layouts().stream().map(Variant::name).toList();
        Set<String> names = new LinkedHashSet<>();
        for (String word : wanted) {
            // a name may have a comma in it
            for (String name : known.contains(word) ? List.of(word) : List.of(word.split(","))) {
                names.add(named(name.trim(), known));
            }
        }
        return names;
    }

    private static String named(String name, List<String> known) throws Refusal {
        if (!known.contains(name)) {
            throw Refusal.unknown("variant", name, known);
        }
        return name;
    }
}
