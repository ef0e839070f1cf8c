package limbway.model.heat;

import java.util.List;
import java.util.stream.IntStream;

/**
 * How hot one support gets through the 24 hours of a day, each looked at in its middle.
 *
 * @param supportId name of the support
 * @param surface surface that it is taken to have
 * @param diameterM mean thickness [m]
 * @param meanC temperature round it, mean of the points along it [°C], 24 values
 * @param hottestC the same at the hottest of these points [°C], 24 values
 * @param sunnySideC upper bound of the line that faces the sun at the hottest point, see
 *     {@link MemberBalance#sunnySideC} [°C], 24 values
 */
public record MemberDay(
        String supportId,
        Surface surface,
        double diameterM,
        List<Double> meanC,
        List<Double> hottestC,
        List<Double> sunnySideC) {

    /** Keeps copies of the lists. */
    public MemberDay {
        meanC = List.copyOf(meanC);
        hottestC = List.copyOf(hottestC);
        sunnySideC = List.copyOf(sunnySideC);
    }

    /**
     * The hour in which its hottest point is hottest.
     *
     * @return 0 to 23; the earliest of several
     */
    public int hottestHour() {
        int best = 0;
        for (int hour = 1; hour < hottestC.size(); hour++) {
            if (hottestC.get(hour) > hottestC.get(best)) {
                best = hour;
            }
        }
        return best;
    }

    /**
     * Temperature of its hottest point in its hottest hour.
     *
     * @return degrees Celsius
     */
    public double peakC() {
        return hottestC.get(hottestHour());
    }

    /**
     * Hours in which its hottest point reaches the threshold of a burn.
     *
     * @param hold how long it is touched
     * @return hours of the day, 0 to 23
     */
    public List<Integer> hoursThatBurn(ContactLimits.Hold hold) {
        return IntStream.range(0, hottestC.size())
                .filter(hour -> ContactLimits.burns(surface.touch(), hold, hottestC.get(hour)))
                .boxed()
                .toList();
    }

    /**
     * Whether the temperature follows the sun quickly enough for these figures.
     *
     * @return false for thick timber, rope and concrete: read its figures as what a long steady sun would lead to
     */
    public boolean isSteady() {
        return ResponseTime.isSteady(surface.touch(), diameterM);
    }
}
