package limbway.model.explain.flip;

import java.util.List;
import java.util.Optional;
import java.util.Set;

import limbway.model.alteration.Alteration;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Material;
import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportKind;
import limbway.model.geometry.HangingLine;
import limbway.model.geometry.Point;

/**
 * A rope is hung between two places that have names, with the usual sag.
 *
 * @param id name of the rope, not in use
 * @param from one end
 * @param to other end
 * @param amountM straight distance between both [m]
 */
public record LinkAdded(String id, Spot from, Spot to, double amountM) implements Change {

    /** Thickness of a new rope [m]. Assumption: every body of the catalogue grips it. */
    public static final double DIAMETER_M = 0.05;

    /** Sag of a rope of which a scenario says nothing, as a share of its distance in plan. */
    static final double SAG_SHARE = 0.05;

    /** The size follows from both ends: the same change. */
    @Override
    public LinkAdded withAmount(double otherM) {
        return this;
    }

    @Override
    public Optional<List<Alteration>> in(Enclosure enclosure) {
        Optional<Point> a = from.in(enclosure);
        Optional<Point> b = to.in(enclosure);
        if (a.isEmpty() || b.isEmpty() || a.get().distanceM(b.get()) < Things.SAME_PLACE_M) {
            return Optional.empty();
        }
        Support rope = new Support(
                id,
                SupportKind.ROPE,
                HangingLine.between(a.get(), b.get(), SAG_SHARE * a.get().planDistanceM(b.get())),
                DIAMETER_M,
                Material.FIBRE_ROPE);
        return Optional.of(List.of(new Alteration.SupportAdded(rope, Set.of(from.on(), to.on()))));
    }
}
