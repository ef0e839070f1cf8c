package limbway.scenarios.layout;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import limbway.model.study.Feeding;
import limbway.scenarios.entry.FeedingEntry;
import limbway.scenarios.entry.FeedingReader;
import limbway.scenarios.entry.Form;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.format.ScalarNode;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Reads what the keepers put out, where and when. */
final class FeedingPlan {

    private record Serving(String resource, LocalTime at) {}

    private final Names names;
    private final Problems problems;

    FeedingPlan(Names names, Problems problems) {
        this.names = names;
        this.problems = problems;
    }

    /** The feedings in order of time; those of one time in the order of the file. */
    List<Feeding> read(Sheet sheet, List<MappingNode> nodes) {
        reportWhatIsMissing(sheet, nodes.isEmpty());
        List<Feeding> feedings = new ArrayList<>();
        Set<Serving> servings = new LinkedHashSet<>();
        for (MappingNode node : nodes) {
            Optional<FeedingEntry> entry = new FeedingReader(problems).read(node);
            boolean isFood = !(node.find(Form.FEED.word()).orElse(node) instanceof ScalarNode name)
                    || name.text().isBlank()
                    || isFood(new ScalarNode(name.place(), name.text().strip()));
            if (entry.isPresent() && isFood) {
                for (LocalTime at : entry.get().times()) {
                    String id = entry.get().resource().text();
                    if (!servings.add(new Serving(id, at))) {
                        problems.add(Problem.at(node.place(), Wording.quote(id) + " is fed twice at " + at)
                                .mend("add the energies up in one entry"));
                    }
                    feedings.add(new Feeding(
                            id,
                            at,
                            entry.get().energyKj(),
                            entry.get().method(),
                            entry.get().handlingMin()));
                }
            }
        }
        feedings.sort(Comparator.comparing(Feeding::at));
        return feedings;
    }

    /** A list that is missing or is none was told already; that it holds no food needs no second message. */
    private void reportWhatIsMissing(Sheet sheet, boolean unfed) {
        if (names.resourceNames(List.of(Form.FOOD)).isEmpty()) {
            if (!problems.isKnownAt(sheet.resourcesPlace())) {
                problems.add(Problem.at(sheet.resourcesPlace(), "there is no food place")
                        .mend("add one to resources, for example {food: hatch, at: [28, 10, 0]}"));
            }
        } else if (unfed && !problems.isKnownAt(sheet.keepersPlace())) {
            problems.add(Problem.at(sheet.keepersPlace(), "nobody puts out food")
                    .mend("add a feeding to keepers, for example {feed: hatch, at: \"08:00\", energy-kj: 2400}"));
        }
    }

    private boolean isFood(ScalarNode name) {
        Optional<Form> kind = names.resourceKind(name.text());
        if (kind.equals(Optional.of(Form.FOOD)) || names.isGone(name.text())) {
            return true;
        }
        List<String> food = names.resourceNames(List.of(Form.FOOD));
        String headline = kind.map(form -> name.shown() + " cannot be fed, it is declared as " + form.word())
                .orElse("there is no food place " + name.shown());
        problems.add(Problem.at(name.place(), headline)
                .allowed(Wording.list(food))
                .mend(problems.didYouMean(name.text(), food, "")));
        return false;
    }
}
