package limbway.model.study;

import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

import limbway.model.body.Body;
import limbway.model.weather.Weather;

/**
 * One question asked of the model.
 *
 * @param title what the scenario calls itself
 * @param climate what animals have to bear; empty where the scenario does not say, and then nobody gets hot
 * @param animals who lives there
 * @param base the layout as drawn
 * @param variants other layouts, as lists of changes to the base made them
 * @param assumed values that the scenario sets, by the names of parameters
 */
public record Study(
        String title,
        Optional<Climate> climate,
        List<Animal> animals,
        Variant base,
        List<Variant> variants,
        SortedMap<String, Double> assumed) {

    /** Keeps copies of the lists. */
    public Study {
        animals = List.copyOf(animals);
        variants = List.copyOf(variants);
        assumed = Collections.unmodifiableSortedMap(new TreeMap<>(assumed));
    }

    /**
     * What the weather is like.
     *
     * @return the weather; empty where the scenario does not say
     */
    public Optional<Weather> weather() {
        return climate.map(Climate::weather);
    }

    /**
     * The base layout followed by the others.
     *
     * @return all layouts, in the order of the scenario
     */
    public List<Variant> layouts() {
        return java.util.stream.Stream.concat(java.util.stream.Stream.of(base), variants.stream())
                .toList();
    }

    /**
     * Looks a layout up by its name.
     *
     * @param name name of a layout
     * @return the layout, or empty if there is none of that name
     */
    public Optional<Variant> find(String name) {
        return layouts().stream().filter(layout -> layout.name().equals(name)).findFirst();
    }

    /**
     * The different bodies of the group, in the order of the animals.
     *
     * @return each body once
     */
    public List<Body> bodies() {
        return animals.stream().map(Animal::body).distinct().toList();
    }
}
