package limbway.model.shade;

import java.time.MonthDay;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

import limbway.model.enclosure.Site;
import limbway.model.geometry.Point;
import limbway.model.light.SunPosition;

/** Reads from a finished year, moment by moment, which points would have to be shaded to end the breach. */
final class RoofDemands {

    private final Site site;
    private final ShadeYear year;
    private final RoofJudge judge;

    private RoofDemands(Site site, ShadeYear year, RoofJudge judge) {
        this.site = site;
        this.year = year;
        this.judge = judge;
    }

    /**
     * All moments of breach.
     *
     * @param site where the sun is seen from
     * @param year the year that was audited
     * @param judge what lights the points
     * @param eachDay run before each day is read; may end the reading by an exception
     * @return what is missing, in the order of the year
     */
    static List<RoofDemand> of(Site site, ShadeYear year, RoofJudge judge, Runnable eachDay) {
        RoofDemands reader = new RoofDemands(site, year, judge);
        List<RoofDemand> demands = new ArrayList<>();
        for (int day = 0; day < year.calendar().days(); day++) {
            eachDay.run();
            for (int slot = 0; slot < year.calendar().slots(); slot++) {
                if (year.isBreach(day, slot)) {
                    demands.add(reader.at(day, slot));
                }
            }
        }
        return demands;
    }

    private RoofDemand at(int day, int slot) {
        SunPosition sun = SunPosition.at(site, year.calendar().moment(day, slot));
        Point towards = sun.direction();
        MonthDay date = MonthDay.from(year.calendar().date(day));
        List<RoofDemand.OpenDeck> open = new ArrayList<>();
        for (int platform = 0; platform < year.platforms().size(); platform++) {
            if (!year.isShaded(platform, day, slot)) {
                open.add(openDeck(platform, towards, date));
            }
        }
        return new RoofDemand(
                sun.altitudeDeg(),
                towards.xM() / towards.zM(),
                towards.yM() / towards.zM(),
                year.rule().atLeast() - year.shadedCount(day, slot),
                open);
    }

    private RoofDemand.OpenDeck openDeck(int platform, Point towards, MonthDay date) {
        List<Point> points = judge.points().get(platform);
        int[] lit = IntStream.range(0, points.size())
                .filter(i -> judge.isLit(points.get(i), towards, date))
                .toArray();
        int missing = year.rule().leastPoints(points.size()) - (points.size() - lit.length);
        return new RoofDemand.OpenDeck(platform, missing, lit);
    }
}
