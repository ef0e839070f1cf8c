package limbway.scenarios.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

import limbway.model.enclosure.Barrier;
import limbway.model.enclosure.BarrierKind;
import limbway.model.enclosure.Door;
import limbway.model.enclosure.Panel;
import limbway.model.geometry.Segment;
import limbway.scenarios.entry.DoorEntry;
import limbway.scenarios.entry.Form;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Puts doors into the panels and walls that they open. */
final class DoorBuilder {

    /** What a door can open. */
    private static final List<Form> OPENED = Stream.concat(Form.PANELS.stream(), Stream.of(Form.WALL, Form.GLASS))
            .toList();

    private final Names names;
    private final Problems problems;
    private final Map<String, Leaf> leaves = new LinkedHashMap<>();

    DoorBuilder(Names names, List<Panel> panels, List<Barrier> barriers, Problems problems) {
        this.names = names;
        this.problems = problems;
        panels.forEach(panel -> leaves.put(panel.id(), Leaf.of(panel)));
        barriers.stream()
                .filter(barrier -> barrier.kind() != BarrierKind.WATER)
                .forEach(barrier -> leaves.put(barrier.id(), Leaf.of(barrier)));
    }

    List<Door> all(List<DoorEntry> entries) {
        List<Door> doors = new ArrayList<>();
        for (DoorEntry entry : entries) {
            if (isKnown(entry)) {
                // what a broken panel or wall holds was told with it
                Optional.ofNullable(leaves.get(entry.in().text()))
                        .flatMap(leaf -> door(entry, leaf))
                        .ifPresent(doors::add);
            }
        }
        return doors;
    }

    private boolean isKnown(DoorEntry entry) {
        String id = entry.in().text();
        Optional<Form> kind = names.kind(id);
        if (kind.filter(OPENED::contains).isPresent() || names.isGone(id)) {
            return true;
        }
        List<String> known = names.namesOf(OPENED);
        problems.add(Problem.at(
                        entry.in().place(),
                        entry.what() + " is in an unknown panel or wall "
                                + entry.in().shown())
                .found(kind.map(form -> entry.in().shown() + " is declared as " + form.word() + ", which has no doors")
                        .orElse(""))
                .allowed(known.isEmpty() ? "the name of a mesh, net, wall or glass" : Wording.list(known))
                .mend(problems.didYouMean(id, known, "")));
        return false;
    }

    private Optional<Door> door(DoorEntry entry, Leaf leaf) {
        double sillM = entry.sillM().orElse(leaf.lowestM());
        Segment sill = new Segment(entry.from().atHeight(sillM), entry.to().atHeight(sillM));
        Optional<String> outside = leaf.outside(sill, entry.heightM());
        outside.ifPresent(
                found -> problems.add(Problem.at(entry.place(), entry.what() + " does not lie in " + leaf.what())
                        .found(found)
                        .allowed("within " + Wording.measure(Leaf.WITHIN_M, "m") + " of its plane and within its edge")
                        .mend("correct from, to, sill or height, or the name after in")));
        return outside.isPresent()
                ? Optional.empty()
                : Optional.of(new Door(entry.id(), entry.in().text(), sill, entry.heightM(), entry.open()));
    }
}
