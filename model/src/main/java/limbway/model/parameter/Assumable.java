package limbway.model.parameter;

import java.util.List;
import java.util.Optional;

/**
 * What a scenario may set by name.
 *
 * @param parameters the numbers that may be set, with their defaults and ranges
 * @param situations sets of values that go by one name
 */
public record Assumable(List<Parameter> parameters, List<Situation> situations) {

    /** Keeps copies of the lists. */
    public Assumable {
        parameters = List.copyOf(parameters);
        situations = List.copyOf(situations);
    }

    /**
     * Nothing may be set.
     *
     * @return no parameters and no situations
     */
    public static Assumable nothing() {
        return new Assumable(List.of(), List.of());
    }

    /**
     * Looks a parameter up.
     *
     * @param name its name
     * @return the parameter, or empty if none of that name may be set
     */
    public Optional<Parameter> parameter(String name) {
        return parameters.stream().filter(p -> p.name().equals(name)).findFirst();
    }

    /**
     * Looks a situation up.
     *
     * @param name its name
     * @return the situation, or empty if there is none of that name
     */
    public Optional<Situation> situation(String name) {
        return situations.stream().filter(s -> s.name().equals(name)).findFirst();
    }
}
