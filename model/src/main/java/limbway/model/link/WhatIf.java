package limbway.model.link;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import limbway.model.alteration.Alteration;
import limbway.model.body.Body;
import limbway.model.enclosure.Enclosure;
import limbway.model.energy.EnergySettings;
import limbway.model.graph.GraphSettings;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.model.route.IncomingMoves;
import limbway.model.route.ReverseTree;
import limbway.model.route.Routes;

/**
 * The costs that errands would have with one more link, without compiling the enclosure anew.
 *
 * <p>Adding a support takes nothing away, and what a pair of supports gets depends on that pair alone; so every move of the
 * enclosure with the link is one of the old graph, or of the small graph of the link and what it comes within reach of. With
 * d the old cost and l the cost over the small graph and on by the old one,
 * {@code d'(a, b) = min (d(a, b), min over e of d(a, e) + l(e, b))}, e running over the old holds of the small graph: the
 * shortcut formula with every place at which the link can be entered and left, not its two ends alone. d(a, e) comes from a
 * tree out of the start, l(e, b) from a tree of the small graph that begins with the old costs to b. Both are kept for ways
 * without and with a move on the ground. Costs there and back differ and are looked up each in its own direction.
 *
 * <p>Where the link can be come to from sloping ground, from a panel or by a leap, or takes the sway from a pole, the enclosure
 * is compiled anew; so it is where a new place lies within a micrometre of an old one but not on it, for then one of the two
 * is moved, and the price of a line through it may be rounded otherwise. What is kept never changes, so threads may share it.
 *
 * @source one shortcut edge in all shortest ways, textbook; the equality with compiling anew is tested link by link
 * @validity a way that leaves the link for something outside its reach and comes back to it is not looked for; it would have
 *     to be cheaper than the link itself
 */
public final class WhatIf {

    private final Enclosure enclosure;
    private final RouteGraph graph;
    private final GraphSettings settings;
    private final EnergySettings energy;
    private final Map<Body, Routes> routes;
    private final List<Errand> errands;
    private final HoldsByPlace places;
    private final Map<Start, ReverseTree> offFrom = new LinkedHashMap<>();
    private final Map<Start, ReverseTree> overFrom = new LinkedHashMap<>();

    private record Start(Body body, int hold) {}

    /**
     * Builds the trees out of the starts.
     *
     * @param enclosure what stands there
     * @param graph the enclosure compiled
     * @param settings how it was compiled
     * @param energy multipliers of the energy model
     * @param routes the ways of every body on that graph
     * @param errands what the costs are asked for
     */
    public WhatIf(
            Enclosure enclosure,
            RouteGraph graph,
            GraphSettings settings,
            EnergySettings energy,
            Map<Body, Routes> routes,
            List<Errand> errands) {
        this.enclosure = enclosure;
        this.graph = graph;
        this.settings = settings;
        this.energy = energy;
        this.routes = new LinkedHashMap<>(routes);
        this.errands = List.copyOf(errands);
        this.places = new HoldsByPlace(graph);
        Map<Body, IncomingMoves> outward = new LinkedHashMap<>();
        for (Errand errand : errands) {
            Start start = new Start(errand.body(), errand.fromHold());
            if (!offFrom.containsKey(start)) {
                IncomingMoves moves = outward.computeIfAbsent(
                        errand.body(),
                        body -> IncomingMoves.reversed(graph, routes.get(body).costs()));
                ReverseTree off = ReverseTree.offGround(moves, new int[] {errand.fromHold()});
                offFrom.put(start, off);
                overFrom.put(start, ReverseTree.overGround(moves, off));
            }
        }
    }

    /**
     * What is asked for.
     *
     * @return errands in the order of the costs
     */
    public List<Errand> errands() {
        return errands;
    }

    /**
     * The costs as it stands.
     *
     * @return one for each errand
     */
    public List<WayCosts> before() {
        return errands.stream()
                .map(errand -> {
                    Routes ways = routes.get(errand.body());
                    return new WayCosts(
                            ways.offGroundMilliJ(errand.fromHold(), errand.toResource()),
                            ways.overGroundMilliJ(errand.fromHold(), errand.toResource()));
                })
                .toList();
    }

