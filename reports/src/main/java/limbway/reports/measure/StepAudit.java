package limbway.reports.measure;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

import limbway.model.body.Body;
import limbway.model.body.LocomotorMode;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.model.route.ReverseTree;
import limbway.model.route.Routes;
import limbway.model.route.Search;
import limbway.reports.words.Figures;
import limbway.sim.habitat.Habitat;

/**
 * Steps on the cheapest ways of others off the ground that the animal of the shortest reach cannot take anywhere between
 * the same two things.
 */
final class StepAudit {

    private record Step(String from, String to) {}

    private record Taken(Body by, LocomotorMode mode, double gapM, boolean leavesNoWay) {}

    private final Habitat habitat;
    private final Set<String> told;
    private final RouteGraph graph;
    private final Routes smallest;
    private final Set<Step> possible = new LinkedHashSet<>();
    private final Map<Step, Taken> missing = new LinkedHashMap<>();

    /** Told holds the places, joined by a comma, of gaps that another finding tells of. */
    StepAudit(Habitat habitat, Set<String> told) {
        this.habitat = habitat;
        this.told = told;
        this.graph = habitat.graph();
        this.smallest = habitat.routes(habitat.bodies().stream()
                .min(Comparator.comparingDouble(Body::gapReachM))
                .orElseThrow());
    }

    List<Finding> findings() {
        MoveCosts costs = smallest.costs();
        for (int move = 0; move < graph.moveCount(); move++) {
            if (costs.milliJ(move) != MoveCosts.IMPOSSIBLE) {
                possible.add(step(move));
            }
        }
        for (Body body : habitat.bodies()) {
            if (body.gapReachM() > smallest.body().gapReachM()) {
                ways(habitat.routes(body));
            }
        }
        List<Finding> findings = new ArrayList<>();
        List<Step> goneRound = new ArrayList<>();
        missing.forEach((step, taken) -> {
            if (!taken.leavesNoWay) {
                goneRound.add(step);
            } else if (!told.contains(step.from + ", " + step.to) && !told.contains(step.to + ", " + step.from)) {
                findings.add(finding(step, taken));
            }
        });
        if (!goneRound.isEmpty()) {
            findings.add(goesRound(goneRound));
        }
        return findings;
    }

    private void ways(Routes routes) {
        int count = graph.resources().size();
        for (int from = 0; from < count; from++) {
            for (int to = 0; to < count; to++) {
                for (int hold : graph.useHolds(from)) {
                    if (from != to && routes.offGroundMilliJ(hold, to) != ReverseTree.UNREACHABLE) {
                        steps(routes, hold, to);
                        break;
                    }
                }
            }
        }
    }

    private void steps(Routes routes, int hold, int to) {
        boolean leavesNoWay = smallest.offGroundMilliJ(hold, to) == ReverseTree.UNREACHABLE;
        if (routes.find(hold, to) instanceof Search.Reached ways) {
            ways.offGround().ifPresent(way -> way.moves().forEach(move -> {
                if (isStep(move) && !possible.contains(step(move))) {
                    Taken taken = new Taken(routes.body(), graph.mode(move), graph.gapM(move), leavesNoWay);
                    missing.merge(step(move), taken, StepAudit::plainer);
                }
            }));
        }
    }

    /** The narrower crossing is the one to mend; that nothing else leads there is kept from either. */
    private static Taken plainer(Taken old, Taken fresh) {
        Taken narrower = fresh.gapM < old.gapM ? fresh : old;
        return new Taken(narrower.by, narrower.mode, narrower.gapM, old.leavesNoWay || fresh.leavesNoWay);
    }

    private boolean isStep(int move) {
        return switch (graph.mode(move)) {
            case BRIDGE, SWAY, LEAP, DROP -> graph.gapM(move) > 0;
            case QUADRUPEDAL_WALK, VERTICAL_CLIMB, VERTICAL_DESCENT, CLAMBER, BIPEDAL_WALK, BRACHIATE -> false;
        };
    }

    private Step step(int move) {
        String from = graph.support(graph.from(move));
        String to = graph.support(graph.to(move));
        return from.compareTo(to) <= 0 ? new Step(from, to) : new Step(to, from);
    }

    private Finding finding(Step step, Taken taken) {
        Body body = smallest.body();
        String reach = Figures.metres(body.gapReachM());
        String shared =
                Figures.metres(taken.gapM) + " apart, a step by " + taken.mode.word() + " on the cheapest ways of "
                        + Figures.one(taken.by.name()) + " that the smallest cannot take"
                        + "; no other way off the ground leads on";
        return Finding.of(
                "no-step-for-smallest",
                Weight.CAUTION,
                step.from + ", " + step.to,
                body.name(),
                taken.gapM,
                "m",
                step.from + " and " + step.to + " are " + shared + " (reaches " + reach + ")",
                "close the gap to " + reach + " or less",
                shared);
    }

    /** Where the smallest goes round, one line tells how often. */
    private Finding goesRound(List<Step> steps) {
        Step widest = steps.get(0);
        for (Step step : steps) {
            widest = missing.get(step).gapM > missing.get(widest).gapM ? step : widest;
        }
        String text = steps.size() + (steps.size() == 1 ? " step" : " steps")
                + " on the cheapest ways of others off the ground "
                + (steps.size() == 1 ? "is" : "are") + " too wide for "
                + Figures.one(smallest.body().name())
                + ", which goes another way; the widest, " + Figures.metres(missing.get(widest).gapM) + ", from "
                + widest.from + " to " + widest.to;
        return Finding.of(
                "smallest-goes-round",
                Weight.NOTE,
                widest.from + ", " + widest.to,
                smallest.body().name(),
                steps.size(),
                "steps",
                text,
                "nothing",
                text);
    }
}
