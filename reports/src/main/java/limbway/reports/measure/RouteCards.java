package limbway.reports.measure;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;

import limbway.model.body.Body;
import limbway.model.enclosure.Resource;
import limbway.model.explain.GroundReason;
import limbway.model.explain.flip.Flip;
import limbway.model.route.Search;
import limbway.sim.experiment.Outcome;
import limbway.sim.habitat.Habitat;
import limbway.sim.journal.Journal;
import limbway.sim.journal.Trip;

/** The cards of all trips of a run that were made between two different places, those with most metres on the ground first. */
public final class RouteCards {

    /** So many cards are kept; the rest can be asked for by the command explain. Assumption. */
    public static final int MOST_CARDS = 60;

    /** For so many cards a change is looked for that turns the trip, in small layouts. Assumption. */
    private static final int MOST_FLIPS = 5;

    /** Holds of the layout times changes looked for stay below this, but for the first. Assumption. */
    private static final int MOST_HOLDS = 50_000;

    private final DoorStates doors;
    private final Habitat habitat;
    private final Map<Asked, Integer> numbers = new LinkedHashMap<>();
    private final List<RouteCard> cards = new ArrayList<>();
    private final int pairs;

    private record Asked(Body body, int from, int to, OptionalInt atSecond) {}

    private record Who(Body body, OptionalInt atSecond) {}

    private static final class Tally {
        private int above;
        private int onGround;
        private double groundM;

        void add(Trip trip) {
            if (trip.way().usesGround()) {
                onGround++;
                groundM += trip.way().lengthM() - trip.way().offGroundM();
            } else {
                above++;
            }
        }
    }

    private RouteCards(Outcome outcome, int mostFlips) {
        habitat = outcome.habitat();
        doors = new DoorStates(habitat);
        List<Map.Entry<Asked, Tally>> travelled =
                new ArrayList<>(travelled(outcome).entrySet());
        travelled.sort((a, b) -> {
            int more = Double.compare(b.getValue().groundM, a.getValue().groundM);
            return more != 0
                    ? more
                    : Integer.compare(
                            b.getValue().above + b.getValue().onGround, a.getValue().above + a.getValue().onGround);
        });
        pairs = travelled.size();
        Map<Who, TripExplainer> explainers = new LinkedHashMap<>();
        for (Map.Entry<Asked, Tally> entry : travelled.subList(0, Math.min(MOST_CARDS, pairs))) {
            Asked asked = entry.getKey();
            TripExplainer explainer = explainers.computeIfAbsent(
                    new Who(asked.body, asked.atSecond), who -> new TripExplainer(habitat, asked.body, asked.atSecond));
            if (explainer.find(asked.from, asked.to) instanceof Search.Reached ways) {
                numbers.put(asked, cards.size());
                cards.add(card(asked, entry.getValue(), explainer, ways, cards.size() < mostFlips));
            }
        }
    }

    /**
     * Makes the cards of a run. For those with most metres on the ground a change is looked for that turns the trip; for how
     * many depends on the size of the layout and not on the clock, so that the same run gives the same cards.
     *
     * @param outcome a run with at least one finished replication
     * @return cards
     */
    public static RouteCards of(Outcome outcome) {
        int holds = Math.max(1, outcome.habitat().graph().holdCount());
        return new RouteCards(outcome, Math.max(1, Math.min(MOST_FLIPS, MOST_HOLDS / holds)));
    }

    /**
     * Makes cards without looking for changes.
     *
     * @param outcome a run with at least one finished replication
     * @return cards
     */
    public static RouteCards withoutFlips(Outcome outcome) {
        return new RouteCards(outcome, 0);
    }

    /**
     * The cards.
     *
     * @return most metres on the ground first, then most trips
     */
    public List<RouteCard> cards() {
        return List.copyOf(cards);
    }

    /**
     * Pairs that have no card, because others are travelled more on the ground.
     *
     * @return how many triples of body, start and end there are beyond the cards, in each state of the doors
     */
    public int leftOut() {
        return pairs - cards.size();
    }

    /**
     * The card of trips with all doors open.
     *
     * @param body who travels
     * @param from name of the place where the trips start
     * @param to name of the place where they end
     * @return the card, or empty where it was left out
     */
    public Optional<RouteCard> find(Body body, String from, String to) {
        return cards.stream()
                .filter(card -> card.atSecond().isEmpty()
                        && card.body().equals(body)
                        && card.from().equals(from)
                        && card.to().equals(to))
                .findFirst();
    }

    /**
     * The card of a trip.
     *
     * @param trip a trip of the run
     * @return its place among the cards, or empty where it was left out
     */
    public OptionalInt numberOf(Trip trip) {
        Integer number = numbers.get(asked(trip));
        return number == null ? OptionalInt.empty() : OptionalInt.of(number);
    }

    private Map<Asked, Tally> travelled(Outcome outcome) {
        Map<Asked, Tally> tallies = new LinkedHashMap<>();
        for (Journal journal : outcome.journals()) {
            for (Trip trip : journal.trips()) {
                if (trip.fromResource() != trip.toResource()) {
                    tallies.computeIfAbsent(asked(trip), k -> new Tally()).add(trip);
                }
            }
        }
        return tallies;
    }

    private Asked asked(Trip trip) {
        return new Asked(
                habitat.animals().get(trip.animal()).body(),
                trip.fromResource(),
                trip.toResource(),
                doors.at(trip.startMs()));
    }

    private RouteCard card(Asked asked, Tally tally, TripExplainer explainer, Search.Reached ways, boolean withFlip) {
        GroundReason reason = explainer.reason(asked.from, asked.to, ways);
        boolean flipAsked = withFlip && tally.onGround > 0;
        List<Resource> resources = habitat.graph().resources();
        String from = resources.get(asked.from).id();
        String to = resources.get(asked.to).id();
        Optional<Flip> flip =
                flipAsked ? SmallestFlip.of(habitat, explainer.question(from, to), reason) : Optional.empty();
        return new RouteCard(
                asked.body,
                from,
                to,
                asked.atSecond,
                ways,
                reason,
                tally.above,
                tally.onGround,
                tally.groundM,
                flip,
                flipAsked);
    }
}