    /**
     * The costs with a link, to the millijoule as if the enclosure had been compiled with it.
     *
     * @param link what would be added
     * @return one for each errand
     */
    public List<WayCosts> with(Alteration.SupportAdded link) {
        return effect(link).costs();
    }

    /**
     * The costs with a link, and what it costs to cross it.
     *
     * @param link what would be added
     * @return both
     */
    public LinkEffect effect(Alteration.SupportAdded link) {
        Enclosure after = link.applyTo(enclosure);
        Optional<RouteGraph> around = around(link, after);
        RouteGraph fresh = around.orElseGet(() -> RouteGraph.compile(after, settings));
        Map<Body, MoveCosts> costs = costs(fresh);
        return new LinkEffect(
                around.isPresent() ? over(fresh, costs) : compiled(fresh, costs),
                crossings(fresh, costs, link),
                around.isPresent());
    }

    /** The graph round a link, or empty where it would not tell the costs to the millijoule. */
    private Optional<RouteGraph> around(Alteration.SupportAdded link, Enclosure after) {
        return Part.of(enclosure, after, link, settings).flatMap(part -> {
            RouteGraph around = RouteGraph.compileAround(part.enclosure(), after, settings, graph, part.meetsGround());
            return around.isExactAround(graph, part.meetsGround()) && !hasNewLeastPrice(around)
                    ? Optional.of(around)
                    : Optional.empty();
        });
    }

    private boolean hasNewLeastPrice(RouteGraph around) {
        return routes.entrySet().stream()
                .anyMatch(entry -> LeastPrices.hasNew(
                        entry.getValue().costs(), graph, MoveCosts.of(around, entry.getKey(), energy), around));
    }

    /**
     * The costs in an altered enclosure, by compiling it.
     *
     * @param after what stands there then; the resources must be the same in the same order
     * @return one for each errand; it starts at the nearest hold of its place where its own is gone, and is unreachable where
     *     nothing of that place is left
     */
    public List<WayCosts> compiled(Enclosure after) {
        RouteGraph fresh = RouteGraph.compile(after, settings);
        return compiled(fresh, costs(fresh));
    }

    private Map<Body, MoveCosts> costs(RouteGraph of) {
        Map<Body, MoveCosts> costs = new LinkedHashMap<>();
        routes.keySet().forEach(body -> costs.put(body, MoveCosts.of(of, body, energy)));
        return costs;
    }

    private static List<LinkCrossing> crossings(
            RouteGraph of, Map<Body, MoveCosts> costs, Alteration.SupportAdded link) {
        HoldsByPlace there = new HoldsByPlace(of);
        int from = there.at(link.support().axis().start());
        int to = there.at(link.support().axis().end());
        List<LinkCrossing> crossings = new ArrayList<>();
        for (Map.Entry<Body, MoveCosts> entry : costs.entrySet()) {
            IncomingMoves moves = new IncomingMoves(of, entry.getValue());
            crossings.add(new LinkCrossing(
                    entry.getKey(),
                    ReverseTree.offGround(moves, new int[] {to}).milliJ(from),
                    ReverseTree.offGround(moves, new int[] {from}).milliJ(to)));
        }
        return crossings;
    }

    private List<WayCosts> compiled(RouteGraph fresh, Map<Body, MoveCosts> costs) {
        Starts starts = new Starts(graph, fresh);
        WayCosts[] found = new WayCosts[errands.size()];
        for (Body body : routes.keySet()) {
            IncomingMoves moves = new IncomingMoves(fresh, costs.get(body));
            Map<Integer, ReverseTree> off = new LinkedHashMap<>();
            Map<Integer, ReverseTree> over = new LinkedHashMap<>();
            for (int i = 0; i < found.length; i++) {
                Errand errand = errands.get(i);
                if (errand.body().equals(body)) {
                    ReverseTree toOff = off.computeIfAbsent(
                            errand.toResource(), r -> ReverseTree.offGround(moves, fresh.useHolds(r)));
                    ReverseTree toOver =
                            over.computeIfAbsent(errand.toResource(), r -> ReverseTree.overGround(moves, toOff));
                    int from = starts.of(errand.fromHold());
                    found[i] = from == HoldsByPlace.NONE
                            ? new WayCosts(ReverseTree.UNREACHABLE, ReverseTree.UNREACHABLE)
                            : new WayCosts(toOff.milliJ(from), toOver.milliJ(from));
                }
            }
        }
        return List.of(found);
    }

