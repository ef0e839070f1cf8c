package limbway.model.volume;

import org.locationtech.jts.geom.Geometry;

import limbway.model.enclosure.Barrier;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;

/** A wall or pane through which no hand reaches; over its top and under its base there is a way. */
final class WallScreen implements Screen {

    /** What lies on its face is in front of it. */
    private static final double SKIN_M = 1e-6;

    private final PlanArea inner;
    private final Block block;

    WallScreen(Barrier barrier) {
        Geometry footprint = barrier.footprint().toPolygon();
        this.inner = new PlanArea(footprint.buffer(-SKIN_M, 2));
        this.block = new Block(new PlanArea(footprint), barrier.baseZM(), barrier.topZM(), 0);
    }

    @Override
    public boolean hides(Point from, Point to) {
        double riseM = to.zM() - from.zM();
        double low = block.baseZM() + SKIN_M;
        double high = block.topZM() - SKIN_M;
        if (Math.min(from.zM(), to.zM()) >= high || Math.max(from.zM(), to.zM()) <= low) {
            return false;
        }
        double first = 0;
        double last = 1;
        if (riseM != 0) {
            double atBase = (low - from.zM()) / riseM;
            double atTop = (high - from.zM()) / riseM;
            first = Math.max(0, Math.min(atBase, atTop));
            last = Math.min(1, Math.max(atBase, atTop));
        }
        Segment way = new Segment(from, to);
        Point a = way.at(first);
        Point b = way.at(last);
        return inner.edgeBetween(a.xM(), a.yM(), b.xM(), b.yM()) || inner.covers(a.xM(), a.yM());
    }

    @Override
    public Shape shape() {
        return block;
    }
}
