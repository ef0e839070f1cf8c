package limbway.sim.experiment.placement;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

import limbway.model.body.Body;
import limbway.model.containment.LiveSpace;
import limbway.model.enclosure.Barrier;
import limbway.model.enclosure.Enclosure;
import limbway.model.enclosure.Platform;
import limbway.model.enclosure.Resource;
import limbway.model.geometry.Outline;
import limbway.model.geometry.Point;
import limbway.model.geometry.Segment;
import limbway.model.study.Climate;
import limbway.model.study.Feeding;
import limbway.model.study.Variant;

/** Leaves out candidates that break a rule. */
public final class CandidateSieve {

    /** So much of the beam may come through what still counts as shade, as in the audit of shade: an assumption. */
    private static final double MOST_BEAM = 0.2;

    /** So much hotter is not called hotter: what the model of heat is good for at best, an assumption [°C]. */
    private static final double SAME_HEAT_C = 0.5;

    private static final double ROUNDING_M = 1e-9;

    private final PlacingRules rules;
    private final Enclosure enclosure;
    private final double heaviestKg;
    private final LiveSpace live;
    private final DeckSpace decks;
    private final boolean withDeck;
    private final FeedingLight light;
    private final OptionalDouble nowC;

    /**
     * Prepares a sieve.
     *
     * @param rules what a place must satisfy
     * @param task what is placed
     * @param base the layout before
     * @param bodies who lives there
     * @param climate what the weather is like, or empty
     * @param date the day on which sun and heat are looked up
     */
    public CandidateSieve(
            PlacingRules rules,
            PlacingTask task,
            Variant base,
            List<Body> bodies,
            Optional<Climate> climate,
            LocalDate date) {
        this.rules = rules;
        this.enclosure = base.enclosure();
        this.live = new LiveSpace(enclosure.bounds().hotWires());
        this.decks = new DeckSpace(enclosure, bodies);
        this.withDeck = task.withDeck();
        this.heaviestKg =
                bodies.stream().mapToDouble(Body::structuralMassKg).max().orElse(0);
        List<Resource> now = enclosure.resources().stream()
                .filter(resource -> task.moved().isEmpty()
                        ? resource.kind() == task.kind()
                        : task.moved().contains(resource.id()))
                .toList();
        this.light = new FeedingLight(enclosure, climate, date, hours(base, now));
        this.nowC = now.stream()
                .map(resource -> light.meanOperativeC(resource.at()))
                .filter(OptionalDouble::isPresent)
                .mapToDouble(OptionalDouble::getAsDouble)
                .average();
    }

    /** Hours at which the places are fed; noon for places where nothing is fed. */
    private static List<LocalTime> hours(Variant base, List<Resource> now) {
        List<LocalTime> fed = base.feedings().stream()
                .filter(feeding ->
                        now.stream().anyMatch(resource -> resource.id().equals(feeding.resource())))
                .map(Feeding::at)
                .distinct()
                .sorted()
                .toList();
        return fed.isEmpty() ? List.of(LocalTime.NOON) : fed;
    }

    /**
     * Looks at all candidates.
     *
     * @param candidates the candidates
     * @return the rules that each breaks
     */
    public Sifted sift(List<CandidatePlace> candidates) {
        List<Set<PlacingRule>> broken = new ArrayList<>();
        candidates.forEach(candidate -> broken.add(broken(candidate)));
        return new Sifted(broken);
    }

    private Set<PlacingRule> broken(CandidatePlace candidate) {
        Set<PlacingRule> broken = EnumSet.noneOf(PlacingRule.class);
        Point at = candidate.at();
        double heightM = enclosure.ground().terrain().aboveM(at);
        if (rules.keeperReachM().isPresent()
                && !rules.hoist()
                && heightM > rules.keeperReachM().getAsDouble() + ROUNDING_M) {
            broken.add(PlacingRule.KEEPER_REACH);
        }
        if (rules.loadKg().isPresent() && !bears(candidate)) {
            broken.add(PlacingRule.LOAD);
        }
        if (rules.shaded() && light.greatestBeam(at) > MOST_BEAM) {
            broken.add(PlacingRule.SHADED);
        }
        if (rules.noHotter()
                && nowC.isPresent()
                && light.meanOperativeC(at).orElse(0) > nowC.getAsDouble() + SAME_HEAT_C) {
            broken.add(PlacingRule.HEAT);
        }
        if (live.holds(at)) {
            broken.add(PlacingRule.HOT_WIRE);
        }
        if (isByBarrier(at)) {
            broken.add(PlacingRule.BARRIER_DISTANCE);
        }
        if (withDeck) {
            addOfDeck(candidate, broken);
        }
        return broken;
    }

    /** What a deck breaks with its corners and edges, and not only with its middle. */
    private void addOfDeck(CandidatePlace candidate, Set<PlacingRule> broken) {
        Platform deck = PlacingTask.deck(candidate.words(), candidate.at());
        if (decks.isLive(deck)) {
            broken.add(PlacingRule.HOT_WIRE);
        }
        if (DeckSpace.places(deck).stream().anyMatch(this::isByBarrier)) {
            broken.add(PlacingRule.BARRIER_DISTANCE);
        }
        if (!decks.isFree(deck, candidate.on())) {
            broken.add(PlacingRule.FREE_SPACE);
        }
        if (decks.leadsOut(deck)) {
            broken.add(PlacingRule.WAY_OUT);
        }
    }

    private boolean isByBarrier(Point at) {
        return enclosure.bounds().barriers().stream()
                .anyMatch(barrier -> distanceM(barrier.footprint(), at) < Math.max(rules.barrierM(), ROUNDING_M)
                        && (rules.barrierM() > 0 || isWithin(barrier, at)));
    }

    private boolean bears(CandidatePlace candidate) {
        double neededKg = rules.loadKg().getAsDouble() + heaviestKg;
        boolean supportBears = enclosure.supports().stream()
                .filter(support -> support.id().equals(candidate.on()))
                .allMatch(support -> support.bearing().bearsKg().orElse(neededKg) >= neededKg);
        return supportBears
                && enclosure.platforms().stream()
                        .filter(platform -> platform.id().equals(candidate.on()))
                        .allMatch(platform -> platform.bearsKg().orElse(neededKg) >= neededKg);
    }

    private static boolean isWithin(Barrier barrier, Point at) {
        return at.zM() >= barrier.baseZM() && at.zM() <= barrier.topZM();
    }

    /** Distance in plan, 0 within. */
    private static double distanceM(Outline outline, Point at) {
        if (outline.covers(at.xM(), at.yM())) {
            return 0;
        }
        Point flat = at.atHeight(0);
        double least = Double.POSITIVE_INFINITY;
        int n = outline.corners().size();
        for (int i = 0; i < n; i++) {
            Segment edge = new Segment(
                    outline.corners().get(i).atHeight(0),
                    outline.corners().get((i + 1) % n).atHeight(0));
            least = Math.min(least, edge.distanceM(flat));
        }
        return least;
    }
}
