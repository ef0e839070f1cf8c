package limbway.reports.measure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

import limbway.model.body.Body;
import limbway.model.enclosure.Resource;
import limbway.model.explain.GroundReason;
import limbway.model.explain.GroundReasons;
import limbway.model.graph.RouteGraph;
import limbway.model.route.ReverseTree;
import limbway.model.route.Routes;
import limbway.reports.words.Figures;
import limbway.reports.words.MendText;
import limbway.reports.words.ReasonText;
import limbway.sim.habitat.Habitat;

/** Which resources a body cannot come to at all, and which it comes to only over the ground. */
final class ReachAudit {

    private static final int MOST_NAMED = 3;

    private final Habitat habitat;
    private final Map<Body, GroundReasons> reasons;
    private final RouteGraph graph;
    private final List<Finding> findings = new ArrayList<>();

    ReachAudit(Habitat habitat, Map<Body, GroundReasons> reasons) {
        this.habitat = habitat;
        this.reasons = reasons;
        this.graph = habitat.graph();
    }

    List<Finding> findings() {
        for (Body body : habitat.bodies()) {
            Routes routes = habitat.routes(body);
            List<Integer> reached = new ArrayList<>();
            for (int r = 0; r < graph.resources().size(); r++) {
                if (isReached(routes, r)) {
                    reached.add(r);
                } else {
                    unreachable(body, graph.resources().get(r), graph.useHolds(r).length == 0);
                }
            }
            overGroundOnly(routes, reached);
        }
        // food and water first: the animals go there most
        findings.sort(Comparator.comparing((Finding finding) ->
                graph.resources().get(graph.resourceNumber(finding.place())).kind()));
        return findings;
    }

    /** Reached if a way leads there from any hold that is not already in use for it. */
    private boolean isReached(Routes routes, int resource) {
        List<Integer> own = new ArrayList<>();
        for (int hold : graph.useHolds(resource)) {
            own.add(hold);
        }
        for (int other = 0; other < graph.resources().size(); other++) {
            for (int hold : graph.useHolds(other)) {
                if (other != resource && routes.cheapestMilliJ(hold, resource) != ReverseTree.UNREACHABLE) {
                    return true;
                }
            }
        }
        if (graph.resources().size() > 1) {
            return false;
        }
        for (int hold = 0; hold < graph.holdCount(); hold++) {
            if (!own.contains(hold) && routes.cheapestMilliJ(hold, resource) != ReverseTree.UNREACHABLE) {
                return true;
            }
        }
        return false;
    }

    private void unreachable(Body body, Resource resource, boolean nothingNear) {
        String text = nothingNear
                ? resource.id() + " cannot be used by anyone: nothing to hold or stand on lies within reach of it"
                : Figures.one(body.name()) + " cannot come to " + resource.id() + " from any other place";
        findings.add(new Finding(
                "unreachable",
                Weight.MEND,
                resource.id(),
                body.name(),
                OptionalDouble.empty(),
                "",
                text,
                "bring a support or platform that this body can hold to it, or move it to where one is",
                nothingNear
                        ? "nothing to hold or stand on lies within reach"
                        : "cannot be come to from any other place",
                Optional.empty()));
    }

    /** The largest set of resources joined off the ground is the frame; each resource outside it is a finding. */
    private void overGroundOnly(Routes routes, List<Integer> reached) {
        Map<Integer, List<Integer>> sets = new LinkedHashMap<>();
        for (int r : reached) {
            int set = r;
            for (int first : sets.keySet()) {
                if (joinedOffGround(routes, first, r)) {
                    set = first;
                    break;
                }
            }
            sets.computeIfAbsent(set, k -> new ArrayList<>()).add(r);
        }
        List<Integer> frame = List.of();
        for (List<Integer> set : sets.values()) {
            if (set.size() > frame.size()) {
                frame = set;
            }
        }
        for (List<Integer> set : sets.values()) {
            if (set != frame) {
                for (int r : set) {
                    overGroundOnly(routes.body(), r, frame);
                }
            }
        }
    }

    /** There and back, because a sway, leap or drop may lead one way only. */
    private boolean joinedOffGround(Routes routes, int one, int other) {
        return leadsOffGround(routes, one, other) && leadsOffGround(routes, other, one);
    }

    private boolean leadsOffGround(Routes routes, int one, int other) {
        for (int hold : graph.useHolds(one)) {
            if (routes.offGroundMilliJ(hold, other) != ReverseTree.UNREACHABLE) {
                return true;
            }
        }
        return false;
    }

    private void overGroundOnly(Body body, int resource, List<Integer> frame) {
        String name = graph.resources().get(resource).id();
        GroundReason reason = reasons.get(body).missing(frame.get(0), resource);
        OptionalDouble figure = OptionalDouble.empty();
        String from = "only over the ground from " + names(frame);
        String because = ReasonText.because(reason, body);
        String shared = from + ", because " + because;
        Optional<Finding.Limit> limit = Optional.empty();
        if (reason instanceof GroundReason.NothingToHold nothing) {
            figure = OptionalDouble.of(nothing.awayM());
            from = "only over the ground";
            shared = from + ", because " + because;
        } else if (reason instanceof GroundReason.Missing missing
                && !missing.chain().gaps().isEmpty()) {
            figure = OptionalDouble.of(missing.chain().widestM());
            shared = from + ", because " + ReasonText.obstacles(missing.chain());
            limit = Optional.of(new Finding.Limit(body.gapReachM(), "reaches " + Figures.metres(body.gapReachM())));
        }
        findings.add(new Finding(
                "ground-only",
                Weight.CAUTION,
                name,
                body.name(),
                figure,
                figure.isPresent() ? "m" : "",
                Figures.one(body.name()) + " comes to " + name + " " + from + ", because " + because,
                MendText.of(reason, body),
                shared,
                limit));
    }

    private String names(List<Integer> resources) {
        List<String> shown = new ArrayList<>();
        for (int r : resources.subList(0, Math.min(MOST_NAMED, resources.size()))) {
            shown.add(graph.resources().get(r).id());
        }
        int rest = resources.size() - shown.size();
        return String.join(", ", shown) + (rest > 0 ? " and " + rest + " more" : "");
    }
}
