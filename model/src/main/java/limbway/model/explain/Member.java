package limbway.model.explain;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

import limbway.model.enclosure.Crown;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.Support;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;

/**
 * A support, platform or crown, as an island is made of.
 *
 * @param id its name
 * @param solids what it consists of
 * @param support the support, if it is one
 * @param platform the platform, if it is one
 */
record Member(String id, List<Solid> solids, Optional<Support> support, Optional<Platform> platform) {

    private static final double SAME_PLACE_M = 1e-6;

    static List<Member> of(Enclosure enclosure) {
        List<Member> members = new ArrayList<>();
        for (Support support : enclosure.supports()) {
            List<Solid> solids = new ArrayList<>();
            for (Segment piece : support.axis().pieces()) {
                solids.add(new Solid(piece, support.diameterM() / 2, false));
            }
            members.add(new Member(support.id(), solids, Optional.of(support), Optional.empty()));
        }
        for (Platform platform : enclosure.platforms()) {
            List<Solid> edges = new ArrayList<>();
            for (Segment edge : platform.edges()) {
                edges.add(new Solid(edge, 0, false));
            }
            members.add(new Member(platform.id(), edges, Optional.empty(), Optional.of(platform)));
        }
        for (Crown crown : enclosure.crowns()) {
            members.add(new Member(crown.id(), List.of(Solid.crown(crown)), Optional.empty(), Optional.empty()));
        }
        return members;
    }

    /** The gap to another member along one solid of each; decks also reach straight up and down. */
    Gap gapTo(Solid own, Member other, Solid others) {
        Solid.Nearness best = own.to(others);
        if (other.platform.isPresent()) {
            best = nearer(best, overDeck(own, other.platform.get()));
        }
        if (platform.isPresent()) {
            best = nearer(best, overDeck(others, platform.get()).reversed());
        }
        return new Gap(
                id,
                other.id,
                best.onFirst(),
                best.onSecond(),
                endsAt(best.onFirst()),
                other.endsAt(best.onSecond()),
                best.clearM());
    }

    double clearM(Point p) {
        double least = platform.map(deck -> deck.nearestTo(p).distanceM(p)).orElse(Double.POSITIVE_INFINITY);
        for (Solid solid : solids) {
            least = Math.min(least, solid.clearM(p));
        }
        return least;
    }

    private static Solid.Nearness overDeck(Solid solid, Platform deck) {
        Solid.Nearness best = null;
        for (Point end : List.of(solid.line().a(), solid.line().b())) {
            Point onDeck = deck.nearestTo(end);
            double aroundM = solid.upright() ? 0 : solid.radiusM();
            double clearM = Math.max(0, onDeck.distanceM(end) - aroundM);
            best = nearer(best, new Solid.Nearness(end, onDeck, clearM));
        }
        return best;
    }

    private static Solid.Nearness nearer(Solid.Nearness one, Solid.Nearness other) {
        return one == null || other.clearM() < one.clearM() ? other : one;
    }

    private boolean endsAt(Point place) {
        return support.isPresent()
                && (support.get().axis().start().distanceM(place) < SAME_PLACE_M
                        || support.get().axis().end().distanceM(place) < SAME_PLACE_M);
    }
}
