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
 * <p>Room counts if a hand reaches it from the surface of something that the body can be on: the open ground, and every
 * piece of support, deck or crown to which its moves lead from the ground or from a resource. It is cut off at the
 * outline of the enclosure, at the ground and at the top. Whether something stands between the hand and the place is not
 * looked at, so the room under a deck counts; obstacles have no height, so the room above them counts where something
 * else is near.
 *
 * @param m3 room within reach [m³]
 * @param standardErrorM3 standard error of {@code m3} from sampling the plan [m³]
 * @param offGroundM3 room within reach of something else than the ground [m³], at most {@code m3}
 * @param perGroundM2 {@code m3} for each square metre of the enclosure's plan [m³/m²]
 * @param grossM3 area of the plan times the top [m³]
 * @param floorM2 level area that can be walked on: open ground and decks [m²]
 * @param reachM reach that was taken [m]
 * @param topM height up to which room was counted [m]
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
        PlanArea plan = PlanArea.of(enclosure.ground().outline());
        Columns columns = new Columns(plan, topM, reachM, settings.columns(), SEED);
        Columns.Estimate offGround = columns.measure(footholds.aloft());
        List<Shape> all = new ArrayList<>(footholds.aloft());
        all.add(footholds.ground());
        Columns.Estimate whole = columns.measure(all);
        return new UsableVolume(
                whole.m3(),
                whole.standardErrorM3(),
                offGround.m3(),
                whole.m3() / plan.areaM2(),
                plan.areaM2() * topM,
                footholds.floorM2(),
                reachM,
                topM);
    }

    /**
     * Share of the gross room that lies within reach.
     *
     * @return 0 to 1
     */
    public double share() {
        return m3 / grossM3;
    }
}
