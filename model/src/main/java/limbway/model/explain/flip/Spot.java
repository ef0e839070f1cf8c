package limbway.model.explain.flip;

import java.util.Optional;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportKind;
import limbway.model.geometry.Point;

/** A place on something that has a name, by the measures that a keeper reads off it. */
public sealed interface Spot {

    /**
     * What the place is on.
     *
     * @return id of a support or platform
     */
    String on();

    /**
     * Where that is.
     *
     * @param enclosure what stands there
     * @return the point, or empty if there is no such place
     */
    Optional<Point> in(Enclosure enclosure);

    /**
     * A place on a pole or trunk.
     *
     * @param on id of the pole or trunk
     * @param heightM height above the ground at its foot [m]
     */
    record AtHeight(String on, double heightM) implements Spot {
        @Override
        public Optional<Point> in(Enclosure enclosure) {
            return Things.support(enclosure, on).flatMap(support -> {
                Point foot = support.axis().start();
                Point top = support.axis().end();
                double zM = enclosure.ground().terrain().heightM(foot.xM(), foot.yM()) + heightM;
                if (zM < foot.zM() || zM > top.zM()) {
                    return Optional.empty();
                }
                double share = (zM - foot.zM()) / (top.zM() - foot.zM());
                return Optional.of(
                        share == 1
                                ? top
                                : foot.plus(top.minus(foot).times(share)).atHeight(zM));
            });
        }
    }

    /**
     * A place on a rope, beam, branch or ladder.
     *
     * @param on id of the support
     * @param alongM distance from its first end along it [m]
     */
    record Along(String on, double alongM) implements Spot {
        @Override
        public Optional<Point> in(Enclosure enclosure) {
            return Things.support(enclosure, on)
                    .map(Support::axis)
                    .flatMap(axis -> alongM < 0 || alongM > axis.lengthM()
                            ? Optional.empty()
                            : Optional.of(axis.atLength(alongM)));
        }
    }

    /**
     * A place on a deck.
     *
     * @param on id of the platform
     * @param eastM distance from its middle towards the east [m]
     * @param northM distance from its middle towards the north [m]
     */
    record OnDeck(String on, double eastM, double northM) implements Spot {
        @Override
        public Optional<Point> in(Enclosure enclosure) {
            return Things.platform(enclosure, on).flatMap(deck -> {
                Point place = deck.centre().plus(new Point(eastM, northM, 0));
                return deck.outline().covers(place.xM(), place.yM()) ? Optional.of(place) : Optional.empty();
            });
        }
    }

    /**
     * The place on something nearest to a point, to the centimetre.
     *
     * @param enclosure what stands there
     * @param on id of a support or platform
     * @param near any point on it
     * @return the place, or empty if nothing is called so, or the rounded place is beside it
     */
    static Optional<Spot> near(Enclosure enclosure, String on, Point near) {
        Optional<Support> support = Things.support(enclosure, on);
        if (support.isPresent()) {
            return onSupport(enclosure, support.get(), near);
        }
        return Things.platform(enclosure, on).flatMap(deck -> onDeck(enclosure, deck, near));
    }

    private static Optional<Spot> onSupport(Enclosure enclosure, Support support, Point near) {
        Point foot = support.axis().start();
        boolean upright = support.kind() == SupportKind.POLE || support.kind() == SupportKind.TRUNK;
        Spot spot = upright
                ? new AtHeight(
                        support.id(),
                        Steps.centimetre(
                                near.zM() - enclosure.ground().terrain().heightM(foot.xM(), foot.yM())))
                : new Along(support.id(), Steps.centimetre(Things.alongM(support.axis(), near)));
        return Optional.of(spot).filter(one -> one.in(enclosure).isPresent());
    }

    private static Optional<Spot> onDeck(Enclosure enclosure, Platform deck, Point near) {
        Point from = near.minus(deck.centre());
        // a place on the edge may round to one beside it
        for (double share = 1; share > 0.9; share -= 0.02) {
            Spot spot = new OnDeck(deck.id(), Steps.centimetre(from.xM() * share), Steps.centimetre(from.yM() * share));
            if (spot.in(enclosure).isPresent()) {
                return Optional.of(spot);
            }
        }
        return Optional.empty();
    }
}
