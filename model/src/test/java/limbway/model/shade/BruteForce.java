package limbway.model.shade;

import java.time.MonthDay;
import java.util.Arrays;

import limbway.model.enclosure.Enclosure;
import limbway.model.geometry.Point;
import limbway.model.light.SunPosition;

/** The audit without a tree: every point against every caster, until something settles it. */
public final class BruteForce {

    private final Enclosure enclosure;
    private final ShadeScene scene;
    private final ShadeRule rule;
    private final ShadeCalendar calendar;
    private final int[] all;

    /**
     * A check.
     *
     * @param enclosure what stands there
     * @param rule what counts as shaded
     * @param calendar moments
     */
    public BruteForce(Enclosure enclosure, ShadeRule rule, ShadeCalendar calendar) {
        this.enclosure = enclosure;
        this.scene = ShadeScene.of(enclosure, ShadeSettings.standard());
        this.rule = rule;
        this.calendar = calendar;
        this.all = new int[scene.size()];
        Arrays.setAll(all, i -> i);
    }

    /**
     * Shaded platforms at each moment of a day.
     *
     * @param day 0 for the first of January
     * @return counts, -1 where the sun is too low
     */
    public int[] shadedCounts(int day) {
        int[] counts = new int[calendar.slots()];
        int season = scene.season(MonthDay.from(calendar.date(day)));
        for (int slot = 0; slot < counts.length; slot++) {
            SunPosition sun = SunPosition.at(enclosure.site(), calendar.moment(day, slot));
            counts[slot] = sun.altitudeDeg() <= rule.lowestSunDeg() ? -1 : shaded(sun.direction(), season);
        }
        return counts;
    }

    private int shaded(Point sun, int season) {
        int count = 0;
        for (var platform : enclosure.platforms()) {
            SampleGrid grid = new SampleGrid(platform, ShadeAudit.PER_SIDE);
            int points = 0;
            for (int i = 0; i < grid.size(); i++) {
                double beam =
                        scene.through(grid.x(i), grid.y(i), grid.z(), sun, season, all, all.length, rule.mostBeam());
                points += beam <= rule.mostBeam() ? 1 : 0;
            }
            count += points >= rule.leastPoints(grid.size()) ? 1 : 0;
        }
        return count;
    }
}
