package limbway.scenarios.entry;

import java.util.List;

import limbway.model.parameter.Assumable;
import limbway.model.parameter.Parameter;
import limbway.scenarios.problem.Place;
import limbway.scenarios.problem.Problem;
import limbway.scenarios.problem.Problems;
import limbway.scenarios.problem.Wording;

/** Names of parameters, and what is said of a name that no parameter has. */
public final class ParameterNames {

    private final List<String> known;

    /**
     * The names of what may be assumed.
     *
     * @param assumable what may be assumed
     */
    public ParameterNames(Assumable assumable) {
        known = assumable.parameters().stream().map(Parameter::name).toList();
    }

    /**
     * Whether there is a parameter of a name.
     *
     * @param name a name
     * @return true if it is known
     */
    public boolean contains(String name) {
        return known.contains(name);
    }

    /**
     * A mistake: there is no parameter of that name.
     *
     * @param place where the name stands
     * @param name the name
     * @param what what it was named for, such as {@code to assume}
     * @param problems the mistakes so far
     * @return the mistake with names that begin alike and, where one is near, what may have been meant
     */
    public Problem unknown(Place place, String name, String what, Problems problems) {
        return Problem.at(place, "there is no parameter " + Wording.quote(name) + " " + what)
                .allowed(likely(name))
                .mend(problems.didYouMean(whole(name), known, "take a name of the table of parameters"));
    }

    /** A name that was written without its first word is given it where only one name ends so. */
    private String whole(String name) {
        List<String> ending =
                known.stream().filter(other -> other.endsWith("." + name)).toList();
        return ending.size() == 1 ? ending.get(0) : name;
    }

    /** The names that begin with the same word, or the words that names begin with. */
    private String likely(String name) {
        List<String> near =
                known.stream().filter(other -> first(other).equals(first(name))).toList();
        return near.isEmpty()
                ? "names that begin with "
                        + Wording.list(known.stream()
                                .map(ParameterNames::first)
                                .distinct()
                                .toList())
                : Wording.list(near);
    }

    /** The first word of a name, with its dot. */
    private static String first(String name) {
        return name.substring(0, name.indexOf('.') + 1);
    }
}
