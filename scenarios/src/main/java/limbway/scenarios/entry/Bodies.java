package limbway.scenarios.entry;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.model.body.Body;
import limbway.model.body.BodyCatalogue;
import limbway.model.parameter.Parameter;

/**
 * The bodies that the animals of a scenario may have: those of the catalogue, and those that the scenario defines.
 *
 * @param catalogue the known bodies
 * @param own those that the scenario defines, in its order
 */
public record Bodies(BodyCatalogue catalogue, List<Own> own) {

    private static final String MOTHER = "adult female";

    /**
     * A body that a scenario defines.
     *
     * @param body the body
     * @param like name of the body of the catalogue that it was made from, or empty
     * @param figures its figures as parameters
     */
    public record Own(Body body, String like, List<Parameter> figures) {

        /** Keeps a copy of the list. */
        public Own {
            figures = List.copyOf(figures);
        }
    }

    /** Keeps a copy of the list. */
    public Bodies {
        own = List.copyOf(own);
    }

    /**
     * The names that animals may use.
     *
     * @return names of the catalogue, then those that the scenario defines
     */
    public List<String> names() {
        List<String> names = new ArrayList<>(catalogue.names());
        own.forEach(defined -> names.add(defined.body().name()));
        return names;
    }

    /**
     * Looks a body up.
     *
     * @param name one of {@link #names()}
     * @return the body, or empty if there is none of that name
     */
    public Optional<Body> find(String name) {
        return catalogue.find(name).or(() -> own.stream()
                .map(Own::body)
                .filter(body -> body.name().equals(name))
                .findFirst());
    }

    /** The bodies that can carry an infant: an adult female, and what is like one. */
    List<String> mothers() {
        List<String> names = new ArrayList<>(List.of(MOTHER));
        own.stream()
                .filter(defined -> defined.like().equals(MOTHER))
                .forEach(defined -> names.add(defined.body().name()));
        return names;
    }

    /**
     * The figures of the bodies that the scenario defines.
     *
     * @return parameters in the order of the scenario
     */
    public List<Parameter> parameters() {
        return own.stream().flatMap(defined -> defined.figures().stream()).toList();
    }
}
