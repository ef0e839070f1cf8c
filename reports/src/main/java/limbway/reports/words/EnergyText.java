package limbway.reports.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import limbway.model.body.LocomotorMode;
import limbway.model.energy.EnergyByPart;

/** An energy as a sum of its parts, rounded so that the printed parts add up to the printed total. */
public final class EnergyText {

    private static final long MILLI = 1000;

    private EnergyText() {}

    /**
     * The total and its parts.
     *
     * @param energy an energy
     * @return for example {@code 412 J = 38 descent + 61 level + 313 climb}; parts of nothing are left out, and a single part is only named
     */
    public static String sum(EnergyByPart energy) {
        long totalJ = Math.round(energy.totalMilliJ() / (double) MILLI);
        List<LocomotorMode> modes = new ArrayList<>();
        long[] wholeJ = new long[LocomotorMode.values().length];
        long left = totalJ;
        for (LocomotorMode mode : LocomotorMode.values()) {
            wholeJ[mode.ordinal()] = energy.part(mode) / MILLI;
            left -= wholeJ[mode.ordinal()];
            modes.add(mode);
        }
        modes.sort(Comparator.comparingLong((LocomotorMode mode) -> -(energy.part(mode) % MILLI)));
        for (int i = 0; i < left; i++) {
            wholeJ[modes.get(i).ordinal()]++;
        }
        List<String> parts = new ArrayList<>();
        for (LocomotorMode mode : LocomotorMode.values()) {
            if (wholeJ[mode.ordinal()] > 0) {
                parts.add(Figures.decimals((double) wholeJ[mode.ordinal()], 0) + " " + mode.part());
            }
        }
        String total = Figures.decimals((double) totalJ, 0) + " J";
        if (parts.size() <= 1) {
            return total
                    + parts.stream()
                            .map(part -> ", all " + part.replaceAll(".* ", ""))
                            .findFirst()
                            .orElse("");
        }
        return total + " = " + String.join(" + ", parts);
    }
}
