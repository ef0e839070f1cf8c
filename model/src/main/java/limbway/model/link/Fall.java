package limbway.model.link;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

import limbway.model.enclosure.Crown;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.Resource;
import limbway.model.enclosure.Support;
import limbway.model.enclosure.SupportKind;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;

/**
 * What is left when a support fails: it falls, and with it everything that hangs on it.
 *
 * <p>A rope, beam, branch or ladder hangs on what either of its ends lies on, and a deck on the pole or trunk through it or,
 * without one, on the supports that touch it from below; one lost anchor is taken to bring it down, though in truth the rest
 * may hold. Poles and trunks stand by themselves. What is gone to there is then used from the ground below.
 *
 * @param cause id of the support that fails
 * @param with ids of the supports, decks and crowns that fall with it, ascending
 * @param left what still stands
 * @param lost ids of the places to go to that came down
 */
public record Fall(String cause, Set<String> with, Enclosure left, Set<String> lost) {

    /** An end lies on a support within this much of its surface [m]. Assumption. */
    private static final double TOUCH_M = 0.05;

    /** Keeps copies of the sets, ascending. */
    public Fall {
        with = java.util.Collections.unmodifiableSet(new TreeSet<>(with));
        lost = java.util.Collections.unmodifiableSet(new TreeSet<>(lost));
    }

    /**
     * Lets a support fail.
     *
     * @param enclosure what stands there
     * @param cause id of a support
     * @return what is left
     * @throws IllegalArgumentException if there is no support of that id
     */
    public static Fall of(Enclosure enclosure, String cause) {
        if (enclosure.supports().stream().noneMatch(support -> support.id().equals(cause))) {
            throw new IllegalArgumentException("fall: nothing is called \"" + cause + "\"");
        }
        Set<String> fallen = new TreeSet<>(Set.of(cause));
        boolean more = true;
        while (more) {
            more = false;
            for (Support support : enclosure.supports()) {
                if (!fallen.contains(support.id()) && hangsOn(support, enclosure, fallen)) {
                    more |= fallen.add(support.id());
                }
            }
            for (Platform deck : enclosure.platforms()) {
                if (!fallen.contains(deck.id()) && standsOn(deck, enclosure, fallen)) {
                    more |= fallen.add(deck.id());
                }
            }
        }
        for (Crown crown : enclosure.crowns()) {
            if (fallen.contains(crown.trunk())) {
                fallen.add(crown.id());
            }
        }
        return of(enclosure, cause, fallen);
    }

    private static Fall of(Enclosure before, String cause, Set<String> fallen) {
        List<Resource> resources = new ArrayList<>();
        Set<String> lost = new TreeSet<>();
        for (Resource resource : before.resources()) {
            if (fallen.contains(resource.on()) || isInFallenCrown(resource, before, fallen)) {
                Point at = resource.at();
                lost.add(resource.id());
                resources.add(new Resource(
                        resource.id(),
                        resource.kind(),
                        at.atHeight(before.ground().terrain().heightM(at.xM(), at.yM())),
                        "",
                        resource.stalls(),
                        resource.bedding()));
            } else {
                resources.add(resource);
            }
        }
        Enclosure left = new Enclosure(
                before.site(),
                before.ground(),
                before.supports().stream()
                        .filter(support -> !fallen.contains(support.id()))
                        .toList(),
                before.platforms().stream()
                        .filter(deck -> !fallen.contains(deck.id()))
                        .toList(),
                before.crowns().stream()
                        .filter(crown -> !fallen.contains(crown.id()))
                        .toList(),
                before.panels(),
                before.bounds(),
                before.shading(),
                resources);
        Set<String> with = new TreeSet<>(fallen);
        with.remove(cause);
        return new Fall(cause, with, left, lost);
    }

    private static boolean isInFallenCrown(Resource resource, Enclosure before, Set<String> fallen) {
        return resource.on().isEmpty()
                && before.crowns().stream()
                        .anyMatch(crown ->
                                fallen.contains(crown.trunk()) && crown.space().distanceM(resource.at()) == 0);
    }

    private static boolean stands(Support support) {
        return support.kind().isUpright();
    }

    private static boolean hangsOn(Support support, Enclosure enclosure, Set<String> fallen) {
        if (stands(support)) {
            return false;
        }
        return carrierOf(support, support.axis().start(), enclosure)
                        .filter(fallen::contains)
                        .isPresent()
                || carrierOf(support, support.axis().end(), enclosure)
                        .filter(fallen::contains)
                        .isPresent();
    }

    /** A pole or trunk before a deck, a deck before another support that passes there. */
    private static Optional<String> carrierOf(Support hung, Point end, Enclosure enclosure) {
        for (Support support : enclosure.supports()) {
            if (stands(support) && awayM(support, end) <= TOUCH_M) {
                return Optional.of(support.id());
            }
        }
        for (Platform deck : enclosure.platforms()) {
            if (deck.nearestTo(end).distanceM(end) <= TOUCH_M) {
                return Optional.of(deck.id());
            }
        }
        for (Support support : enclosure.supports()) {
            boolean isOther = !support.id().equals(hung.id()) && !stands(support);
            boolean bothEnd = support.axis().start().distanceM(end) <= TOUCH_M
                    || support.axis().end().distanceM(end) <= TOUCH_M;
            if (isOther && !bothEnd && awayM(support, end) <= TOUCH_M) {
                return Optional.of(support.id());
            }
        }
        return Optional.empty();
    }

    private static boolean standsOn(Platform deck, Enclosure enclosure, Set<String> fallen) {
        boolean anyStanding = false;
        boolean standingFell = false;
        boolean otherFell = false;
        for (Support support : enclosure.supports()) {
            if (passesThrough(support, deck)) {
                anyStanding |= stands(support);
                boolean fell = fallen.contains(support.id());
                standingFell |= fell && stands(support);
                otherFell |= fell && support.kind() == SupportKind.BEAM;
            }
        }
        return anyStanding ? standingFell : otherFell;
    }

    private static boolean passesThrough(Support support, Platform deck) {
        for (Segment piece : support.axis().pieces()) {
            double low = Math.min(piece.a().zM(), piece.b().zM());
            double high = Math.max(piece.a().zM(), piece.b().zM());
            if (low <= deck.zM() + TOUCH_M && high >= deck.zM() - TOUCH_M) {
                double riseM = piece.b().zM() - piece.a().zM();
                double share = riseM == 0 ? 0.5 : (deck.zM() - piece.a().zM()) / riseM;
                Point at = piece.at(Math.max(0, Math.min(1, share)));
                if (deck.outline().covers(at.xM(), at.yM())) {
                    return true;
                }
            }
        }
        return false;
    }

    private static double awayM(Support support, Point place) {
        double leastM = Double.POSITIVE_INFINITY;
        for (Segment piece : support.axis().pieces()) {
            leastM = Math.min(leastM, piece.distanceM(place));
        }
        return Math.max(0, leastM - support.diameterM() / 2);
    }
}
