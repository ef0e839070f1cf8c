package limbway.reports.words;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

import limbway.model.body.LocomotorMode;
import limbway.model.energy.EnergyByPart;

/** An energy as a sum of its parts, rounded so that the printed parts add up to the printed total. */
public final class EnergyText {

    private static final long MILLI = 1000;
    private static final long LEAST_TENTHS_MILLIJ = 10_000 * MILLI;
    private static final long LEAST_WHOLE_MILLIJ = 100_000 * MILLI;

    private EnergyText() {}

    /**
     * The total and its parts: whole joules below 10 kJ, from there to 100 kJ tenths of a kilojoule, above whole ones.
     *
     * @param energy an energy
     * @return for example {@code 412 J = 38 down + 61 level + 313 up}; parts of nothing are left out, and a single
     *     part is only named
     */
    public static String sum(EnergyByPart energy) {
        long milliJ = energy.totalMilliJ();
        long step = milliJ < LEAST_TENTHS_MILLIJ ? MILLI : milliJ < LEAST_WHOLE_MILLIJ ? 100 * MILLI : 1000 * MILLI;
        double perStep = step == 100 * MILLI ? 0.1 : 1;
        String unit = step == MILLI ? " J" : " kJ";
        long steps = Math.round(milliJ / (double) step);
        long[] ofPart = new long[LocomotorMode.values().length];
        long left = steps;
        for (LocomotorMode mode : LocomotorMode.values()) {
            ofPart[mode.ordinal()] = energy.part(mode) / step;
            left -= ofPart[mode.ordinal()];
        }
        List<LocomotorMode> modes = new ArrayList<>(List.of(LocomotorMode.values()));
        modes.sort(Comparator.comparingLong((LocomotorMode mode) -> -(energy.part(mode) % step)));
        for (int i = 0; i < left; i++) {
            ofPart[modes.get(i).ordinal()]++;
        }
        List<LocomotorMode> present = PartText.asTold().stream()
                .filter(mode -> ofPart[mode.ordinal()] > 0)
                .toList();
        String total = Figures.decimals(steps * perStep, 1) + unit;
        if (present.isEmpty()) {
            return total;
        }
        if (present.size() == 1) {
            return total + ", all " + PartText.inSum(present.get(0));
        }
        List<String> parts = new ArrayList<>();
        for (LocomotorMode mode : present) {
            parts.add(Figures.decimals(ofPart[mode.ordinal()] * perStep, 1) + " " + PartText.inSum(mode));
        }
        return total + " = " + String.join(" + ", parts);
    }
}
