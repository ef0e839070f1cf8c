package limbway.model.link;

import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

import limbway.model.alteration.Alteration;
import limbway.model.body.Body;
import limbway.model.enclosure.Crown;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Panel;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.Shading;
import limbway.model.enclosure.Support;
import limbway.model.geometry.ClosestApproach;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;
import limbway.model.graph.GraphSettings;

/** What a new link comes within reach of; with it, the only part of the graph that changes. */
final class Part {

    private static final double SAME_PLACE_M = 1e-6;

    /** Room for the distance between two places at which a line is looked at [m]; a part may be too large. */
    private static final double ROOM_M = 0.5;

    private final Enclosure before;
    private final Enclosure after;
    private final Support link;
    private final GraphSettings settings;
    private final List<Segment> pieces;

    private Part(Enclosure before, Enclosure after, Support link, GraphSettings settings) {
        this.before = before;
        this.after = after;
        this.link = link;
        this.settings = settings;
        this.pieces = link.axis().pieces();
    }

    /**
     * The part round a link.
     *
     * @param enclosure what the link comes within reach of
     * @param meetsGround whether the ground is among it
     */
    record Round(Enclosure enclosure, boolean meetsGround) {}

    /**
     * The part round a link, or empty where the whole must be compiled: where the link takes away the sway of a pole, goes on
     * in one line with another support, or can be come to from sloping ground, from a panel or by a leap.
     */
    static Optional<Round> of(Enclosure before, Enclosure after, Alteration.SupportAdded link, GraphSettings settings) {
        Part part = new Part(before, after, link.support(), settings);
        boolean takesSway = before.supports().stream()
                .anyMatch(support -> support.bearing().sways() && link.tiedTo().contains(support.id()));
        double heaviestKg = settings.energy().leap().heaviestKg();
        boolean somebodyLeaps = settings.bodies().stream()
                .anyMatch(body -> body.leapM() > body.gapReachM() && body.massKg() <= heaviestKg);
        boolean meetsGround = part.isNearGround();
        boolean onSlope = meetsGround && !before.ground().terrain().isLevel();
        return takesSway || somebodyLeaps || onSlope || part.continuesAnother() || part.isNearPanel()
                ? Optional.empty()
                : Optional.of(new Round(part.enclosure(), meetsGround));
    }

    private boolean continuesAnother() {
        Point[] ends = {link.axis().start(), link.axis().end()};
        for (Support other : before.supports()) {
            if (other.kind() == link.kind()) {
                for (Point end : ends) {
                    if (other.axis().start().distanceM(end) <= SAME_PLACE_M
                            || other.axis().end().distanceM(end) <= SAME_PLACE_M) {
                        return true;
                    }
                }
            }
        }
        return false;
    }

    private boolean isNearGround() {
        double leastM = fallM() + link.diameterM() / 2 + ROOM_M / 4;
        return link.axis().points().stream()
                .anyMatch(p -> before.ground().terrain().aboveM(p) <= leastM);
    }

    /** How far down an animal reaches or drops, as compiling has it. */
    private double fallM() {
        double dropM = settings.bodies().stream()
                .filter(body -> body.leapM() > 0
                        && body.massKg() <= settings.energy().leap().heaviestKg())
                .mapToDouble(
                        body -> body.overheadReachM() + settings.energy().leap().deepestDropM())
                .max()
                .orElse(0);
        return Math.max(settings.widestGapM(), dropM);
    }

    private boolean isNearPanel() {
        double reachM = settings.widestGapM() + ROOM_M;
        for (Panel panel : before.panels()) {
            double[] low = {Double.MAX_VALUE, Double.MAX_VALUE, Double.MAX_VALUE};
            double[] high = {-Double.MAX_VALUE, -Double.MAX_VALUE, -Double.MAX_VALUE};
            for (Point corner : panel.corners()) {
                double[] c = {corner.xM(), corner.yM(), corner.zM()};
                for (int k = 0; k < c.length; k++) {
                    low[k] = Math.min(low[k], c[k]);
                    high[k] = Math.max(high[k], c[k]);
                }
            }
            for (Point p : link.axis().points()) {
                double[] at = {p.xM(), p.yM(), p.zM()};
                boolean near = true;
                for (int k = 0; k < at.length; k++) {
                    near &= at[k] >= low[k] - reachM && at[k] <= high[k] + reachM;
                }
                if (near) {
                    return true;
                }
            }
        }
        return false;
    }

    private Enclosure enclosure() {
        List<Crown> crowns = before.crowns().stream().filter(this::isNear).toList();
        // a drop ends on the next deck below, wherever the support is from which it is made
        List<Platform> decks = fallM() > settings.widestGapM()
                ? before.platforms()
                : before.platforms().stream().filter(this::isNear).toList();
        Set<String> trunks = new LinkedHashSet<>();
        crowns.forEach(crown -> trunks.add(crown.trunk()));
        Set<String> names = new LinkedHashSet<>(trunks);
        names.add(link.id());
        List<Support> near = before.supports().stream().filter(this::isNear).toList();
        near.forEach(support -> names.add(support.id()));
        new Company(settings, link, before.supports()).of(near).forEach(support -> names.add(support.id()));
        return new Enclosure(
                after.site(),
                after.ground(),
                after.supports().stream()
                        .filter(support -> names.contains(support.id()))
                        .toList(),
                decks,
                crowns,
                List.of(),
                after.bounds(),
                Shading.NONE,
                after.resources());
    }

    private boolean isNear(Support other) {
        double swingM = other.bearing().sways()
                ? settings.energy().sway().farthestShare() * other.axis().lengthM()
                : 0;
        double acrossM =
                settings.bodies().stream().mapToDouble(Body::gapReachM).max().orElse(0);
        double reachM = Math.max(settings.widestGapM(), acrossM + swingM)
                + (link.diameterM() + other.diameterM()) / 2
                + SAME_PLACE_M;
        for (Segment piece : pieces) {
            for (Segment line : other.axis().pieces()) {
                if (ClosestApproach.of(piece, line).distanceM() <= reachM) {
                    return true;
                }
            }
        }
        return false;
    }

    private boolean isNear(Platform deck) {
        double reachM = fallM() + link.diameterM() + ROOM_M;
        return link.axis().points().stream()
                .anyMatch(p ->
                        deck.nearestTo(p).distanceM(p) <= reachM + link.axis().lengthM() / pieces.size() / 2);
    }

    private boolean isNear(Crown crown) {
        double reachM = settings.widestGapM() + link.diameterM() + ROOM_M;
        return link.axis().points().stream()
                .anyMatch(
                        p -> crown.space().distanceM(p) <= reachM + link.axis().lengthM() / pieces.size() / 2);
    }
}
