package limbway.model.energy;

import java.util.Arrays;
import java.util.List;

import limbway.model.body.LocomotorMode;

/**
 * An energy that never travels without its parts: the total is their sum.
 *
 * @param milliJ energy of each locomotor mode in the order of the enumeration [mJ], each 0 or more
 */
public record EnergyByPart(List<Long> milliJ) {

    /**
     * Checks the number of parts and keeps a copy.
     *
     * @throws IllegalArgumentException if there is not one part for each locomotor mode
     */
    public EnergyByPart {
        milliJ = List.copyOf(milliJ);
        if (milliJ.size() != LocomotorMode.values().length) {
            throw new IllegalArgumentException(
                    "energy by part: parts = " + milliJ.size() + ", allowed " + LocomotorMode.values().length);
        }
    }

    /**
     * Parts from an array.
     *
     * @param milliJ energy by ordinal of the mode [mJ]
     * @return the parts
     */
    public static EnergyByPart of(long[] milliJ) {
        return new EnergyByPart(Arrays.stream(milliJ).boxed().toList());
    }

    /**
     * The part of one mode.
     *
     * @param mode a locomotor mode
     * @return energy [mJ]
     */
    public long part(LocomotorMode mode) {
        return milliJ.get(mode.ordinal());
    }

    /**
     * The sum of all parts.
     *
     * @return energy [mJ]
     */
    public long totalMilliJ() {
        long sum = 0;
        for (long part : milliJ) {
            sum += part;
        }
        return sum;
    }
}
