package limbway.model.volume;

import java.util.ArrayList;
import java.util.List;

import limbway.model.body.Body;
import limbway.model.enclosure.Enclosure;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;

/**
 * How much of the room in an enclosure lies within reach of a body.
 *
 * <p>Room counts if a hand reaches it from the surface of something that the body can be on: the ground, and every piece
 * of support, side of a panel, deck or crown to which its moves lead from a resource (a door that opens at some hour is
 * open; without any resource, from all of the ground). It is cut off at the outline of the enclosure, at the ground with
 * its slopes, and at the top or, where mesh covers the whole plan, at that roof. The inside of walls, what lies under water
 * and what live wire keeps free does not count, nor does what is hidden behind mesh, glass or a wall from the nearest place
 * of each thing that the body can be on.
 *
 * <p>Not cut off: the room under a deck, since arms reach round its edge; what a deck, a support or a hill hides; the room
 * above obstacles, which have no height. Cut off too much: what only a place farther than the nearest sees past the end of
 * a wall or panel; what is reached round the free edge of a panel of which one side is used, or through an open door.
 *
 * @param m3 room within reach [m³]
 * @param standardErrorM3 standard error of {@code m3} from sampling [m³]
 * @param offGroundM3 room within reach of something else than the ground [m³], at most {@code m3}
 * @param perGroundM2 {@code m3} for each square metre of the enclosure's plan [m³/m²]
 * @param grossM3 all room over the plan, from the ground to the top or the roof of mesh [m³]
 * @param floorM2 area that can be walked on, seen from above: the ground to which it comes and decks [m²]
 * @param reachM reach that was taken [m]
 * @param topM height up to which room was counted; of a sloping roof of mesh its highest corner [m]
 */
public record UsableVolume(
        double m3,
        double standardErrorM3,
        double offGroundM3,
        double perGroundM2,
        double grossM3,
        double floorM2,
        double reachM,
        double topM) {

    /** Any number; chosen once so that the same enclosure always gives the same answer. */
    private static final long SEED = 20_260_101L;

    /**
     * Measures the room within reach of a body.
     *
     * @param enclosure what stands there
     * @param graph the same enclosure, compiled
     * @param costs the moves of the body on that graph
     * @param settings reach, top and fineness
     * @return the volumes; the same enclosure always gives the same
     * @source the idea: union of the spheres that a hand reaches, swept along what is held; no published number for
     *     apes was found, so the body's gap reach stands for the radius (assumption)
     */
    public static UsableVolume of(Enclosure enclosure, RouteGraph graph, MoveCosts costs, VolumeSettings settings) {
        Body body = costs.body();
        double reachM = settings.reachM(body);
        double topM = settings.topM(enclosure, body);
        Footholds footholds = new Footholds(enclosure, graph, costs);
        Roof roof = Roof.of(enclosure);
        Extent extent = Extent.of(enclosure, topM, roof);
        Stops stops = Stops.of(enclosure, footholds.usedSides(), roof);
        Columns columns = new Columns(extent, stops, reachM, settings.columns(), SEED);
        Columns.Estimate offGround = columns.measure(footholds.aloft());
        List<Shape> all = new ArrayList<>(footholds.aloft());
        all.addAll(footholds.ground());
        Columns.Estimate whole = columns.measure(all);
        return new UsableVolume(
                whole.m3(),
                whole.standardErrorM3(),
                offGround.m3(),
                whole.m3() / extent.plan().areaM2(),
                extent.grossM3(),
                footholds.floorM2(),
                reachM,
                extent.topM());
    }

    /**
     * All room over the plan of an enclosure.
     *
     * @param enclosure what stands there
     * @param topM height up to which room counts where no roof of mesh covers the whole plan [m], above 0
     * @return from the ground to the roof or the top [m³]
     */
    public static double grossM3(Enclosure enclosure, double topM) {
        return Extent.of(enclosure, topM, Roof.of(enclosure)).grossM3();
    }

    /**
     * Share of the gross room that lies within reach.
     *
     * @return 0 to 1
     */
    public double share() {
        return m3 / grossM3;
    }

    /**
     * Room within reach for each square metre that can be walked on.
     *
     * @return cubic metres for each square metre; 0 where nothing can be walked on
     */
    public double perFloorM2() {
        return floorM2 > 0 ? m3 / floorM2 : 0;
    }
}
