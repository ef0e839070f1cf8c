package limbway.reports.lesson;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Predicate;

import limbway.model.body.Body;
import limbway.model.enclosure.Enclosure;
import limbway.model.explain.GroundReason;
import limbway.model.explain.GroundReasons;
import limbway.model.explain.PairWays;
import limbway.model.explain.flip.TripQuestion;
import limbway.model.graph.GraphSettings;
import limbway.model.graph.RouteGraph;
import limbway.model.route.Routes;
import limbway.model.route.Search;
import limbway.reports.measure.SmallestFlip;
import limbway.sim.experiment.Outcome;
import limbway.sim.habitat.Habitat;

/** Chooses the trip that is taught: the one with most metres on the ground that a single change can turn. */
public final class TripChoice {

    /** So many trips are looked at for a change that turns them. Assumption. */
    private static final int MOST_TRIED = 8;

    private final Habitat habitat;
    private final List<Habitat> others;
    private final TripWish wish;
    private final List<TripTally> tallies;
    private final Map<Body, GroundReasons> reasons = new LinkedHashMap<>();

    private TripChoice(Outcome lived, List<Habitat> others, TripWish wish) {
        this.habitat = lived.habitat();
        this.others = List.copyOf(others);
        this.wish = wish;
        this.tallies = TripTally.of(lived);
    }

    /**
     * Chooses the trip.
     *
     * <p>Where no trip takes the ground, the one made most often is taught, with the way over the ground beside it.
     *
     * @param lived the layout that is taught, with at least one finished replication
     * @param others other layouts, which may turn a trip
     * @param wish which trips are meant
     * @return the trip; empty if no way joins any of the places meant
     */
    public static Optional<TaughtTrip> of(Outcome lived, List<Habitat> others, TripWish wish) {
        return new TripChoice(lived, others, wish).find();
    }

    private Optional<TaughtTrip> find() {
        if (wish.isWhole()) {
            return trip(
                    wish.body().orElseThrow(),
                    wish.from().orElseThrow(),
                    wish.to().orElseThrow());
        }
        List<TaughtTrip> made = new ArrayList<>();
        for (TripTally tally : tallies) {
            if (wish.allows(tally.body(), tally.from(), tally.to())) {
                trip(tally.body(), tally.from(), tally.to())
                        .filter(TripChoice::leads)
                        .ifPresent(made::add);
            }
        }
        List<TaughtTrip> onGround =
                made.stream().filter(TaughtTrip::takesGround).limit(MOST_TRIED).toList();
        List<TaughtTrip> turnable = made.stream()
                .filter(TaughtTrip::takesGround)
                .filter(this::holdsAnEnd)
                .limit(MOST_TRIED)
                .toList();
        return first(turnable, this::isTurnedByOneChange)
                .or(() -> first(onGround, this::isTurnedByLayout))
                .or(() -> first(onGround, trip -> true))
                .or(() -> first(made, trip -> trip.ways().overGround().isPresent()))
                .or(() -> first(made, trip -> true))
                .or(this::anyTrip);
    }

    private static Optional<TaughtTrip> first(List<TaughtTrip> trips, Predicate<TaughtTrip> wanted) {
        return trips.stream().filter(wanted).findFirst();
    }

    /** A place that is reached from another without a move is no trip. */
    private static boolean leads(TaughtTrip trip) {
        return trip.ways().cheapest().milliJ() > 0;
    }

    /** Where nobody travelled: the first two places that are joined. */
    private Optional<TaughtTrip> anyTrip() {
        List<String> places =
                habitat.graph().resources().stream().map(place -> place.id()).toList();
        for (Body body : habitat.bodies()) {
            for (String from : places) {
                for (String to : places) {
                    if (!from.equals(to) && wish.allows(body, from, to)) {
                        Optional<TaughtTrip> trip = trip(body, from, to).filter(TripChoice::leads);
                        if (trip.isPresent()) {
                            return trip;
                        }
                    }
                }
            }
        }
        return Optional.empty();
    }

    private Optional<TaughtTrip> trip(Body body, String from, String to) {
        Routes routes = habitat.routes(body);
        RouteGraph graph = habitat.graph();
        int start = graph.resourceNumber(from);
        int end = graph.resourceNumber(to);
        if (!(PairWays.find(routes, habitat.sharpness(), start, end) instanceof Search.Reached ways)) {
            return Optional.empty();
        }
        Enclosure enclosure = habitat.layout().enclosure();
        GroundReason reason = reasons.computeIfAbsent(body, who -> new GroundReasons(enclosure, routes))
                .of(start, end, ways);
        TripQuestion question = new TripQuestion(
                enclosure,
                GraphSettings.forBodies(habitat.bodies()),
                body,
                habitat.energy(),
                habitat.sharpness(),
                OptionalInt.empty(),
                from,
                to);
        return Optional.of(tallies.stream()
                .filter(tally -> tally.body().equals(body)
                        && tally.from().equals(from)
                        && tally.to().equals(to))
                .findFirst()
                .map(tally -> new TaughtTrip(
                        question, ways, reason, tally.tripsPerDay(), tally.groundTripsPerDay(), tally.motives()))
                .orElse(new TaughtTrip(question, ways, reason, 0, 0, List.of())));
    }

    /** Where both places are used from the ground only, no single change helps. */
    private boolean holdsAnEnd(TaughtTrip trip) {
        RouteGraph graph = habitat.graph();
        GroundReasons ofBody = reasons.get(trip.body());
        return List.of(trip.from(), trip.to()).stream()
                .anyMatch(place -> ofBody.islands().isUsedOffGround(graph.useHolds(graph.resourceNumber(place))));
    }

    private boolean isTurnedByOneChange(TaughtTrip trip) {
        return SmallestFlip.of(habitat, trip.question(), trip.reason()).isPresent();
    }

    private boolean isTurnedByLayout(TaughtTrip trip) {
        return others.stream().anyMatch(other -> in(other, trip)
                .map(Costs::of)
                .filter(Costs::isOffGround)
                .isPresent());
    }

    /** What the trip finds in another layout; empty where one of its places is not there. */
    static Optional<Search> in(Habitat other, TaughtTrip trip) {
        List<String> places =
                other.graph().resources().stream().map(place -> place.id()).toList();
        return places.contains(trip.from()) && places.contains(trip.to())
                ? Optional.of(PairWays.find(
                        other.routes(trip.body()),
                        other.sharpness(),
                        places.indexOf(trip.from()),
                        places.indexOf(trip.to())))
                : Optional.empty();
    }
}
