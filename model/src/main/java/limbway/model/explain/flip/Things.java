package limbway.model.explain.flip;

import java.util.Optional;

import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.Resource;
import limbway.model.enclosure.Support;
import limbway.model.geometry.Point;
import limbway.model.geometry.Polyline;

/** What an enclosure has under a name, and what hangs on what. */
final class Things {

    /** Places closer than this are one [m]. */
    static final double SAME_PLACE_M = 1e-6;

    private Things() {}

    static Optional<Support> support(Enclosure enclosure, String id) {
        return enclosure.supports().stream().filter(one -> one.id().equals(id)).findFirst();
    }

    static Optional<Platform> platform(Enclosure enclosure, String id) {
        return enclosure.platforms().stream().filter(one -> one.id().equals(id)).findFirst();
    }

    static Optional<Resource> resource(Enclosure enclosure, String id) {
        return enclosure.resources().stream().filter(one -> one.id().equals(id)).findFirst();
    }

    static double distanceM(Polyline axis, Point place) {
        return axis.pieces().stream()
                .mapToDouble(piece -> piece.distanceM(place))
                .min()
                .orElseThrow();
    }

    /** The pole or trunk on which a place lies, other than the support with the given id. */
    static Optional<Support> uprightAt(Enclosure enclosure, Point place, String except) {
        return enclosure.supports().stream()
                .filter(one -> one.kind().isUpright()
                        && !one.id().equals(except)
                        && distanceM(one.axis(), place) < SAME_PLACE_M)
                .findFirst();
    }

    /** Whether an end of a support is free: nothing else is there, and it is off the ground. */
    static boolean isFree(Enclosure enclosure, Point end, String of) {
        boolean tied = enclosure.supports().stream()
                        .anyMatch(one -> !one.id().equals(of) && distanceM(one.axis(), end) < SAME_PLACE_M)
                || enclosure.platforms().stream()
                        .anyMatch(deck -> deck.nearestTo(end).distanceM(end) < SAME_PLACE_M);
        double aboveM = enclosure.ground().terrain().aboveM(end);
        return !tied && aboveM > SAME_PLACE_M;
    }

    /** Whether something hangs on a support: an end of another that is not its own end, a deck or a resource. */
    static boolean carries(Enclosure enclosure, Support carrier) {
        Point start = carrier.axis().start();
        Point end = carrier.axis().end();
        for (Support other : enclosure.supports()) {
            if (!other.id().equals(carrier.id())
                    && (hangsOn(other.axis().start(), carrier.axis(), start, end)
                            || hangsOn(other.axis().end(), carrier.axis(), start, end))) {
                return true;
            }
        }
        return bearsDeck(enclosure, carrier)
                || enclosure.resources().stream().anyMatch(place -> place.on().equals(carrier.id()));
    }

    /** Whether a deck or a crown belongs to a support. */
    static boolean bearsDeck(Enclosure enclosure, Support carrier) {
        return enclosure.platforms().stream().anyMatch(deck -> distanceM(carrier.axis(), deck.centre()) < SAME_PLACE_M)
                || enclosure.crowns().stream().anyMatch(crown -> crown.trunk().equals(carrier.id()));
    }

    private static boolean hangsOn(Point place, Polyline carrier, Point start, Point end) {
        return distanceM(carrier, place) < SAME_PLACE_M
                && place.distanceM(start) > SAME_PLACE_M
                && place.distanceM(end) > SAME_PLACE_M;
    }
}
