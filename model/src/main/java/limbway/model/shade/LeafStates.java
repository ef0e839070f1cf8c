package limbway.model.shade;

import java.time.LocalDate;
import java.time.MonthDay;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.List;

import limbway.model.enclosure.Crown;

/** Which crowns carry leaves on each day of the year; days on which the same ones do share a state. */
final class LeafStates {

    private static final int LEAP_YEAR = 2024;

    private final List<BitSet> states = new ArrayList<>();
    private final int[] stateOfDay = new int[366];

    LeafStates(List<Crown> crowns) {
        for (int day = 0; day < stateOfDay.length; day++) {
            MonthDay date = MonthDay.from(LocalDate.ofYearDay(LEAP_YEAR, day + 1));
            BitSet inLeaf = new BitSet();
            for (int crown = 0; crown < crowns.size(); crown++) {
                inLeaf.set(crown, crowns.get(crown).foliage().isInLeaf(date));
            }
            int known = states.indexOf(inLeaf);
            if (known < 0) {
                known = states.size();
                states.add(inLeaf);
            }
            stateOfDay[day] = known;
        }
    }

    int count() {
        return states.size();
    }

    int on(MonthDay day) {
        return stateOfDay[day.atYear(LEAP_YEAR).getDayOfYear() - 1];
    }

    boolean isInLeaf(int state, int crown) {
        return states.get(state).get(crown);
    }
}
