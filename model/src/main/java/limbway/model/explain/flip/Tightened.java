package limbway.model.explain.flip;

import java.util.List;
import java.util.Optional;

import limbway.model.alteration.Alteration;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Support;
import limbway.model.geometry.Point;

/**
 * A rope is pulled tighter, so that its middle hangs less deep.
 *
 * @param rope id of the rope
 * @param planM distance of its ends in plan [m]
 * @param beforeShare its sag now, as a share of that distance
 * @param amountM by how much its middle is higher then [m]
 */
public record Tightened(String rope, double planM, double beforeShare, double amountM) implements Change {

    /**
     * The sag then, in hundredths of a per cent.
     *
     * @return share of the distance in plan, 0 or more
     */
    public double sagShare() {
        return Line.rounded(beforeShare - amountM / planM);
    }

    @Override
    public Tightened withAmount(double otherM) {
        return new Tightened(rope, planM, beforeShare, otherM);
    }

    @Override
    public Optional<List<Alteration>> in(Enclosure enclosure) {
        Support old = Things.support(enclosure, rope).orElseThrow();
        Point from = old.axis().start();
        Point to = old.axis().end();
        return sagShare() < 0
                ? Optional.empty()
                : Optional.of(List.of(new Alteration.SupportReplaced(Line.between(old, from, to, sagShare()))));
    }
}
