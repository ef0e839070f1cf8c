package limbway.model.graph;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

import limbway.model.body.LocomotorMode;
import limbway.model.enclosure.Crown;
import limbway.model.enclosure.SupportKind;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;
import limbway.model.geometry.SegmentGrid;

/**
 * Joins crowns with their trunks and with crowns that touch or come within reach; within a crown an animal clambers
 * straight from any hold to any other. {@link CrownEntries} joins them with everything else.
 */
final class Canopy {

    private final Draft draft;
    private final List<Crown> crowns;
    private final List<Set<Integer>> holdsIn = new ArrayList<>();
    private final int[] trunkPiece;

    Canopy(Draft draft) {
        this.draft = draft;
        this.crowns = draft.enclosure().crowns();
        this.trunkPiece = new int[crowns.size()];
        for (int c = 0; c < crowns.size(); c++) {
            holdsIn.add(new LinkedHashSet<>());
            trunkPiece[c] = -1;
        }
    }

    void connect() {
        findTrunks();
        List<Segment> axes = new ArrayList<>();
        double widestM = 0;
        for (Crown crown : crowns) {
            axes.add(crown.space().axis());
            widestM = Math.max(widestM, crown.radiusM());
        }
        if (!axes.isEmpty()) {
            SegmentGrid.forEachNearPair(axes, 2 * widestM + draft.widestGapM(), this::connectNeighbours);
        }
    }

    /** Crowns that hold a place, by number. */
    List<Integer> around(Point p) {
        List<Integer> found = new ArrayList<>();
        for (int c = 0; c < crowns.size(); c++) {
            if (covers(crowns.get(c), p)) {
                found.add(c);
            }
        }
        return found;
    }

    int holdIn(int crown, Point p) {
        int hold = draft.holds().at(p, crowns.get(crown).id());
        include(crown, hold);
        return hold;
    }

    /** Adds the ways between all holds of each crown but those that are there already; call after every hold is known. */
    void addClambers(KnownHolds known) {
        for (Set<Integer> holds : holdsIn) {
            List<Integer> list = new ArrayList<>(holds);
            for (int i = 0; i < list.size(); i++) {
                for (int j = i + 1; j < list.size(); j++) {
                    if (!known.bothInCrowns(list.get(i), list.get(j))) {
                        draft.moves().along(list.get(i), list.get(j), LocomotorMode.CLAMBER, false, draft.branches());
                    }
                }
            }
        }
    }

    private void findTrunks() {
        for (int i = 0; i < draft.pieces().size(); i++) {
            Piece piece = draft.pieces().get(i);
            if (piece.stock().kind() == SupportKind.TRUNK) {
                for (int c = 0; c < crowns.size(); c++) {
                    if (piece.names().contains(crowns.get(c).trunk())) {
                        trunkPiece[c] = i;
                    }
                }
            }
        }
    }

    private void connectNeighbours(int one, int other) {
        Crown a = crowns.get(one);
        Crown b = crowns.get(other);
        double apartM = a.foot().planDistanceM(b.foot());
        double lowM = Math.max(a.baseZM(), b.baseZM());
        double highM = Math.min(a.topZM(), b.topZM());
        double stepM = Math.max(0, lowM - highM);
        double openM = Math.max(0, apartM - a.radiusM() - b.radiusM());
        if (apartM == 0 || StrictMath.hypot(stepM, openM) > draft.widestGapM()) {
            return;
        }
        double middleZM = (lowM + highM) / 2;
        double zA = Math.max(a.baseZM(), Math.min(a.topZM(), middleZM));
        double zB = Math.max(b.baseZM(), Math.min(b.topZM(), middleZM));
        // overlapping crowns meet in the middle of what they share
        double reachA = Math.min(a.radiusM(), apartM);
        double reachB = Math.min(b.radiusM(), apartM);
        double overlapM = Math.max(0, reachA + reachB - apartM);
        double alongA = (reachA - overlapM / 2) / apartM;
        double alongB = 1 - (reachB - overlapM / 2) / apartM;
        Segment between = new Segment(a.foot(), b.foot());
        int holdA = holdIn(one, between.at(alongA).atHeight(zA));
        int holdB = holdIn(other, between.at(openM == 0 ? alongA : alongB).atHeight(zB));
        draft.moves().over(draft.branch(holdA), draft.branch(holdB));
    }

    /** Counts a hold as one among the branches, with its partner on the axis. */
    void include(int c, int hold) {
        if (holdsIn.get(c).add(hold)) {
            holdsIn.get(c).add(axisHold(c, draft.holds().place(hold).zM()));
        }
    }

    private int axisHold(int crown, double zM) {
        Point onAxis = crowns.get(crown).foot().atHeight(zM);
        int piece = trunkPiece[crown];
        if (piece < 0) {
            return draft.holds().at(onAxis, crowns.get(crown).id());
        }
        return draft.holdOn(piece, draft.pieces().get(piece).line().nearestShare(onAxis));
    }

    static boolean covers(Crown crown, Point p) {
        return p.zM() >= crown.baseZM() && p.zM() <= crown.topZM() && p.planDistanceM(crown.foot()) <= crown.radiusM();
    }
}
