package limbway.model.link;

import java.util.List;

/**
 * What a link does.
 *
 * @param local whether it was priced from its surroundings alone
 * @param costs costs of each errand with it
 * @param crossings what each body pays to cross it, in the order of the bodies
 */
public record LinkEffect(boolean local, List<WayCosts> costs, List<Crossing> crossings) {

    /** Keeps copies of the lists. */
    public LinkEffect {
        costs = List.copyOf(costs);
        crossings = List.copyOf(crossings);
    }
}
