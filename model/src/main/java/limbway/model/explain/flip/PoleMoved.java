package limbway.model.explain.flip;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.model.alteration.Alteration;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Resource;
import limbway.model.enclosure.Support;
import limbway.model.geometry.Point;
import limbway.model.geometry.Polyline;

/**
 * A pole is put nearer to something; what is tied to it comes along with that end, and places on it come along.
 *
 * @param pole id of the pole
 * @param foot where it stands now
 * @param towards a place towards which it is moved, in plan
 * @param amountM by how much [m]
 */
public record PoleMoved(String pole, Point foot, Point towards, double amountM) implements Change {

    /**
     * Where the pole stands then, to the millimetre.
     *
     * @return a point at the height of the present foot
     */
    public Point place() {
        double share = amountM / foot.planDistanceM(towards);
        return new Point(
                Steps.millimetre(foot.xM() + share * (towards.xM() - foot.xM())),
                Steps.millimetre(foot.yM() + share * (towards.yM() - foot.yM())),
                foot.zM());
    }

    @Override
    public PoleMoved withAmount(double otherM) {
        return new PoleMoved(pole, foot, towards, otherM);
    }

    @Override
    public Optional<List<Alteration>> in(Enclosure enclosure) {
        Support old = Things.support(enclosure, pole).orElseThrow();
        Point place = place();
        if (!enclosure.ground().outline().covers(place.xM(), place.yM())) {
            return Optional.empty();
        }
        place = place.atHeight(enclosure.ground().terrain().heightM(place.xM(), place.yM()));
        Point shift = place.minus(foot);
        Point top = old.axis().end();
        List<Alteration> all = new ArrayList<>();
        all.add(new Alteration.SupportReplaced(Line.with(
                old,
                Polyline.straight(place, top.plus(shift).atHeight(place.zM() + (top.zM() - foot.zM()))),
                old.bearing())));
        for (Support other : enclosure.supports()) {
            boolean starts = isOn(old, other, other.axis().start());
            boolean ends = isOn(old, other, other.axis().end());
            if (starts || ends) {
                Point from = other.axis().start();
                Point to = other.axis().end();
                all.add(new Alteration.SupportReplaced(Line.between(
                        other, starts ? from.plus(shift) : from, ends ? to.plus(shift) : to, Line.sagShare(other))));
            }
        }
        for (Resource resource : enclosure.resources()) {
            if (resource.on().equals(pole)) {
                all.add(new Alteration.ResourceMoved(
                        resource.id(), resource.at().plus(shift), pole));
            }
        }
        return Optional.of(all);
    }

    /** Whether a pole can be moved and everything that comes along be drawn anew without knowing more of it. */
    static boolean canMove(Enclosure enclosure, Support pole) {
        Point foot = pole.axis().start();
        double groundM = enclosure.ground().terrain().heightM(foot.xM(), foot.yM());
        if (foot.zM() != groundM || Things.bearsDeck(enclosure, pole)) {
            return false;
        }
        for (Support other : enclosure.supports()) {
            boolean tied = isOn(pole, other, other.axis().start())
                    || isOn(pole, other, other.axis().end());
            if (tied
                    && (other.kind().isUpright()
                            || Things.carries(enclosure, other)
                            || !Line.isStated(Line.sagShare(other)))) {
                return false;
            }
        }
        return true;
    }

    private static boolean isOn(Support pole, Support other, Point end) {
        return !other.id().equals(pole.id()) && Things.distanceM(pole.axis(), end) < Things.SAME_PLACE_M;
    }
}
