package limbway.reports.measure;

import java.time.LocalTime;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import limbway.model.body.Body;
import limbway.model.enclosure.Door;
import limbway.model.enclosure.ResourceKind;
import limbway.model.graph.RouteGraph;
import limbway.model.route.ReverseTree;
import limbway.model.route.Routes;
import limbway.model.study.Feeding;
import limbway.sim.habitat.DoorHours;
import limbway.sim.habitat.Habitat;
import limbway.sim.habitat.Passages;

/** Doors that are shut when food is put out behind them, and doors that part nests from all food. */
final class DoorAudit {

    private static final long MS_PER_S = 1000;

    private final Habitat habitat;
    private final RouteGraph graph;
    private final DoorHours hours;
    private final List<Finding> findings = new ArrayList<>();

    DoorAudit(Habitat habitat) {
        this.habitat = habitat;
        this.graph = habitat.graph();
        this.hours = habitat.doorHours();
    }

    List<Finding> findings() {
        if (graph.doors().isEmpty()) {
            return List.of();
        }
        for (Body body : habitat.bodies()) {
            List<Passages> byStretch = habitat.passages(body);
            for (Feeding feeding : habitat.layout().feedings()) {
                fed(body, feeding, byStretch.get(hours.at(feeding.at().toSecondOfDay() * MS_PER_S)));
            }
            nests(body, byStretch);
        }
        return findings;
    }

    /** Cut off from more than half of the places that it can be come to from with all doors open. */
    private void fed(Body body, Feeding feeding, Passages then) {
        int food = graph.resourceNumber(feeding.resource());
        int all = 0;
        int cutOff = 0;
        for (int from = 0; from < graph.resources().size(); from++) {
            if (from != food && allOpen(body, from, food)) {
                all++;
                cutOff += isOpen(then, from, food) ? 0 : 1;
            }
        }
        if (2 * cutOff > all) {
            String doors = doorsShutAt(feeding.at());
            String shared = "fed at " + feeding.at() + " while " + doors + " is shut, which cuts it off";
            findings.add(Finding.of(
                    "door-shut-at-feeding",
                    Weight.CAUTION,
                    feeding.resource(),
                    body.name(),
                    cutOff,
                    "places",
                    feeding.resource() + ", for " + body.name() + ", is " + shared + " from " + cutOff + " of " + all
                            + " other places",
                    "open " + doors + " at that time, or feed when it is open",
                    shared));
        }
    }

    /** The nests that are cut off from all food in some stretch, though not with all doors open. */
    private void nests(Body body, List<Passages> byStretch) {
        Map<String, Integer> firstStretch = new LinkedHashMap<>();
        for (int nest = 0; nest < graph.resources().size(); nest++) {
            for (int stretch = 0; stretch < byStretch.size(); stretch++) {
                if (graph.resources().get(nest).kind() == ResourceKind.NEST
                        && isCutOff(body, nest, byStretch.get(stretch))) {
                    firstStretch.putIfAbsent(nameOf(nest), stretch);
                }
            }
        }
        firstStretch.forEach((nest, stretch) -> {
            LocalTime from = LocalTime.ofSecondOfDay(hours.startS(stretch));
            String shut = doorsShutAt(from) + " is shut from " + from + " and then no food can be had";
            findings.add(Finding.of(
                    "door-parts-nest-from-food",
                    Weight.NOTE,
                    nest,
                    body.name(),
                    hours.startS(stretch) / 3600.0,
                    "h",
                    shut + " from " + nest + " by " + body.name(),
                    "see that this is meant, and that water is on the same side",
                    shut));
        });
    }

    private boolean isCutOff(Body body, int nest, Passages then) {
        boolean everFed = false;
        for (int food = 0; food < graph.resources().size(); food++) {
            if (graph.resources().get(food).kind() == ResourceKind.FOOD && allOpen(body, nest, food)) {
                everFed = true;
                if (isOpen(then, nest, food)) {
                    return false;
                }
            }
        }
        return everFed;
    }

    /** Whether a way leads there with all doors open. */
    private boolean allOpen(Body body, int from, int to) {
        Routes routes = habitat.routes(body);
        for (int hold : graph.useHolds(from)) {
            if (routes.cheapestMilliJ(hold, to) != ReverseTree.UNREACHABLE) {
                return true;
            }
        }
        return false;
    }

    private boolean isOpen(Passages passages, int from, int to) {
        for (int hold : graph.useHolds(from)) {
            if (passages.isOpen(passages.passage(passages.startAt(hold), to))) {
                return true;
            }
        }
        return false;
    }

    private String doorsShutAt(LocalTime time) {
        return String.join(
                " or ",
                graph.doors().stream()
                        .filter(door -> !door.isOpenAt(time.toSecondOfDay()))
                        .map(Door::id)
                        .toList());
    }

    private String nameOf(int resource) {
        return graph.resources().get(resource).id();
    }
}
