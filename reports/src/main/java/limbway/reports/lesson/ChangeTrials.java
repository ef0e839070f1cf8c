package limbway.reports.lesson;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import limbway.model.alteration.Alteration;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Resource;
import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportKind;
import limbway.model.explain.PairWays;
import limbway.model.explain.flip.BuildLimits;
import limbway.model.explain.flip.TripQuestion;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;
import limbway.model.graph.FreeSpace;
import limbway.model.graph.RouteGraph;
import limbway.model.route.Routes;
import limbway.model.route.Search;
import limbway.model.route.Way;

/** Makes changes of the layout that is taught, and compiles what comes of each. */
final class ChangeTrials {

    private final TripQuestion question;
    private final BuildLimits limits;

    ChangeTrials(TripQuestion question, BuildLimits limits) {
        this.question = question;
        this.limits = limits;
    }

    /** What the trip finds after some alterations; empty if that must not be built, or cannot. */
    Optional<TriedChange> of(String words, String line, List<Alteration> alterations) {
        Enclosure changed = question.enclosure();
        Set<String> subjects = new TreeSet<>();
        for (Alteration alteration : alterations) {
            changed = alteration.applyTo(changed);
            if (!(alteration instanceof Alteration.SupportTaken)) {
                subjects.add(alteration.subject());
            }
        }
        return isFree(alterations) && limits.allow(changed, subjects)
                ? Optional.of(compiled(words, line, changed))
                : Optional.empty();
    }

    /** What the trip finds in another layout; empty where one of its places is not there. */
    Optional<TriedChange> in(String words, String line, Enclosure other) {
        List<String> places = other.resources().stream().map(Resource::id).toList();
        return places.contains(question.from()) && places.contains(question.to())
                ? Optional.of(compiled(words, line, other))
                : Optional.empty();
    }

    private TriedChange compiled(String words, String line, Enclosure changed) {
        RouteGraph graph = RouteGraph.compile(changed, question.settings());
        int from = graph.resourceNumber(question.from());
        int to = graph.resourceNumber(question.to());
        Routes routes = Routes.towards(graph, question.costs(graph, question.energy()), question.sharpness(), to);
        Search then = PairWays.find(routes, question.sharpness(), from, to);
        return then instanceof Search.Reached ways
                ? new TriedChange(
                        words, line, changed, then, path(graph, ways.overGround()), path(graph, ways.offGround()))
                : new TriedChange(words, line, changed, then, List.of(), List.of());
    }

    /** New ropes must not cross what stands there. */
    private boolean isFree(List<Alteration> alterations) {
        FreeSpace space = new FreeSpace(question.enclosure());
        for (Alteration alteration : alterations) {
            if (alteration instanceof Alteration.SupportAdded added
                    && !space.holds(added.support().axis())) {
                return false;
            }
        }
        return true;
    }

    /** A way, move by move. */
    static List<Segment> path(RouteGraph graph, Optional<Way> way) {
        List<Segment> path = new ArrayList<>();
        way.ifPresent(taken -> {
            for (int i = 1; i < taken.holds().size(); i++) {
                Point a = graph.place(taken.holds().get(i - 1));
                Point b = graph.place(taken.holds().get(i));
                if (a.distanceM(b) > 0) {
                    path.add(new Segment(a, b));
                }
            }
        });
        return path;
    }

    /** The supports of a layout that stand upright. */
    static List<Support> uprights(Enclosure enclosure) {
        return enclosure.supports().stream().filter(ChangeTrials::isUpright).toList();
    }

    /** The names of the others: ropes, beams, branches, ladders. */
    static List<String> lying(Enclosure enclosure) {
        return enclosure.supports().stream()
                .filter(one -> !isUpright(one))
                .map(Support::id)
                .toList();
    }

    private static boolean isUpright(Support support) {
        return support.kind() == SupportKind.POLE || support.kind() == SupportKind.TRUNK;
    }
}