    private List<WayCosts> over(RouteGraph part, Map<Body, MoveCosts> costs) {
        int[] old = new int[part.holdCount()];
        Arrays.setAll(old, hold -> places.at(part.place(hold)));
        WayCosts[] found = new WayCosts[errands.size()];
        List<WayCosts> before = before();
        for (Body body : routes.keySet()) {
            IncomingMoves moves = new IncomingMoves(part, costs.get(body));
            Map<Integer, Onward> onward = new LinkedHashMap<>();
            for (int i = 0; i < found.length; i++) {
                Errand errand = errands.get(i);
                if (errand.body().equals(body)) {
                    Onward on = onward.computeIfAbsent(
                            errand.toResource(), r -> Onward.of(part, moves, routes.get(body), r, old));
                    Start start = new Start(body, errand.fromHold());
                    found[i] = on.from(offFrom.get(start), overFrom.get(start), before.get(i));
                }
            }
        }
        return List.of(found);
    }

    /**
     * Where the new graph is better than the old one on the way to one resource.
     *
     * @param holds old holds, by number in the old graph
     * @param offMilliJ cost from each without a move on the ground [mJ]
     * @param overMilliJ cost from each with one [mJ]
     */
    private record Onward(List<Integer> holds, List<Integer> offMilliJ, List<Integer> overMilliJ) {

        static Onward of(RouteGraph part, IncomingMoves moves, Routes routes, int resource, int[] old) {
            int[] oldOff = new int[old.length];
            int[] oldOver = new int[old.length];
            for (int hold = 0; hold < old.length; hold++) {
                boolean isOld = old[hold] != HoldsByPlace.NONE;
                oldOff[hold] = isOld ? routes.offGroundMilliJ(old[hold], resource) : ReverseTree.UNREACHABLE;
                oldOver[hold] = isOld ? routes.overGroundMilliJ(old[hold], resource) : ReverseTree.UNREACHABLE;
            }
            ReverseTree off = ReverseTree.offGroundOnward(moves, oldOff, part.useHolds(resource));
            ReverseTree over = ReverseTree.overGroundOnward(moves, off, oldOver);
            List<Integer> holds = new ArrayList<>();
            List<Integer> offMilliJ = new ArrayList<>();
            List<Integer> overMilliJ = new ArrayList<>();
            for (int hold = 0; hold < old.length; hold++) {
                boolean better = off.milliJ(hold) < oldOff[hold] || over.milliJ(hold) < oldOver[hold];
                if (old[hold] != HoldsByPlace.NONE && better) {
                    holds.add(old[hold]);
                    offMilliJ.add(off.milliJ(hold));
                    overMilliJ.add(over.milliJ(hold));
                }
            }
            return new Onward(holds, offMilliJ, overMilliJ);
        }

        WayCosts from(ReverseTree offTo, ReverseTree overTo, WayCosts before) {
            int off = before.offMilliJ();
            int over = before.overMilliJ();
            for (int i = 0; i < holds.size(); i++) {
                int hold = holds.get(i);
                int then = offMilliJ.get(i);
                int thenOver = overMilliJ.get(i);
                off = Math.min(off, sum(offTo.milliJ(hold), then));
                over = Math.min(over, sum(offTo.milliJ(hold), thenOver));
                over = Math.min(over, sum(overTo.milliJ(hold), Math.min(then, thenOver)));
            }
            return new WayCosts(off, over);
        }

        private static int sum(int first, int second) {
            boolean open = first != ReverseTree.UNREACHABLE && second != ReverseTree.UNREACHABLE;
            return open ? Math.addExact(first, second) : ReverseTree.UNREACHABLE;
        }
    }
}
