package limbway.model.link;

import java.util.List;

/**
 * What a link does.
 *
 * @param costs costs of each errand with it
 * @param crossings what each body pays to cross it, in the order of the bodies
 * @param local whether that was found from its surroundings alone, not by compiling the whole
 */
public record LinkEffect(List<WayCosts> costs, List<LinkCrossing> crossings, boolean local) {

    /** Keeps copies of the lists. */
    public LinkEffect {
        costs = List.copyOf(costs);
        crossings = List.copyOf(crossings);
    }
}
