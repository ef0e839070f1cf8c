package limbway.model.explain.flip;

import java.util.List;
import java.util.Optional;

import limbway.model.alteration.Alteration;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Support;
import limbway.model.geometry.Point;

/**
 * One end of a rope or beam is tied higher or lower on the pole or trunk that carries it.
 *
 * @param support id of the rope or beam
 * @param first whether it is its first end
 * @param pole id of what carries that end
 * @param beforeM height of that end above the ground at the foot of the pole now [m]
 * @param up whether it is tied higher
 * @param amountM by how much [m]
 */
public record EndRetied(String support, boolean first, String pole, double beforeM, boolean up, double amountM)
        implements Change {

    /**
     * Height of that end then.
     *
     * @return metres above the ground at the foot of the pole, to the millimetre
     */
    public double heightM() {
        return Steps.millimetre(up ? beforeM + amountM : beforeM - amountM);
    }

    @Override
    public EndRetied withAmount(double otherM) {
        return new EndRetied(support, first, pole, beforeM, up, otherM);
    }

    @Override
    public Optional<List<Alteration>> in(Enclosure enclosure) {
        Support old = Things.support(enclosure, support).orElseThrow();
        Optional<Point> there = new Spot.AtHeight(pole, heightM()).in(enclosure);
        return there.map(end -> List.of(new Alteration.SupportReplaced(
                first
                        ? Line.between(old, end, old.axis().end(), Line.sagShare(old))
                        : Line.between(old, old.axis().start(), end, Line.sagShare(old)))));
    }
}
