package limbway.model.explain.flip;

import java.util.Optional;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportScale;
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
            return Spot.placed(enclosure, on, heightM);
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
            return Spot.placed(enclosure, on, alongM);
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
        double measureM =
                Steps.centimetre(new SupportScale(support, enclosure.ground().terrain()).measureM(near));
        Spot spot = at(support, measureM);
        return Optional.of(spot).filter(one -> one.in(enclosure).isPresent());
    }

    /**
     * The place at a measure.
     *
     * @param support what it is on
     * @param measureM height above the ground on what is upright, else the distance from the first end [m]
     * @return the place, on the support or beyond its ends
     */
    static Spot at(Support support, double measureM) {
        return support.kind().isUpright() ? new AtHeight(support.id(), measureM) : new Along(support.id(), measureM);
    }

    private static Optional<Point> placed(Enclosure enclosure, String id, double measureM) {
        return Things.support(enclosure, id)
                .map(support -> new SupportScale(support, enclosure.ground().terrain()))
                .filter(scale -> scale.has(measureM))
                .map(scale -> scale.at(measureM));
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
