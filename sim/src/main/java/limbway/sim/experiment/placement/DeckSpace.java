package limbway.sim.experiment.placement;

import java.util.ArrayList;
import java.util.List;

import org.locationtech.jts.geom.Polygon;

import limbway.model.body.Body;
import limbway.model.containment.Brink;
import limbway.model.containment.Brinks;
import limbway.model.containment.LiveSpace;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Platform;
import limbway.model.energy.Ballistics;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;

/** Whether there is room for a deck, all of it, and whether an animal would get out from it. */
final class DeckSpace {

    /** Edges are looked at every so many metres. */
    private static final double STEP_M = 0.25;

    /** Decks above each other leave at least so much room for a body [m]: an assumption. */
    private static final double HEADROOM_M = 1;

    private final Enclosure enclosure;
    private final List<Body> bodies;
    private final LiveSpace live;
    private final List<Brink> brinks;
    private final double overheadM;

    DeckSpace(Enclosure enclosure, List<Body> bodies) {
        this.enclosure = enclosure;
        this.bodies = List.copyOf(bodies);
        this.live = new LiveSpace(enclosure.bounds().hotWires());
        this.brinks = Brinks.of(enclosure);
        this.overheadM = bodies.stream().mapToDouble(Body::overheadReachM).max().orElse(0);
    }

    /** The middle, the corners and places along the edges. */
    static List<Point> places(Platform deck) {
        List<Point> places = new ArrayList<>();
        places.add(deck.centre());
        for (Segment edge : deck.edges()) {
            List<Point> along = edge.every(STEP_M);
            places.addAll(along.subList(0, along.size() - 1));
        }
        return places;
    }

    boolean isLive(Platform deck) {
        return places(deck).stream().anyMatch(live::holds);
    }

    /**
     * Whether all of it lies above the ground and within the outline, in no barrier or building, through no panel, under or over
     * no other deck without room for a body, and with nothing through its boards but what carries it.
     */
    boolean isFree(Platform deck, String carrier) {
        Outline ground = enclosure.ground().outline();
        for (Point place : places(deck)) {
            if (!ground.covers(place.xM(), place.yM()) || heightM(place) <= 0) {
                return false;
            }
        }
        boolean inSomething = enclosure.bounds().barriers().stream()
                        .anyMatch(barrier -> isWithin(deck, barrier.footprint(), barrier.baseZM(), barrier.topZM()))
                || enclosure.shading().buildings().stream()
                        .anyMatch(
                                building -> isWithin(deck, building.footprint(), building.baseZM(), building.topZM()));
        Polygon boards = deck.outline().toPolygon();
        return !inSomething
                && enclosure.platforms().stream()
                        .noneMatch(other -> Math.abs(other.zM() - deck.zM()) < HEADROOM_M
                                && boards.intersects(other.outline().toPolygon()))
                && enclosure.supports().stream()
                        .filter(support -> !support.id().equals(carrier))
                        .flatMap(support -> support.axis().pieces().stream())
                        .noneMatch(piece -> deck.blocks(piece.a(), piece.b()))
                && enclosure.panels().stream()
                        .flatMap(panel -> panel.facet().edges().stream())
                        .noneMatch(edge -> deck.blocks(edge.a(), edge.b()));
    }

    private static boolean isWithin(Platform deck, Outline footprint, double baseZM, double topZM) {
        return deck.zM() > baseZM
                && deck.zM() < topZM
                && footprint.toPolygon().intersects(deck.outline().toPolygon());
    }

    private double heightM(Point place) {
        return enclosure.ground().terrain().aboveM(place);
    }

    /** By reach from the deck, or by leap; the rule of the audit of barriers for decks. */
    boolean leadsOut(Platform deck) {
        List<Point> places = places(deck);
        return brinks.stream().anyMatch(brink -> places.stream().anyMatch(place -> leadsOut(brink, place)));
    }

    private boolean leadsOut(Brink brink, Point place) {
        if (brink.anyHeight() && heightM(place) <= overheadM) {
            return false;
        }
        Point target = brink.nearestTo(place);
        double awayM = place.distanceM(target);
        double landingZM =
                brink.anyHeight() ? enclosure.ground().terrain().heightM(target.xM(), target.yM()) : target.zM();
        return bodies.stream()
                .anyMatch(body -> awayM <= Math.max(body.gapReachM(), body.overheadReachM())
                        || (body.takeOffMPerS() > 0
                                && Ballistics.leastSpeedMPerS(place.planDistanceM(target), landingZM - place.zM())
                                        <= body.takeOffMPerS()));
    }
}
