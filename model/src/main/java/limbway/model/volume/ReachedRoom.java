package limbway.model.volume;

import java.util.ArrayList;
import java.util.List;

import limbway.model.enclosure.Enclosure;
import limbway.model.geometry.Segment;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;

/**
 * The room within reach of a body, kept ready to be asked how much of it lies low, and how much of it lies along the ways
 * that were taken. All figures come from the same upright lines, so that parts compare exactly with the whole.
 *
 * <p>What counts as within reach is told at {@link UsableVolume}. Threads may share it.
 */
public final class ReachedRoom {

    private static final long SEED = 20_260_101L;

    private final Enclosure enclosure;
    private final Roof roof;
    private final Stops stops;
    private final List<Shape> aloft;
    private final double reachM;
    private final double topM;
    private final int columns;
    private final double m3;

    private ReachedRoom(Enclosure enclosure, RouteGraph graph, MoveCosts costs, VolumeSettings settings) {
        this.enclosure = enclosure;
        Footholds footholds = new Footholds(enclosure, graph, costs);
        roof = Roof.of(enclosure);
        stops = Stops.of(enclosure, footholds.usedSides(), roof);
        aloft = footholds.aloft();
        reachM = settings.reachM(costs.body());
        topM = settings.topM(enclosure, costs.body());
        columns = settings.columns();
        List<Shape> all = new ArrayList<>(aloft);
        all.addAll(footholds.ground());
        m3 = measure(all, topM);
    }

    /**
     * Finds what a body can be on.
     *
     * @param enclosure what stands there
     * @param graph the same enclosure, compiled
     * @param costs the moves of the body on that graph
     * @param settings reach, top and fineness
     * @return the room; the same enclosure always gives the same
     */
    public static ReachedRoom of(Enclosure enclosure, RouteGraph graph, MoveCosts costs, VolumeSettings settings) {
        return new ReachedRoom(enclosure, graph, costs, settings);
    }

    /**
     * All of it.
     *
     * @return room within reach [m³]
     */
    public double m3() {
        return m3;
    }

    /**
     * What lies within reach of something else than the ground.
     *
     * @return room [m³], at most {@link #m3()}
     */
    public double offGroundM3() {
        return measure(aloft, topM);
    }

    /**
     * The lower part of that.
     *
     * @param heightM height above level 0 up to which room counts [m], above 0
     * @return room within reach of something else than the ground, not above that height [m³]
     */
    public double offGroundM3(double heightM) {
        return measure(aloft, Math.min(heightM, topM));
    }

    /**
     * What lies within reach of some lines: ways along which a body went, or, as lines without length, places at which it
     * stayed. Reach is taken from the line itself, not from the surface of what carries it.
     *
     * @param lines ways and places
     * @return room [m³], at most {@link #m3()}
     */
    public double alongM3(List<Segment> lines) {
        List<Shape> bars = new ArrayList<>();
        for (Segment line : lines) {
            bars.add(new Bar(line, 0));
        }
        // beside a screen the end of a short line may be seen where the nearest place of the whole support is not
        return bars.isEmpty() ? 0 : Math.min(m3, measure(bars, topM));
    }

    private double measure(List<Shape> shapes, double highestM) {
        return new Columns(Extent.of(enclosure, highestM, roof), stops, reachM, columns, SEED)
                .measure(shapes)
                .m3();
    }
}
