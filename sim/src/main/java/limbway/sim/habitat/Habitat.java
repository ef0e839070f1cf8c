package limbway.sim.habitat;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

import limbway.model.body.Body;
import limbway.model.energy.EnergySettings;
import limbway.model.graph.GraphSettings;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.model.route.ChoiceSharpness;
import limbway.model.route.Routes;
import limbway.model.study.Animal;
import limbway.model.study.Variant;

/**
 * A layout made ready to be lived in: the graph compiled once, and the ways of every body.
 *
 * <p>What it tells never changes, so threads may share it.
 */
public final class Habitat {

    private final Variant layout;
    private final List<Animal> animals;
    private final RouteGraph graph;
    private final EnergySettings energy;
    private final Map<Body, Routes> routes = new LinkedHashMap<>();
    private final Map<Body, Passages> passages = new LinkedHashMap<>();

    /**
     * Compiles a layout for a group of animals.
     *
     * @param layout what stands there and what is fed
     * @param animals who lives there, at least one
     * @param energy multipliers of the energy model
     * @param sharpness how strictly the cheaper way is taken
     */
    public Habitat(Variant layout, List<Animal> animals, EnergySettings energy, ChoiceSharpness sharpness) {
        this.layout = layout;
        this.animals = List.copyOf(animals);
        this.energy = energy;
        List<Body> bodies = animals.stream().map(Animal::body).distinct().toList();
        this.graph = RouteGraph.compile(layout.enclosure(), GraphSettings.forBodies(bodies));
        for (Body body : bodies) {
            routes.put(body, new Routes(graph, MoveCosts.of(graph, body, energy), sharpness));
        }
    }

    /**
     * The layout.
     *
     * @return what stands there and what is fed
     */
    public Variant layout() {
        return layout;
    }

    /**
     * The group.
     *
     * @return animals in the order of the study
     */
    public List<Animal> animals() {
        return animals;
    }

    /**
     * The compiled enclosure.
     *
     * @return the graph
     */
    public RouteGraph graph() {
        return graph;
    }

    /**
     * The different bodies of the group.
     *
     * @return each body once, in the order of the animals
     */
    public List<Body> bodies() {
        return List.copyOf(routes.keySet());
    }

    /**
     * The energy model.
     *
     * @return the multipliers that moves are priced with
     */
    public EnergySettings energy() {
        return energy;
    }

    /**
     * The ways of one body between the places where animals stop, looked up at the first call and kept.
     *
     * @param body a body of the group
     * @return its passages, the same object at every call
     * @throws IllegalArgumentException if no animal of the group has that body
     */
    public Passages passages(Body body) {
        Routes ways = routes(body);
        synchronized (passages) {
            return passages.computeIfAbsent(body, b -> new Passages(ways));
        }
    }

    /**
     * The ways of one body.
     *
     * @param body a body of the group
     * @return its routes
     * @throws IllegalArgumentException if no animal of the group has that body
     */
    public Routes routes(Body body) {
        Routes found = routes.get(body);
        if (found == null) {
            throw new IllegalArgumentException("habitat: body = " + body.name() + ", allowed "
                    + routes.keySet().stream().map(Body::name).toList());
        }
        return found;
    }
}
