package limbway.model.explain.flip;

import java.util.List;
import java.util.Optional;

import limbway.model.alteration.Alteration;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Support;
import limbway.model.geometry.Point;

/**
 * A free end of a rope, beam or branch is carried on towards something.
 *
 * @param support id of the support
 * @param first whether it is its first end
 * @param from where that end is now
 * @param towards where it is carried to
 * @param amountM by how much [m]
 */
public record EndExtended(String support, boolean first, Point from, Point towards, double amountM) implements Change {

    /**
     * Where the end is then, to the millimetre.
     *
     * @return a point on the line between both
     */
    public Point end() {
        Point exact = from.plus(towards.minus(from).times(amountM / from.distanceM(towards)));
        return new Point(Steps.millimetre(exact.xM()), Steps.millimetre(exact.yM()), Steps.millimetre(exact.zM()));
    }

    @Override
    public EndExtended withAmount(double otherM) {
        return new EndExtended(support, first, from, towards, otherM);
    }

    @Override
    public Optional<List<Alteration>> in(Enclosure enclosure) {
        return Things.support(enclosure, support).map(old -> List.of(new Alteration.SupportReplaced(drawn(old))));
    }

    private Support drawn(Support old) {
        double sagShare = Line.sagShare(old);
        return first
                ? Line.between(old, end(), old.axis().end(), sagShare)
                : Line.between(old, old.axis().start(), end(), sagShare);
    }
}
