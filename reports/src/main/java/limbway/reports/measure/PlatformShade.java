package limbway.reports.measure;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

import limbway.model.shade.ShadeYear;

/**
 * What one platform gives through a year.
 *
 * @param platform its name
 * @param shadedMinutesByMonth time in shade while the sun is up, twelve from January
 * @param sunMinutesByMonth time with sun, twelve from January, the same for all platforms
 * @param mendedMinutes time in breach that would be none if this platform alone always lay in shade
 */
public record PlatformShade(
        String platform, List<Integer> shadedMinutesByMonth, List<Integer> sunMinutesByMonth, int mendedMinutes) {

    /** Keeps copies of the lists. */
    public PlatformShade {
        shadedMinutesByMonth = List.copyOf(shadedMinutesByMonth);
        sunMinutesByMonth = List.copyOf(sunMinutesByMonth);
    }

    /**
     * Every platform of a year.
     *
     * @param year which platforms lay in shade when
     * @return one for each, in the order of the year
     */
    public static List<PlatformShade> of(ShadeYear year) {
        int[] mended = mendedMinutes(year);
        List<Integer> sun = list(year.sunMinutesByMonth());
        List<PlatformShade> all = new ArrayList<>();
        for (int platform = 0; platform < mended.length; platform++) {
            List<Integer> shaded = list(year.shadedMinutesByMonth(platform));
            all.add(new PlatformShade(year.platforms().get(platform), shaded, sun, mended[platform]));
        }
        return all;
    }

    /**
     * Time in shade in the whole year.
     *
     * @return minutes
     */
    public int shadedMinutes() {
        return sum(shadedMinutesByMonth);
    }

    /**
     * Share of the time with sun that the platform lies in shade.
     *
     * @return 0 to 1; 0 where there is no sun
     */
    public double share() {
        int sun = sum(sunMinutesByMonth);
        return sun == 0 ? 0 : (double) shadedMinutes() / sun;
    }

    /**
     * The same share in one month.
     *
     * @param month 0 to 11
     * @return 0 to 1; 0 where there is no sun
     */
    public double share(int month) {
        int sun = sunMinutesByMonth.get(month);
        return sun == 0 ? 0 : (double) shadedMinutesByMonth.get(month) / sun;
    }

    private static int sum(List<Integer> minutes) {
        return minutes.stream().mapToInt(m -> m).sum();
    }

    private static List<Integer> list(int[] minutes) {
        return Arrays.stream(minutes).boxed().toList();
    }

    /** One platform more mends a moment at which just one is missing and this one lies in the sun. */
    private static int[] mendedMinutes(ShadeYear year) {
        int[] minutes = new int[year.platforms().size()];
        for (int day = 0; day < year.calendar().days(); day++) {
            for (int slot = 0; slot < year.calendar().slots(); slot++) {
                if (!year.isBreach(day, slot)
                        || year.shadedCount(day, slot) + 1 < year.rule().atLeast()) {
                    continue;
                }
                for (int platform = 0; platform < minutes.length; platform++) {
                    minutes[platform] += year.isShaded(platform, day, slot)
                            ? 0
                            : year.calendar().stepMin();
                }
            }
        }
        return minutes;
    }
}
