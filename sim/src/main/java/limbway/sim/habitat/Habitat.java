package limbway.sim.habitat;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;

import limbway.model.body.Body;
import limbway.model.enclosure.Enclosure;
import limbway.model.energy.EnergySettings;
import limbway.model.graph.GraphSettings;
import limbway.model.graph.MoveCosts;
import limbway.model.graph.RouteGraph;
import limbway.model.heat.HeatSettings;
import limbway.model.heat.OperativeTemperature;
import limbway.model.route.ChoiceSharpness;
import limbway.model.route.Routes;
import limbway.model.shade.ShadeScene;
import limbway.model.shade.ShadeSettings;
import limbway.model.study.Animal;
import limbway.model.study.Climate;
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
    private final ChoiceSharpness sharpness;
    private final DoorHours doorHours;
    private final Map<Body, List<Passages>> passages = new LinkedHashMap<>();
    private final Optional<Climate> climate;
    private final KeepersHours keepersHours;
    private final Optional<Habitat> original;
    private PlaceCharacter character;

    /**
     * Compiles a layout for a group of animals.
     *
     * @param layout what stands there and what is fed
     * @param animals who lives there, at least one
     * @param climate what they have to bear; empty where the weather is unknown, and then nobody gets hot
     * @param energy multipliers of the energy model
     * @param sharpness how strictly the cheaper way is taken
     */
    public Habitat(
            Variant layout,
            List<Animal> animals,
            Optional<Climate> climate,
            EnergySettings energy,
            ChoiceSharpness sharpness) {
        this(layout, animals, climate, energy, sharpness, compile(layout, animals), Optional.empty());
    }

    private Habitat(
            Variant layout,
            List<Animal> animals,
            Optional<Climate> climate,
            EnergySettings energy,
            ChoiceSharpness sharpness,
            RouteGraph graph,
            Optional<Habitat> original) {
        this.layout = layout;
        this.animals = List.copyOf(animals);
        this.climate = climate;
        this.energy = energy;
        this.sharpness = sharpness;
        this.graph = graph;
        this.original = original;
        this.doorHours = new DoorHours(layout.enclosure().bounds().doors());
        this.keepersHours = new KeepersHours(layout.keeping(), graph.resources());
        for (Body body : bodiesOf(animals)) {
            routes.put(body, new Routes(graph, MoveCosts.of(graph, body, energy), sharpness));
        }
    }

    private static RouteGraph compile(Variant layout, List<Animal> animals) {
        return RouteGraph.compile(layout.enclosure(), GraphSettings.forBodies(bodiesOf(animals)));
    }

    private static List<Body> bodiesOf(List<Animal> animals) {
        return animals.stream().map(Animal::body).distinct().toList();
    }

    /**
     * The same layout with moves at other prices: what leads where does not depend on them, so nothing is compiled anew.
     *
     * @param otherEnergy multipliers of the energy model
     * @param otherSharpness how strictly the cheaper way is taken
     * @return a habitat equal to one that was compiled with these; this one where nothing differs
     */
    public Habitat priced(EnergySettings otherEnergy, ChoiceSharpness otherSharpness) {
        return energy.equals(otherEnergy) && sharpness.equals(otherSharpness)
                ? this
                : inhabited(animals, climate, otherEnergy, otherSharpness);
    }

    /**
     * The same layout with others in it and under another climate, not compiled anew.
     *
     * @param others who lives there instead; their bodies must lead to the same graph as the bodies of this habitat, which a
     *     change of mass does not where it opens or shuts a sway, a leap or a drop
     * @param outside what they have to bear
     * @param otherEnergy multipliers of the energy model
     * @param otherSharpness how strictly the cheaper way is taken
     * @return a habitat equal to one that was compiled with these
     */
    public Habitat inhabited(
            List<Animal> others,
            Optional<Climate> outside,
            EnergySettings otherEnergy,
            ChoiceSharpness otherSharpness) {
        return new Habitat(
                layout, others, outside, otherEnergy, otherSharpness, graph, Optional.of(original.orElse(this)));
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
     * How strictly the cheaper way is taken.
     *
     * @return the sharpness of the choice
     */
    public ChoiceSharpness sharpness() {
        return sharpness;
    }

    /**
     * When doors open and shut.
     *
     * @return the stretches of the day
     */
    public DoorHours doorHours() {
        return doorHours;
    }

    /**
     * When places are shut, bedding is put out, staff stand by and visitors look in.
     *
     * @return the same every day
     */
    public KeepersHours keepersHours() {
        return keepersHours;
    }

    /**
     * What the places are like at which animals stop, found at the first call and kept.
     *
     * @return the same object at every call; its starts are those of the {@link #passages(Body) passages} of every body
     */
    public PlaceCharacter character() {
        // places are what they are, whatever it costs to get there
        if (original.isPresent()) {
            return original.get().character();
        }
        synchronized (passages) {
            if (character == null) {
                character = PlaceCharacter.of(
                        graph, layout, passages(animals.get(0).body()).get(0));
            }
            return character;
        }
    }

    /**
     * How hot it is at each place where an animal may stop.
     *
     * @param date calendar date of day 1
     * @param days number of days, 1 or more
     * @return a table in steps of a quarter of an hour
     */
    public Warmth warmth(LocalDate date, int days) {
        // holds and their order are the same for all bodies
        Passages any = passages(animals.get(0).body()).get(0);
        return exposure().map(found -> found.warmth(any, date, days)).orElse(Warmth.UNKNOWN);
    }

    /**
     * What the sun on the way is worth to a body, for each stretch of the doors as {@link #passages(Body)}.
     *
     * @param body one of the bodies
     * @param date calendar date of day 1
     * @param days number of days, 1 or more
     * @param trouble from operative temperature [°C] to the share of the discomfort that is felt, 0 to 1
     * @return one table for each stretch
     */
    public List<SunlitWays> sunlitWays(Body body, LocalDate date, int days, DoubleUnaryOperator trouble) {
        double watt = climate.map(Climate::sunlitWayW).orElse(0.0);
        List<SunlitWays> found = new ArrayList<>();
        for (Passages stretch : passages(body)) {
            found.add(
                    watt == 0
                            ? SunlitWays.NOT_MINDED
                            : exposure()
                                    .orElseThrow()
                                    .sunlitWays(stretch, routes(body).costs(), watt, trouble, date, days));
        }
        return List.copyOf(found);
    }

    private Optional<Exposure> exposure() {
        Enclosure enclosure = layout.enclosure();
        return climate.map(outside -> new Exposure(
                graph,
                enclosure.site(),
                ShadeScene.of(enclosure, ShadeSettings.standard()),
                outside.weather(),
                new OperativeTemperature(HeatSettings.standard())));
    }

    /**
     * The ways of one body between the places where animals stop, looked up at the first call and kept.
     *
     * @param body a body of the group
     * @return its passages in each stretch of the {@link #doorHours day}, the same objects at every call
     * @throws IllegalArgumentException if no animal of the group has that body
     */
    public List<Passages> passages(Body body) {
        Routes ways = routes(body);
        synchronized (passages) {
            return passages.computeIfAbsent(body, b -> byDoors(ways));
        }
    }

    private List<Passages> byDoors(Routes allOpen) {
        List<Passages> found = new ArrayList<>();
        for (int stretch = 0; stretch < doorHours.count(); stretch++) {
            MoveCosts then = allOpen.costs().at(doorHours.startS(stretch));
            found.add(new Passages(
                    then == allOpen.costs() ? allOpen : new Routes(graph, then, sharpness), layout.added()));
        }
        return List.copyOf(found);
    }

    /**
     * The ways of one body with all doors open.
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
