package limbway.model.graph;

import java.util.ArrayList;
import java.util.List;

import limbway.model.geometry.Point;

/** Turns a finished draft into the flat arrays of a graph. */
final class Assembly {

    private Assembly() {}

    static RouteGraph of(Draft draft, List<List<Integer>> useHolds) {
        int[] number = Numbering.of(draft.holds());
        int count = number.length;
        HoldArrays holds =
                new HoldArrays(count, draft.enclosure().ground().terrain().isLevel());
        for (int h = 0; h < count; h++) {
            Point place = draft.holds().place(h);
            holds.xM[number[h]] = place.xM();
            holds.yM[number[h]] = place.yM();
            holds.zM[number[h]] = place.zM();
            holds.heightM[number[h]] = draft.holds().heightM(h);
            holds.support[number[h]] = draft.holds().name(h);
            holds.onGround[number[h]] = draft.holds().onGround(h);
        }
        List<int[]> numberedUse = new ArrayList<>();
        for (List<Integer> list : useHolds) {
            numberedUse.add(list.stream().mapToInt(h -> number[h]).sorted().toArray());
        }
        return new RouteGraph(
                holds,
                arrays(draft.moves(), number),
                draft.enclosure().resources(),
                draft.enclosure().bounds().doors(),
                numberedUse,
                draft.holds().moved());
    }

    private static MoveArrays arrays(MoveList list, int[] number) {
        int[] order = new MoveOrder(list, number).distinct();
        MoveArrays arrays = new MoveArrays(number.length, order.length, list.carriers());
        for (int m = 0; m < order.length; m++) {
            int found = order[m];
            arrays.from[m] = number[list.from(found)];
            arrays.to[m] = number[list.to(found)];
            arrays.kind[m] = list.kind(found);
            arrays.gapM[m] = list.gapM(found);
            arrays.firstCarrier[m] = list.firstCarrier(found);
            arrays.secondCarrier[m] = list.secondCarrier(found);
            arrays.stiffnessNPerM[m] = list.stiffnessNPerM(found);
            arrays.door[m] = list.door(found);
        }
        arrays.index();
        return arrays;
    }
}
