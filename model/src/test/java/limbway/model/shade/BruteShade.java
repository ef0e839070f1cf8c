package limbway.model.shade;

import java.time.MonthDay;
import java.util.List;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Platform;
import limbway.model.geometry.Point;
import limbway.model.light.SunPosition;

/** Shade without a tree of boxes: every sample point against every caster. */
public final class BruteShade {

    private final Enclosure enclosure;
    private final ShadeScene scene;
    private final ShadeRule rule;
    private final ShadeCalendar calendar;
    private final List<SampleGrid> grids;
    private final boolean stopsWhenDark;

    /**
     * A slow audit of all platforms.
     *
     * @param stopsWhenDark whether a point that is dark enough is not held against the casters left
     */
    public BruteShade(Enclosure enclosure, ShadeRule rule, ShadeCalendar calendar, boolean stopsWhenDark) {
        this.enclosure = enclosure;
        this.scene = ShadeScene.of(enclosure, ShadeSettings.standard());
        this.rule = rule;
        this.calendar = calendar;
        this.stopsWhenDark = stopsWhenDark;
        grids = enclosure.platforms().stream()
                .map((Platform platform) -> new SampleGrid(platform, ShadeAudit.PER_SIDE))
                .toList();
    }

    /** Number of casters. */
    public int casters() {
        return scene.size();
    }

    /** Whether the rule asks for shade at a moment. */
    public boolean isSunUp(int day, int slot) {
        return sun(day, slot).altitudeDeg() > rule.lowestSunDeg();
    }

    /** Which platforms are shaded at a moment with sun. */
    public boolean[] shaded(int day, int slot) {
        Point sun = sun(day, slot).direction();
        int season = scene.season(MonthDay.from(calendar.date(day)));
        boolean hidden = scene.isBelowHorizon(sun);
        boolean[] shaded = new boolean[grids.size()];
        for (int p = 0; p < shaded.length; p++) {
            SampleGrid grid = grids.get(p);
            int dark = 0;
            for (int i = 0; i < grid.size(); i++) {
                dark += beam(grid.x(i), grid.y(i), grid.z(), sun, season) <= rule.mostBeam() ? 1 : 0;
            }
            shaded[p] = hidden || dark >= rule.leastPoints(grid.size());
        }
        return shaded;
    }

    private SunPosition sun(int day, int slot) {
        return SunPosition.at(enclosure.site(), calendar.moment(day, slot));
    }

    private double beam(double x, double y, double z, Point sun, int season) {
        double beam = 1;
        for (Caster caster : scene.casters()) {
            beam *= caster.through(x, y, z, sun.xM(), sun.yM(), sun.zM(), season);
            if (stopsWhenDark && beam <= rule.mostBeam()) {
                return beam;
            }
        }
        return beam;
    }
}
