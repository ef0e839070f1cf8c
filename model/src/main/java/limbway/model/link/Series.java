package limbway.model.link;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

import limbway.model.body.Body;
import limbway.model.graph.RouteGraph;
import limbway.model.route.IncomingMoves;
import limbway.model.route.ReverseTree;
import limbway.model.route.Routes;

/**
 * Links that are worth something together: for every errand, the cheapest way off the ground that crosses up to so many new
 * links one after the other.
 *
 * <p>Ropes in series may be worth nothing singly, so that the best single ones say nothing about the best pair. Here each
 * link is one step between the holds nearest to its two ties, and the ways between ties are those of the enclosure as it
 * stands; a search in layers, one for each link crossed, finds the series. What it finds is an estimate, to be compiled.
 *
 * @source shortest ways with at most k edges of a kind, by layers; textbook
 */
public final class Series {

    private static final int NONE = -1;

    private final List<Candidate> candidates;
    private final List<Errand> errands;
    private final List<WayCosts> before;
    private final int[] start;
    private final int[] end;
    private final Map<Body, TieCosts> byBody = new LinkedHashMap<>();
    private final List<int[]> fromStart = new ArrayList<>();
    private final List<int[]> toTarget = new ArrayList<>();

    /**
     * Looks up what lies between the ties.
     *
     * @param graph the enclosure compiled as it stands
     * @param routes the ways of every body on it
     * @param whatIf the errands
     * @param candidates links
     * @param effects what each of them does, in the same order
     */
    public Series(
            RouteGraph graph,
            Map<Body, Routes> routes,
            WhatIf whatIf,
            List<Candidate> candidates,
            List<LinkEffect> effects) {
        this.candidates = List.copyOf(candidates);
        this.errands = whatIf.errands();
        this.before = whatIf.before();
        HoldsByPlace places = new HoldsByPlace(graph);
        Map<Tie, Integer> numbers = new LinkedHashMap<>();
        List<Integer> holds = new ArrayList<>();
        start = new int[candidates.size()];
        end = new int[candidates.size()];
        for (int c = 0; c < start.length; c++) {
            start[c] = number(candidates.get(c).from(), numbers, holds, places);
            end[c] = number(candidates.get(c).to(), numbers, holds, places);
        }
        int bodyNumber = 0;
        for (Body body : routes.keySet()) {
            byBody.put(body, TieCosts.of(graph, routes.get(body), holds, effects, bodyNumber++));
        }
        for (Errand errand : errands) {
            Routes ways = routes.get(errand.body());
            int[] from = new int[holds.size()];
            int[] to = new int[holds.size()];
            ReverseTree out =
                    ReverseTree.offGround(IncomingMoves.reversed(graph, ways.costs()), new int[] {errand.fromHold()});
            for (int t = 0; t < from.length; t++) {
                boolean isHold = holds.get(t) != HoldsByPlace.NONE;
                from[t] = isHold ? out.milliJ(holds.get(t)) : ReverseTree.UNREACHABLE;
                to[t] = isHold ? ways.offGroundMilliJ(holds.get(t), errand.toResource()) : ReverseTree.UNREACHABLE;
            }
            fromStart.add(from);
            toTarget.add(to);
        }
    }

    private static int number(Tie tie, Map<Tie, Integer> numbers, List<Integer> holds, HoldsByPlace places) {
        return numbers.computeIfAbsent(tie, t -> {
            holds.add(places.nearest(t.at(), t.on()));
            return holds.size() - 1;
        });
    }

    /**
     * The best series of each errand.
     *
     * @param links number of links, 1 or more
     * @return sets of that many candidates, each ascending, each once
     */
    public List<List<Integer>> best(int links) {
        Set<List<Integer>> found = new LinkedHashSet<>();
        for (int e = 0; e < errands.size(); e++) {
            List<Integer> series = best(e, links);
            if (series.size() == links) {
                found.add(series);
            }
        }
        return List.copyOf(found);
    }

