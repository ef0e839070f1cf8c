package limbway.model.graph;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import limbway.model.geometry.Point;

/** Turns a finished draft into the flat arrays of a graph. */
final class Assembly {

    private Assembly() {}

    static RouteGraph of(Draft draft, List<List<Integer>> useHolds) {
        int[] number = Numbering.of(draft.holds());
        int holds = number.length;
        Point[] places = new Point[holds];
        String[] supports = new String[holds];
        boolean[] grounded = new boolean[holds];
        for (int h = 0; h < holds; h++) {
            places[number[h]] = draft.holds().place(h);
            supports[number[h]] = draft.holds().name(h);
            grounded[number[h]] = draft.holds().onGround(h);
        }
        List<int[]> numberedUse = new ArrayList<>();
        for (List<Integer> list : useHolds) {
            numberedUse.add(list.stream().mapToInt(h -> number[h]).sorted().toArray());
        }
        return new RouteGraph(
                places,
                supports,
                grounded,
                arrays(draft, number, places),
                draft.enclosure().resources(),
                numberedUse);
    }

    private static MoveArrays arrays(Draft draft, int[] number, Point[] places) {
        List<MoveList.Move> list = draft.moves().all();
        list.sort(Comparator.<MoveList.Move>comparingInt(move -> number[move.from()])
                .thenComparingInt(move -> number[move.to()])
                .thenComparing(MoveList.Move::mode)
                .thenComparingDouble(MoveList.Move::gapM));
        Map<Carrier, Integer> carriers = new LinkedHashMap<>();
        for (MoveList.Move move : list) {
            carriers.putIfAbsent(move.first(), carriers.size());
            carriers.putIfAbsent(move.second(), carriers.size());
        }
        MoveArrays arrays =
                new MoveArrays(places.length, list.size(), carriers.keySet().toArray(Carrier[]::new));
        for (int m = 0; m < list.size(); m++) {
            MoveList.Move move = list.get(m);
            Point from = places[number[move.from()]];
            Point to = places[number[move.to()]];
            Point way = to.minus(from);
            double lengthM = way.lengthM();
            arrays.from[m] = number[move.from()];
            arrays.to[m] = number[move.to()];
            arrays.mode[m] = (byte) move.mode().ordinal();
            arrays.onGround[m] = move.onGround();
            arrays.lengthM[m] = lengthM;
            arrays.slopeDeg[m] = slopeDeg(way);
            // places along one line share a zero, so that rounded costs add up however the line is divided
            arrays.startM[m] = from.dot(way.times(1 / lengthM));
            arrays.gapM[m] = move.gapM();
            arrays.firstCarrier[m] = carriers.get(move.first());
            arrays.secondCarrier[m] = carriers.get(move.second());
        }
        arrays.index();
        return arrays;
    }

    private static double slopeDeg(Point way) {
        return StrictMath.toDegrees(StrictMath.atan2(way.zM(), StrictMath.hypot(way.xM(), way.yM())));
    }
}
