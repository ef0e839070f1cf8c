package limbway.model.shade;

import java.time.MonthDay;
import java.util.List;
import java.util.stream.IntStream;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Platform;
import limbway.model.geometry.Point;

/** Judges roofs by the scene and the audit themselves. */
final class AuditJudge implements RoofJudge {

    private final ShadeSettings settings;
    private final ShadeYear year;
    private final int threads;
    private final ShadeScene scene;
    private final List<List<Point>> points;

    AuditJudge(Enclosure enclosure, ShadeSettings settings, ShadeYear year, int threads) {
        this.settings = settings;
        this.year = year;
        this.threads = threads;
        scene = ShadeScene.of(enclosure, settings);
        points = year.platforms().stream()
                .map(name -> enclosure.platforms().stream()
                        .filter(platform -> platform.id().equals(name))
                        .findFirst()
                        .orElseThrow(() -> new IllegalArgumentException("roof search: no platform \"" + name + "\"")))
                .map(AuditJudge::points)
                .toList();
    }

    private static List<Point> points(Platform platform) {
        SampleGrid grid = new SampleGrid(platform, ShadeAudit.PER_SIDE);
        return IntStream.range(0, grid.size())
                .mapToObj(i -> new Point(grid.x(i), grid.y(i), grid.z()))
                .toList();
    }

    @Override
    public List<List<Point>> points() {
        return points;
    }

    @Override
    public boolean isLit(Point point, Point towardsSun, MonthDay day) {
        double beam = scene.beam(point.xM(), point.yM(), point.zM(), towardsSun, scene.season(day));
        return beam > year.rule().mostBeam();
    }

    @Override
    public ShadeYear audit(Enclosure mended) {
        return ShadeAudit.of(
                        mended, settings, year.rule(), year.calendar(), year.platforms(), threads, (done, all) -> true)
                .orElseThrow(() -> new IllegalStateException("roof search: interrupted while a roof was audited"));
    }
}
