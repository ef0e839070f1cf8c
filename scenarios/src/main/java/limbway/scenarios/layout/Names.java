package limbway.scenarios.layout;

import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

import limbway.model.enclosure.Obstacle;
import limbway.scenarios.entry.Entry;
import limbway.scenarios.entry.EntryReader;
import limbway.scenarios.entry.Form;
import limbway.scenarios.entry.PlaceWords.OnNamed;
import limbway.scenarios.entry.References;
import limbway.scenarios.entry.Section;
import limbway.scenarios.entry.SupportEntry;
import limbway.scenarios.format.MappingNode;
import limbway.scenarios.problem.Place;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Reads the entries of a sheet and knows every name in it, also of entries that could not be read. */
final class Names {

    /** Lists whose entries carry nothing. */
    private static final Set<Section> NOTHING_LIES_ON = Set.of(Section.RESOURCES, Section.COVERS, Section.NEIGHBOURS);

    private final Map<String, Place> places = new LinkedHashMap<>();
    private final Map<String, Form> kinds = new LinkedHashMap<>();
    private final Map<String, Form> resourceKinds = new LinkedHashMap<>();
    private final Map<String, Entry> entries = new LinkedHashMap<>();
    private final Set<String> supportNames = new LinkedHashSet<>();
    private final Map<MappingNode, String> broken = new LinkedHashMap<>();
    private final Set<String> gone;
    private boolean allSound = true;

    private Names(Set<String> gone) {
        this.gone = gone;
    }

    /** Reads all entries; names in {@code gone} were removed and are not reported again where they are used. */
    static Names of(Sheet sheet, List<Obstacle> obstacles, Set<String> gone, Problems problems) {
        Names names = new Names(gone);
        EntryReader reader = new EntryReader(problems);
        for (Section section : Section.values()) {
            for (MappingNode entry : sheet.in(section)) {
                EntryKind.require(entry, section.forms(), section.key(), problems)
                        .ifPresent(kind -> names.read(entry, section, kind, reader, problems));
            }
        }
        obstacles.forEach(obstacle -> names.checkObstacle(obstacle, problems));
        names.broken.forEach((entry, what) -> References.in(entry)
                .forEach((key, words) -> names.checkSupport(words, References.label(key) + " of " + what, problems)));
        return names;
    }

    private void read(MappingNode node, Section section, Form kind, EntryReader reader, Problems problems) {
        Optional<String> name = EntryKind.nameOf(node, kind);
        name.ifPresent(id -> kinds.putIfAbsent(id, kind));
        if (section == Section.SUPPORTS) {
            name.ifPresent(supportNames::add);
        } else if (section == Section.RESOURCES) {
            name.ifPresent(id -> resourceKinds.putIfAbsent(id, kind));
        }
        Optional<? extends Entry> read = reader.read(node, section, kind);
        allSound &= read.isPresent() || NOTHING_LIES_ON.contains(section);
        noteIfBroken(node, kind, read.isPresent());
        boolean fresh = register(node, kind, problems);
        read.filter(entry -> fresh).ifPresent(entry -> entries.put(entry.id(), entry));
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

    /** Whether an entry has a name that no earlier one has; a name used twice becomes a problem. */
    boolean register(MappingNode entry, Form kind, Problems problems) {
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
            String found = kinds.containsKey(id)
                    ? Wording.quote(id) + " is declared as " + kinds.get(id).word() + ", which carries nothing"
                    : "";
            problems.add(Problem.at(words.place(), what + " names an unknown support " + Wording.quote(id))
                    .found(found)
                    .allowed(Wording.list(supportNames))
                    .mend(problems.didYouMean(id, supportNames, "")));
        }
        return false;
    }

    /** The entries of one type that could be read, in their order. */
    <T extends Entry> List<T> all(Class<T> type) {
        return entries.values().stream()
                .filter(type::isInstance)
                .map(type::cast)
                .toList();
    }

    /** The support of a name, if it could be read. */
    Optional<SupportEntry> support(String id) {
        return entries.get(id) instanceof SupportEntry support ? Optional.of(support) : Optional.empty();
    }

    /** What kind of resource has a name, read or not. */
    Optional<Form> resourceKind(String id) {
        return Optional.ofNullable(resourceKinds.get(id));
    }

    /** Names of the resources of some kinds, in order. */
    List<String> resourceNames(List<Form> some) {
        return resourceKinds.keySet().stream()
                .filter(id -> some.contains(resourceKinds.get(id)))
                .toList();
    }

    /** Names of the entries of some kinds, read or not, in order. */
    List<String> namesOf(List<Form> some) {
        return kinds.keySet().stream()
                .filter(id -> some.contains(kinds.get(id)))
                .toList();
    }

    /** What kind of entry has a name, read or not. */
    Optional<Form> kind(String id) {
        return Optional.ofNullable(kinds.get(id));
    }

    boolean isGone(String id) {
        return gone.contains(id);
    }

    /** Whether everything that can carry a resource could be read, so that what is missing is really missing. */
    boolean areThingsSound() {
        return allSound;
    }
}
