package limbway.model.explain.flip;

import java.util.List;

import limbway.model.alteration.Alteration;

/**
 * A single change that turns a trip off the ground.
 *
 * @param change what is changed, and by how much
 * @param alterations the same as alterations of the layout, in order
 * @param then what the trip costs then, of the changed layout compiled anew
 * @param share how many of such trips stay off the ground then, 0.5 to 1
 */
public record Flip(Change change, List<Alteration> alterations, TripCost then, double share) {

    /** Keeps a copy of the list. */
    public Flip {
        alterations = List.copyOf(alterations);
    }
}
