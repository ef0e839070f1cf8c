package limbway.scenarios.layout;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import limbway.model.study.BeddingRound;
import limbway.model.study.Closure;
import limbway.scenarios.entry.BeddingEntry;
import limbway.scenarios.entry.CareReader;
import limbway.scenarios.entry.ClosureEntry;
import limbway.scenarios.entry.Form;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.format.ScalarNode;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Reads where bedding is put out and what is shut or cleaned, and when. */
final class CarePlan {

    private record Round(String resource, LocalTime at) {}

    private final Names names;
    private final Problems problems;
    private final CareReader reader;

    CarePlan(Names names, Problems problems) {
        this.names = names;
        this.problems = problems;
        this.reader = new CareReader(problems);
    }

    /** Bedding in order of time; that of one time in the order of the file. */
    List<BeddingRound> bedding(List<MappingNode> nodes) {
        List<BeddingRound> rounds = new ArrayList<>();
        Set<Round> known = new LinkedHashSet<>();
        for (MappingNode node : nodes) {
            Optional<BeddingEntry> entry = reader.bedding(node);
            if (isPlace(node, Form.BED, Form.RESTING, "has no bedding", "place to rest or sleep")
                    && entry.isPresent()) {
                String id = entry.get().resource().text();
                for (LocalTime at : entry.get().times()) {
                    if (!known.add(new Round(id, at))) {
                        problems.add(Problem.at(node.place(), Wording.quote(id) + " is bedded twice at " + at)
                                .mend("take one of the two out"));
                    }
                    rounds.add(new BeddingRound(id, at, entry.get().amount()));
                }
            }
        }
        rounds.sort(Comparator.comparing(BeddingRound::at));
        return rounds;
    }

    /** Hours in which places are shut, in the order of the file. */
    List<Closure> closures(List<MappingNode> nodes) {
        List<Closure> closures = new ArrayList<>();
        for (MappingNode node : nodes) {
            Form form = node.find(Form.CLEAN.word()).isPresent() ? Form.CLEAN : Form.CLOSE;
            Optional<ClosureEntry> entry = reader.closure(node, form);
            if (isPlace(node, form, Form.RESOURCES, "cannot be shut", "place under resources") && entry.isPresent()) {
                ClosureEntry shut = entry.get();
                closures.add(new Closure(shut.resource().text(), shut.hours(), shut.cleaned()));
            }
        }
        return closures;
    }

    /** Whether an entry names a place of some kinds; a name that is missing was told already. */
    private boolean isPlace(MappingNode node, Form form, List<Form> kinds, String lacks, String wanted) {
        Optional<String> id = EntryKind.nameOf(node, form);
        if (id.isEmpty() || names.isGone(id.get())) {
            return true;
        }
        Optional<Form> kind = names.resourceKind(id.get());
        if (kind.isPresent() && kinds.contains(kind.get())) {
            return true;
        }
        ScalarNode name = new ScalarNode(node.find(form.word()).orElse(node).place(), id.get());
        List<String> known = names.resourceNames(kinds);
        problems.add(Problem.at(
                        name.place(),
                        kind.or(() -> names.kind(id.get()))
                                .map(other -> name.shown() + " " + lacks + ", it is declared as " + other.word())
                                .orElse("there is no " + wanted + " called " + name.shown()))
                .allowed(Wording.list(known))
                .mend(problems.didYouMean(id.get(), known, "")));
        return false;
    }
}
