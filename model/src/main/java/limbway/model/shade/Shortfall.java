package limbway.model.shade;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * How far one platform is from ending the breaches by shade of its own.
 *
 * @param platform its name
 * @param mendableMinutes time in breach that would end if this platform were shaded, and nothing else
 * @param otherMinutes time in breach that would not: it is shaded already, or more than one platform is missing
 * @param missingPoints sample points that would have to be shaded, on the mean over the mendable time; 0 where there is none
 */
public record Shortfall(String platform, int mendableMinutes, int otherMinutes, double missingPoints) {

    /** All platforms, nearest first: least time that shade there cannot end, then fewest points missing in all. */
    static List<Shortfall> ranked(ShadeYear year, List<RoofDemand> demands) {
        List<Shortfall> all = new ArrayList<>();
        for (int platform = 0; platform < year.platforms().size(); platform++) {
            all.add(of(year, platform, demands));
        }
        all.sort(Comparator.comparingInt(Shortfall::otherMinutes)
                .thenComparingDouble(each -> each.missingPoints() * each.mendableMinutes()));
        return all;
    }

    private static Shortfall of(ShadeYear year, int platform, List<RoofDemand> demands) {
        int mendable = 0;
        int missing = 0;
        for (RoofDemand demand : demands) {
            if (demand.wanted() == 1 && demand.leavesOpen(platform)) {
                mendable++;
                missing += demand.missingAt(platform);
            }
        }
        int stepMin = year.calendar().stepMin();
        return new Shortfall(
                year.platforms().get(platform),
                mendable * stepMin,
                (demands.size() - mendable) * stepMin,
                mendable == 0 ? 0 : (double) missing / mendable);
    }
}
