package limbway.model.explain;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

import limbway.model.body.Body;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Support;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;
import limbway.model.geometry.SegmentGrid;
import limbway.model.graph.Grasp;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;

/**
 * The parts of an enclosure between which one body cannot go off the ground, and the gaps between them.
 *
 * <p>An island is a set of holds joined by moves off the ground that the body can make. A support that the body can
 * neither hold nor walk on is an island of its own.
 */
public final class Islands {

    /** Widest gap that is looked at [m]: wider ones are seldom closed by one more rope. Assumption. */
    public static final double WIDEST_M = 12;

    private static final String GROUND = "ground";

    private final RouteGraph graph;
    private final Body body;
    private final List<Member> members;
    private final Groups groups;
    private final Map<String, Integer> islandOfMember = new LinkedHashMap<>();
    private final Map<Integer, Support> tooThick = new LinkedHashMap<>();
    private final Map<Long, Gap> gaps = new LinkedHashMap<>();

    /**
     * Finds the islands of a body and the gaps between them.
     *
     * @param enclosure what stands there
     * @param graph the enclosure compiled
     * @param costs what the body can do on that graph
     */
    public Islands(Enclosure enclosure, RouteGraph graph, MoveCosts costs) {
        this.graph = graph;
        this.body = costs.body();
        this.members = Member.of(enclosure);
        this.groups = new Groups(graph.holdCount() + members.size());
        for (int move = 0; move < graph.moveCount(); move++) {
            if (graph.isStep(move) && !graph.moveOnGround(move) && costs.milliJ(move) != MoveCosts.IMPOSSIBLE) {
                groups.join(graph.from(move), graph.to(move));
            }
        }
        placeMembers();
        findGaps();
    }

    /**
     * The island a hold belongs to.
     *
     * @param hold number of a hold
     * @return a number that is the same for all holds of an island
     */
    public int islandOf(int hold) {
        Integer ofMember = islandOfMember.get(graph.support(hold));
        boolean onThickSupport = ofMember != null && tooThick.containsKey(ofMember);
        return onThickSupport && groups.of(hold) == hold ? ofMember : groups.of(hold);
    }

    /**
     * The least gap between each two islands that come within {@link #WIDEST_M} of each other.
     *
     * @return gaps in the order of the enclosure
     */
    public List<Gap> gaps() {
        return List.copyOf(gaps.values());
    }

    /**
     * What is missing on a way off the ground between two sets of holds, where least is missing: the widest gap as small
     * as it can be, then the sum of all gaps.
     *
     * @param from holds to start at
     * @param to holds to arrive at
     * @return gaps and supports on that way, or empty if no chain of gaps up to {@link #WIDEST_M} leads there
     */
    public Optional<Chain> between(int[] from, int[] to) {
        return new ChainSearch(groups, gaps, tooThick, body.gapReachM()).find(offGround(from), offGround(to));
    }

    /**
     * Whether a resource is used from somewhere off the ground.
     *
     * @param useHolds holds from which it is used
     * @return true if at least one belongs to a support, platform or crown
     */
    public boolean isUsedOffGround(int[] useHolds) {
        return !offGround(useHolds).isEmpty();
    }

    /**
     * The support, platform or crown nearest to a place.
     *
     * @param place any place
     * @return its id and the clear distance, or empty if there is none
     */
    public Optional<Map.Entry<String, Double>> nearestTo(Point place) {
        Map.Entry<String, Double> nearest = null;
        for (Member member : members) {
            double awayM = member.clearM(place);
            if (nearest == null || awayM < nearest.getValue()) {
                nearest = Map.entry(member.id(), awayM);
            }
        }
        return Optional.ofNullable(nearest);
    }

    private List<Integer> offGround(int[] holds) {
        List<Integer> islands = new ArrayList<>();
        for (int hold : holds) {
            if (!graph.support(hold).equals(GROUND)) {
                islands.add(islandOf(hold));
            }
        }
        return islands;
    }

    private void placeMembers() {
        Map<String, Integer> firstHold = new LinkedHashMap<>();
        for (int hold = 0; hold < graph.holdCount(); hold++) {
            firstHold.putIfAbsent(graph.support(hold), hold);
        }
        for (int m = 0; m < members.size(); m++) {
            Member member = members.get(m);
            Optional<Support> support = member.support();
            if (support.isPresent() && !Grasp.canUse(body, support.get())) {
                int island = graph.holdCount() + m;
                islandOfMember.put(member.id(), island);
                tooThick.put(island, support.get());
            } else {
                int hold = firstHold.containsKey(member.id()) ? firstHold.get(member.id()) : nearestHold(member);
                if (hold >= 0) {
                    islandOfMember.put(member.id(), groups.of(hold));
                }
            }
        }
    }

    /** A member none of whose holds carries its name shares them with others. */
    private int nearestHold(Member member) {
        Point start = member.solids().get(0).line().a();
        int nearest = -1;
        for (int hold = 0; hold < graph.holdCount(); hold++) {
            if (nearest < 0
                    || graph.place(hold).distanceM(start) < graph.place(nearest).distanceM(start)) {
                nearest = hold;
            }
        }
        return nearest;
    }

    private void findGaps() {
        List<Solid> solids = new ArrayList<>();
        List<Integer> owners = new ArrayList<>();
        double widestM = 0;
        for (int m = 0; m < members.size(); m++) {
            for (Solid solid : members.get(m).solids()) {
                solids.add(solid);
                owners.add(m);
                widestM = Math.max(widestM, solid.radiusM());
            }
        }
        if (solids.isEmpty()) {
            return;
        }
        List<Segment> lines = solids.stream().map(Solid::line).toList();
        SegmentGrid.forEachNearPair(lines, WIDEST_M + 2 * widestM, (first, second) -> {
            Member a = members.get(owners.get(first));
            Member b = members.get(owners.get(second));
            Integer islandA = islandOfMember.get(a.id());
            Integer islandB = islandOfMember.get(b.id());
            if (islandA != null && islandB != null && !islandA.equals(islandB)) {
                remember(islandA, islandB, a.gapTo(solids.get(first), b, solids.get(second)));
            }
        });
    }

    private void remember(int islandA, int islandB, Gap gap) {
        if (gap.clearM() > WIDEST_M) {
            return;
        }
        boolean inOrder = islandA < islandB;
        long key = ((long) Math.min(islandA, islandB) << 32) | Math.max(islandA, islandB);
        gaps.merge(key, inOrder ? gap : gap.reversed(), (old, fresh) -> fresh.clearM() < old.clearM() ? fresh : old);
    }
}
