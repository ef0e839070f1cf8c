package limbway.scenarios.layout;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import limbway.model.enclosure.Obstacle;
import limbway.scenarios.entry.Form;
import limbway.scenarios.entry.PlaceWords.OnNamed;
import limbway.scenarios.entry.References;
import limbway.scenarios.entry.ResourceEntry;
import limbway.scenarios.entry.ResourceReader;
import limbway.scenarios.entry.SupportEntry;
import limbway.scenarios.entry.SupportReader;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.problem.Place;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Reads the entries of a sheet and knows every name in it, also of entries that could not be read. */
final class Names {

    private final Map<String, Place> places = new LinkedHashMap<>();
    private final Map<String, SupportEntry> supports = new LinkedHashMap<>();
    private final List<ResourceEntry> resources = new ArrayList<>();
    private final Set<String> supportNames = new LinkedHashSet<>();
    private final Map<String, Form> resourceKinds = new LinkedHashMap<>();
    private final Map<MappingNode, String> broken = new LinkedHashMap<>();
    private final Set<String> gone;
    private boolean allSupportsSound = true;

    private Names(Set<String> gone) {
        this.gone = gone;
    }

    /** Reads all entries; names in {@code gone} were removed and are not reported again where they are used. */
    static Names of(Sheet sheet, List<Obstacle> obstacles, Set<String> gone, Problems problems) {
        Names names = new Names(gone);
        SupportReader supportReader = new SupportReader(problems);
        ResourceReader resourceReader = new ResourceReader(problems);
        for (MappingNode entry : sheet.supports()) {
            Optional<Form> kind = EntryKind.require(entry, Form.SUPPORTS, "supports", problems);
            if (kind.isPresent()) {
                EntryKind.nameOf(entry, kind.get()).ifPresent(names.supportNames::add);
                Optional<? extends SupportEntry> read = supportReader.read(entry, kind.get());
                names.allSupportsSound &= read.isPresent();
                names.noteIfBroken(entry, kind.get(), read.isPresent());
                boolean fresh = names.register(entry, kind.get(), problems);
                read.filter(support -> fresh).ifPresent(support -> names.supports.put(support.id(), support));
            }
        }
        for (MappingNode entry : sheet.resources()) {
            Optional<Form> kind = EntryKind.require(entry, Form.RESOURCES, "resources", problems);
            if (kind.isPresent()) {
                EntryKind.nameOf(entry, kind.get()).ifPresent(id -> names.resourceKinds.putIfAbsent(id, kind.get()));
                Optional<ResourceEntry> read = resourceReader.read(entry, kind.get());
                names.noteIfBroken(entry, kind.get(), read.isPresent());
                boolean fresh = names.register(entry, kind.get(), problems);
                read.filter(resource -> fresh).ifPresent(names.resources::add);
            }
        }
        obstacles.forEach(obstacle -> names.checkObstacle(obstacle, problems));
        names.broken.forEach((entry, what) -> References.in(entry)
                .forEach((key, words) -> names.checkSupport(words, References.label(key) + " of " + what, problems)));
        return names;
    }

    /** What an entry hangs on is looked up even if the rest of it is wrong. */
    private void noteIfBroken(MappingNode entry, Form kind, boolean sound) {
        if (!sound) {
            broken.put(
                    entry,
                    kind.word()
                            + EntryKind.nameOf(entry, kind)
                                    .map(id -> " " + Wording.quote(id))
                                    .orElse(""));
        }
    }

    private boolean register(MappingNode entry, Form kind, Problems problems) {
        Optional<String> name = EntryKind.nameOf(entry, kind);
        if (name.isEmpty()) {
            return false;
        }
        Place place = entry.find(kind.word()).orElse(entry).place();
        Place earlier = places.putIfAbsent(name.get(), place);
        if (earlier != null) {
            problems.add(Problem.at(place, "name " + Wording.quote(name.get()) + " is used twice")
                    .found("the first is at " + earlier)
                    .mend("give each its own name"));
        }
        return earlier == null;
    }

    private void checkObstacle(Obstacle obstacle, Problems problems) {
        Place place = places.get(obstacle.id());
        if (place != null) {
            problems.add(Problem.at(place, "name " + Wording.quote(obstacle.id()) + " is used twice")
                    .found("an obstacle has it")
                    .mend("give each its own name"));
        }
    }

    /** Whether words name a support that was declared; otherwise a problem is added. */
    boolean checkSupport(OnNamed words, String what, Problems problems) {
        String id = words.id();
        if (supportNames.contains(id)) {
            return true;
        }
        if (!gone.contains(id)) {
            String found = resourceKinds.containsKey(id)
                    ? Wording.quote(id) + " is declared as "
                            + resourceKinds.get(id).word() + ", which carries nothing"
                    : "";
            problems.add(Problem.at(words.place(), what + " names an unknown support " + Wording.quote(id))
                    .found(found)
                    .allowed(Wording.list(supportNames))
                    .mend(problems.didYouMean(id, supportNames, "")));
        }
        return false;
    }

    Collection<String> supportIds() {
        return supports.keySet();
    }

    Optional<SupportEntry> support(String id) {
        return Optional.ofNullable(supports.get(id));
    }

    List<ResourceEntry> resources() {
        return resources;
    }

    /** What kind of resource has a name, read or not. */
    Optional<Form> resourceKind(String id) {
        return Optional.ofNullable(resourceKinds.get(id));
    }

    /** Names of the resources of one kind, in order. */
    List<String> resourceNames(Form kind) {
        return resourceKinds.keySet().stream()
                .filter(id -> resourceKinds.get(id) == kind)
                .toList();
    }

    boolean isGone(String id) {
        return gone.contains(id);
    }

    /** Whether every support could be read, so that what is missing is really missing. */
    boolean areSupportsSound() {
        return allSupportsSound;
    }
}