    /** The links of the cheapest way of an errand that crosses just so many; empty if that is no cheaper than before. */
    private List<Integer> best(int errand, int links) {
        TieCosts tieCosts = byBody.get(errands.get(errand).body());
        int ties = fromStart.get(errand).length;
        int[] arrive = fromStart.get(errand).clone();
        int[][] crossed = new int[links][ties];
        int[][] cameFrom = new int[links][ties];
        int[] leave = new int[ties];
        for (int layer = 0; layer < links; layer++) {
            Arrays.fill(leave, ReverseTree.UNREACHABLE);
            Arrays.fill(crossed[layer], NONE);
            for (int c = 0; c < start.length; c++) {
                cross(arrive, start[c], end[c], tieCosts.thereMilliJ(c), c, leave, crossed[layer]);
                cross(arrive, end[c], start[c], tieCosts.backMilliJ(c), c, leave, crossed[layer]);
            }
            if (layer + 1 < links) {
                for (int to = 0; to < ties; to++) {
                    arrive[to] = ReverseTree.UNREACHABLE;
                    for (int from = 0; from < ties; from++) {
                        int sum = sum(leave[from], tieCosts.betweenMilliJ(from, to));
                        if (sum < arrive[to]) {
                            arrive[to] = sum;
                            cameFrom[layer + 1][to] = from;
                        }
                    }
                }
            }
        }
        int last = NONE;
        int least = before.get(errand).offMilliJ();
        for (int tie = 0; tie < ties; tie++) {
            int total = sum(leave[tie], toTarget.get(errand)[tie]);
            if (total < least) {
                least = total;
                last = tie;
            }
        }
        Set<Integer> used = new TreeSet<>();
        int at = last;
        for (int layer = links - 1; layer >= 0 && at != NONE; layer--) {
            int link = crossed[layer][at];
            used.add(link);
            int entered = end[link] == at ? start[link] : end[link];
            at = layer > 0 ? cameFrom[layer][entered] : NONE;
        }
        return List.copyOf(used);
    }

    private static void cross(int[] arrive, int from, int to, int cost, int link, int[] leave, int[] crossed) {
        int sum = sum(arrive[from], cost);
        if (sum < leave[to]) {
            leave[to] = sum;
            crossed[to] = link;
        }
    }

    /**
     * What errands would cost with some links, roughly.
     *
     * @param links candidates by number
     * @return costs of each errand; those over the ground as they are
     */
    public List<WayCosts> estimate(List<Integer> links) {
        List<WayCosts> costs = new ArrayList<>();
        for (int e = 0; e < errands.size(); e++) {
            TieCosts tieCosts = byBody.get(errands.get(e).body());
            int off = before.get(e).offMilliJ();
            int[] used = new int[links.size()];
            for (int link : links) {
                off = Math.min(
                        off,
                        onward(
                                e,
                                tieCosts,
                                links,
                                used,
                                sum(fromStart.get(e)[start[link]], tieCosts.thereMilliJ(link)),
                                link,
                                true));
                off = Math.min(
                        off,
                        onward(
                                e,
                                tieCosts,
                                links,
                                used,
                                sum(fromStart.get(e)[end[link]], tieCosts.backMilliJ(link)),
                                link,
                                false));
            }
            costs.add(new WayCosts(off, before.get(e).overMilliJ()));
        }
        return costs;
    }

    private int onward(
            int errand, TieCosts tieCosts, List<Integer> links, int[] used, int cost, int link, boolean there) {
        if (cost == ReverseTree.UNREACHABLE) {
            return cost;
        }
        int at = there ? end[link] : start[link];
        int least = sum(cost, toTarget.get(errand)[at]);
        int place = links.indexOf(link);
        used[place] = 1;
        for (int i = 0; i < used.length; i++) {
            if (used[i] == 0) {
                int next = links.get(i);
                int toStart = sum(sum(cost, tieCosts.betweenMilliJ(at, start[next])), tieCosts.thereMilliJ(next));
                int toEnd = sum(sum(cost, tieCosts.betweenMilliJ(at, end[next])), tieCosts.backMilliJ(next));
                least = Math.min(least, onward(errand, tieCosts, links, used, toStart, next, true));
                least = Math.min(least, onward(errand, tieCosts, links, used, toEnd, next, false));
            }
        }
        used[place] = 0;
        return least;
    }

    /**
     * Candidates between the same two supports as another, which could be hung in its place.
     *
     * @param link candidate by number
     * @return numbers, the candidate itself not among them
     */
    public List<Integer> siblings(int link) {
        List<Integer> found = new ArrayList<>();
        Candidate one = candidates.get(link);
        for (int c = 0; c < candidates.size(); c++) {
            Candidate other = candidates.get(c);
            boolean same = Set.of(one.from().on(), one.to().on())
                    .equals(Set.of(other.from().on(), other.to().on()));
            if (c != link && same) {
                found.add(c);
            }
        }
        return found;
    }

    private static int sum(int first, int second) {
        boolean open = first != ReverseTree.UNREACHABLE && second != ReverseTree.UNREACHABLE;
        return open ? Math.addExact(first, second) : ReverseTree.UNREACHABLE;
    }
}
